"""Lifts told by what was done: "strict pressed 40 for 6"."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("strict pressed 40 for 6", "barbell overhead press 6 at 40 kg"),
        ("push pressed 40 for 6", "push press 6 at 40 kg"),
        ("leg pressed 150 for 12", "leg press 12 at 150 kg"),
        ("front squatted 3x5 80", "barbell front squat 3×5 at 80 kg"),
        ("sumo deadlifted 140x3", "sumo deadlift 3 at 140 kg"),
        ("close grip benched 60x8", "close-grip bench press 8 at 60 kg"),
        ("my brother leg pressed 150 for 12", "no sets"),
    ],
)
def test_what_was_done_names_its_lift(text: str, meant: str) -> None:
    assert said(text) == meant
