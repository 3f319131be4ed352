"""What stands behind a document's rows or lines once they are read, and the old log that they make together."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal

from engine.imports.values import DateOrder, LeftOut, OldLog, OldNote, OldSet, WrittenName
from engine.sheets.unreadable import Unreadable
from engine.values.ids import ExerciseName
from engine.values.load import Unit
from engine.values.sets import SetDone

FAR_ABOVE = 3
"""A load so many times the next heaviest of its exercise is a slip until told otherwise. Common practice, no source."""
FEWEST_OTHERS = 3


@dataclass(frozen=True, slots=True)
class Entry:
    """One row or line that was read."""

    line: int
    text: str
    on: date
    sets: tuple[SetDone, ...]
    notes: tuple[OldNote, ...] = ()


@dataclass(slots=True)
class Entries:
    read: list[Entry] = field(default_factory=list)
    left_out: list[LeftOut] = field(default_factory=list)

    def leave_out(self, line: int, text: str, why: str, name: str = "") -> None:
        self.left_out.append(LeftOut(line, text, why, name))


def refuse_too_long(count: int, most: int) -> None:
    """Refuse a document of more lines than are read at once.

    Errors: Unreadable.
    """
    if count > most:
        raise Unreadable(f"{count} lines", f"up to {most} at once", "send it in parts")


def old_log(
    entries: Entries, names: Sequence[WrittenName], order: DateOrder | None, assumed_unit: Unit | None
) -> OldLog:
    """All that was read, by day, without what is far above the rest of its exercise."""
    odd = _far_above(entries.read)
    kept = sorted((entry for place, entry in enumerate(entries.read) if place not in odd), key=lambda entry: entry.on)
    far = [LeftOut(entry.line, entry.text, odd[place]) for place, entry in enumerate(entries.read) if place in odd]
    return OldLog(
        sets=tuple(OldSet(entry.line, entry.on, done) for entry in kept for done in entry.sets),
        notes=tuple(note for entry in kept for note in entry.notes),
        names=tuple(names),
        left_out=tuple(sorted((*entries.left_out, *far), key=lambda one: one.line)),
        order=order,
        assumed_unit=assumed_unit,
    )


def _far_above(read: Sequence[Entry]) -> dict[int, str]:
    """The places of entries whose load is far above every other of its exercise, with the reason."""
    heaviest: dict[ExerciseName, dict[int, Decimal]] = {}
    for place, entry in enumerate(read):
        for done in entry.sets:
            if done.load is not None and done.load.amount > 0:
                of_exercise = heaviest.setdefault(done.exercise, {})
                of_exercise[place] = max(done.load.kilograms(), of_exercise.get(place, Decimal(0)))
    odd: dict[int, str] = {}
    for exercise, masses in heaviest.items():
        places = sorted(masses, key=masses.__getitem__, reverse=True)
        if len(places) > FEWEST_OTHERS and masses[places[0]] > FAR_ABOVE * masses[places[1]]:
            odd[places[0]] = f"more than {FAR_ABOVE} times the next heaviest {exercise} here"
    return odd
