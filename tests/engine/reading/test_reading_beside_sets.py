"""Remarks beside sets, with numbers of their own: they change no set, and what cannot be told is asked about."""

from __future__ import annotations

from pathlib import Path

import pytest

from engine.reading import read
from engine.reading.values import Asked, Logged
from tests.engine.reading.saying import KNOWN, said, situation

BESIDE = Path(__file__).with_name("remarks_beside_sets.txt")
TOLD = [line for line in BESIDE.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#")]


@pytest.mark.parametrize("line", [line for line in TOLD if not line.startswith("?")])
def test_a_remark_changes_no_set(line: str) -> None:
    message, sets = line.split(" => ")

    assert said(message) == said(sets)


@pytest.mark.parametrize("line", [line for line in TOLD if line.startswith("?")])
def test_a_remark_that_may_tell_sets_is_no_other_set(line: str) -> None:
    message, sets = line.removeprefix("? ").split(" => ")
    outcome = read(message, situation(), KNOWN)

    assert isinstance(outcome, Asked) or (isinstance(outcome, Logged) and said(message) == said(sets))


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "ohp 4x6 40, got 5 on set 3",
            "barbell overhead press 2×6 at 40 kg, 5 at 40 kg, 6 at 40 kg",
            id="one set of a group by its number",
        ),
        pytest.param(
            "ohp 4x6 40, got 5 on the second set",
            "barbell overhead press 6 at 40 kg, 5 at 40 kg, 2×6 at 40 kg",
            id="one set of a group by its place",
        ),
        pytest.param(
            "ohp 3x6 40, 42.5 next week", "barbell overhead press 3×6 at 40 kg", id="a plan behind whole sets"
        ),
        pytest.param("ohp 3x6 40 goal is 50", "barbell overhead press 3×6 at 40 kg", id="a goal behind whole sets"),
        pytest.param("ohp 40x6, 40x6 tomorrow", "no sets", id="a set of a plan reaches back"),
    ],
)
def test_what_stands_behind_sets(text: str, meant: str) -> None:
    assert said(text) == meant
