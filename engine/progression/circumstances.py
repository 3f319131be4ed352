"""What lay over a slot's past sessions: pain told of, and time away before them.

Spans of pain include their first and last day. On the first day the pain was told, perhaps after the sets; from the
day after on the load was held.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from itertools import pairwise

from engine.progression.layoff import UNTOUCHED
from engine.values.ids import ExerciseName
from engine.values.prescription import Exposure
from engine.values.sets import SetRecord

Span = tuple[date, date]


def hurts(spans: Sequence[Span], on: date) -> bool:
    """Whether pain was told of and was not over on a day."""
    return any(first <= on <= last for first, last in spans)


def with_circumstances(
    past: tuple[Exposure, ...], spans: Sequence[Span], exercise: ExerciseName, log: Sequence[SetRecord]
) -> tuple[Exposure, ...]:
    """The exposures, each with the pain of its day and the days since the exercise was last trained anywhere.

    Shape: `past` and `log` oldest first.
    """
    if not spans and not any((later.on - one.on).days > UNTOUCHED for one, later in pairwise(past)):
        return past
    found = []
    for at, one in enumerate(past):
        held = any(first < one.on <= last for first, last in spans)
        away = 0 if at == 0 else _days_away(one.on, past[at - 1].on, exercise, log)
        found.append(replace(one, hurt=hurts(spans, one.on), held=held, away=away))
    return tuple(found)


def _days_away(on: date, since: date, exercise: ExerciseName, log: Sequence[SetRecord]) -> int:
    """The days before `on` in which the exercise was not trained, looking back no further than `since`."""
    if (on - since).days > UNTOUCHED:
        for at in range(bisect_left(log, on, key=lambda record: record.on) - 1, -1, -1):
            if log[at].on <= since:
                break
            if log[at].done.exercise == exercise:
                return (on - log[at].on).days
    return (on - since).days
