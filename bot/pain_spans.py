"""When each lift hurt, from the pain noted and the days on which it was said to be over."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, timedelta

from engine.values.ids import ExerciseName
from storage.records import Note

PAIN_HELD_FOR = timedelta(days=365)
"""A pain note holds a movement's load until she says that it is over; one older than this is history."""
A_DAY = timedelta(days=1)

Spans = tuple[tuple[ExerciseName, tuple[tuple[date, date], ...]], ...]


def spans_of(notes: Sequence[Note], over: Mapping[str, Sequence[str] | str]) -> Spans:
    """For each lift its spans of pain, first and last day included, oldest first.

    Shape: `over` holds for each lift the days on which its pain was said to be over, oldest first; one day may stand
    alone. On such a day it no longer holds anything back.
    """
    found: dict[ExerciseName, dict[tuple[date, date], None]] = {}
    for note in notes:
        if note.exercise is None:
            continue
        ends = [end for end in days_over(over, note.exercise) if end >= note.on]
        last = min(ends, default=note.on + PAIN_HELD_FOR + A_DAY) - A_DAY
        if note.on <= last:
            found.setdefault(note.exercise, {})[note.on, last] = None
    return tuple((exercise, tuple(spans)) for exercise, spans in found.items())


def days_over(over: Mapping[str, Sequence[str] | str], exercise: str) -> list[date]:
    """The days on which a lift's pain was said to be over, oldest first."""
    told = over.get(exercise, ())
    return [date.fromisoformat(day) for day in ([told] if isinstance(told, str) else told)]
