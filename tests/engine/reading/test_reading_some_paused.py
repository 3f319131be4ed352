"""A small number that was paused behind a set is a set or some of its reps, which is asked; common practice."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    "text",
    [
        "bench 80x10, 2 paused",
        "bankdrücken 80x10, 2 mit pause",
        "squat 80x10, 2 paused",
    ],
)
def test_some_reps_paused_are_asked_about(text) -> None:
    assert said(text).startswith("ask:")


def test_as_many_reps_paused_are_a_set_and_a_time_is_a_remark() -> None:
    assert said("bench 80x10, 8 paused") == "barbell bench press 10 at 80 kg, 8 at 80 kg"
    assert said("bench 80x5, 2s pause") == "barbell bench press 5 at 80 kg"
