"""Days off beside sets, and words for them that say something else behind the day of the sets."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context, Logged

NOW = datetime(2026, 11, 28, 18, 0, tzinfo=UTC)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("took monday off, bench 3x8 80", None),
        ("had monday off. bench 3x8 80", None),
        ("bench 3x8 80, monday off", None),
        ("squat 3x8 80 yesterday off the rack", date(2026, 11, 27)),
        ("bench 3x8 80 tuesday free weights", date(2026, 11, 24)),
        ("bench 3x8 80 tuesday pause", date(2026, 11, 24)),
    ],
)
def test_only_a_day_of_which_it_is_said_alone_was_off(text: str, day: date | None) -> None:
    outcome = read(text, Context(now=NOW), catalogue())

    assert isinstance(outcome, Logged)
    assert [one.reps for one in outcome.sets] == [8, 8, 8]
    assert outcome.on == day
