"""Words that have one sense beside sets and another elsewhere: halves, rests, headers of tables, days cut short."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, Logged

NOW = datetime(2026, 11, 28, 18, 0, tzinfo=UTC)


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("squat 100 5 5 half squat 60 5", [(5, 100), (5, 100), (5, 60)]),
        ("bench 80 8 8 only half", [(8, 80), (8, 80)]),
        ("bench 80x8 rest 15 4", [(8, 80), (4, 80)]),
        ("Lift Weight Reps\nBench 80 8\nthen walked 20 min", [(8, 80)]),
        ("bank 3x8 am 20", [(8, 20)] * 3),
        ("bench 80kg 1: 8 2: 8 3: 7", [(8, 80), (8, 80), (7, 80)]),
    ],
)
def test_each_set_is_kept(text: str, sets: list[tuple[int, int]]) -> None:
    outcome = read(text, Context(now=NOW), catalogue())

    assert isinstance(outcome, Logged)
    assert [(one.reps, one.load.amount if one.load else None) for one in outcome.sets] == sets
    assert outcome.on is None


@pytest.mark.parametrize(
    "text", ["squat 140x3 paused 120 3", "bench 100x5 pause 80 5 5", "wo squat 3x5 100", "bench 1: 60 2: 65 3: 70"]
)
def test_what_may_be_either_is_asked(text: str) -> None:
    assert isinstance(read(text, Context(now=NOW), catalogue()), Asked)
