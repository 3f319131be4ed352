"""Numbers as thumbs type them: a letter O for a zero, with a unit or an x right behind it.

That lifters type so is common practice, no source.
"""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize("text", ["rdl 1O0kg 3x8", "rdl 1OOkg 3x8", "rdl 10Okg 3x8", "rdl 1o0 3x8", "rdl 3x8 10O kg"])
def test_a_letter_o_among_digits_is_a_zero(text: str) -> None:
    assert said(text) == "romanian deadlift 3×8 at 100 kg"


@pytest.mark.parametrize("text", ["rdl 6Ox8", "rdl 6Okg x8", "rdl 6O x 8", "rdl 6Okgs x8"])
def test_a_letter_o_ends_a_load_ahead_of_an_x_or_a_unit(text: str) -> None:
    assert said(text) == "romanian deadlift 8 at 60 kg"


def test_of_is_no_zero() -> None:
    assert said("3 of 10 at 60 rdl") == "romanian deadlift 3×10 at 60 kg"
