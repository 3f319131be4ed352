"""What of an old log is not in the log yet, so that a document sent twice, or one that grew, doubles nothing."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from datetime import date

from engine.imports.values import OldNote, OldSet
from engine.values.sets import SetDone, SetRecord


def not_yet(sets: Sequence[OldSet], standing: Iterable[SetRecord], imported: Iterable[SetRecord]) -> tuple[OldSet, ...]:
    """The sets that the log does not hold: of equal ones of a day, those beyond as many as it holds.

    Shape: `imported` are the sets as earlier imports brought them in. Where one was corrected, moved or deleted since,
    the row that it came from counts as held all the same, and what stands in its place is not held against another row.
    """
    as_imported = {record.place: record for record in imported}
    held = [*as_imported.values(), *(record for record in standing if record.place not in as_imported)]
    spare: Counter[tuple[date, SetDone]] = Counter((record.on, record.done) for record in held)
    fresh = []
    for one in sets:
        key = (one.on, one.done)
        if spare[key] > 0:
            spare[key] -= 1
        else:
            fresh.append(one)
    return tuple(fresh)


def notes_not_yet(notes: Sequence[OldNote], held: Iterable[tuple[date, str]]) -> tuple[OldNote, ...]:
    """The notes of days that do not hold the same words yet."""
    known = set(held)
    fresh = []
    for note in notes:
        if (note.on, note.text) not in known:
            known.add((note.on, note.text))
            fresh.append(note)
    return tuple(fresh)
