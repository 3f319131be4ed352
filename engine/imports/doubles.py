"""What of an old log is not in the log yet, so that a document sent twice, or one that grew, doubles nothing.

A set told in the chat is the one of a row of the same day and exercise with the same count and load, whatever else only
one of the two tells: effort, failure, a warm-up, a side, the load itself.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from datetime import date
from decimal import Decimal

from engine.imports.values import OldNote, OldSet
from engine.values.ids import ExerciseName
from engine.values.load import Load
from engine.values.sets import SetDone, SetRecord

AS_MUCH_KG = Decimal("0.5")
"""Loads in two units, each rounded by the writer, that are no farther apart are one. Common practice, no source."""

Count = tuple[date, ExerciseName, int, Decimal | None, Decimal | None, bool]


def not_yet(sets: Sequence[OldSet], standing: Iterable[SetRecord], imported: Iterable[SetRecord]) -> tuple[OldSet, ...]:
    """The sets that the log does not hold: of like ones of a day, those beyond as many as it holds.

    Shape: `imported` are the sets as earlier imports brought them in. Where one was corrected, moved or deleted since,
    the row that it came from counts as held all the same, and what stands in its place is not held against another row.
    """
    as_imported = {record.place: record for record in imported}
    held = [*as_imported.values(), *(record for record in standing if record.place not in as_imported)]
    equal: Counter[tuple[date, SetDone]] = Counter((record.on, record.done) for record in held)
    rest = []
    for one in sets:
        key = (one.on, one.done)
        if equal[key] > 0:
            equal[key] -= 1
        else:
            rest.append(one)
    return _unlike(rest, equal)


def _unlike(sets: Sequence[OldSet], held: Counter[tuple[date, SetDone]]) -> tuple[OldSet, ...]:
    """The sets for which the log holds none that tells the same work; each that is held stands for one."""
    spare: defaultdict[Count, list[Load | None]] = defaultdict(list)
    for (on, done), count in held.items():
        spare[_count(on, done)] += [done.load] * count
    fresh = []
    for one in sets:
        loads = spare[_count(one.on, one.done)]
        like = next((place for place, load in enumerate(loads) if _is_like(load, one.done.load)), None)
        if like is None:
            fresh.append(one)
        else:
            loads.pop(like)
    return tuple(fresh)


def _count(on: date, done: SetDone) -> Count:
    return on, done.exercise, done.reps, done.seconds, done.metres, done.missed


def _is_like(one: Load | None, other: Load | None) -> bool:
    if one is None or other is None:
        return True
    if one.basis is not other.basis:
        return False
    if one.unit is other.unit:
        return one.amount == other.amount
    return abs(one.kilograms() - other.kilograms()) <= AS_MUCH_KG


def notes_not_yet(notes: Sequence[OldNote], held: Iterable[tuple[date, str]]) -> tuple[OldNote, ...]:
    """The notes of days that do not hold the same words yet."""
    known = set(held)
    fresh = []
    for note in notes:
        if (note.on, note.text) not in known:
            known.add((note.on, note.text))
            fresh.append(note)
    return tuple(fresh)
