"""The columns of a table of sets, met by the meaning of their headers.

A header may end in a unit ("weight (kg)", "rest [s]") and hold the number of a set ("set 1", "reps 2", "set 3 weight");
columns that repeat under one header are numbered from left to right.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from engine.imports.headers import Field, Says, plain_header, units_said, words
from engine.values.load import Unit

OF_EACH_SET = frozenset(
    (
        *(Field.REPS, Field.WORK, Field.LOAD_REPS, Field.REPS_LOAD, Field.LOAD, Field.RPE, Field.RIR, Field.EFFORT),
        *(Field.SECONDS, Field.METRES, Field.NOTES),
    )
)
OF_WORK = frozenset(
    (
        *(Field.REPS, Field.WORK, Field.LOAD_REPS, Field.REPS_LOAD, Field.REPS_SETS, Field.SETS, Field.LOAD),
        *(Field.SECONDS, Field.DURATION, Field.METRES, Field.DISTANCE),
    )
)
PARTS_OF = {
    Field.LOAD_REPS: (Field.LOAD, Field.REPS),
    Field.REPS_LOAD: (Field.REPS, Field.LOAD),
    Field.REPS_SETS: (Field.REPS, Field.SETS),
}
"""What the two numbers of a cell are, under a header that says so."""
MOST_NUMBERED = 20


@dataclass(frozen=True, slots=True)
class Column:
    """Shape: `number` is the set that the column is of, from 1; 0: the whole row. `rank` 0 goes first of its field."""

    place: int
    field: Field
    rank: int
    unit: str = ""
    number: int = 0


@lru_cache(maxsize=4_096)
def meaning_of(header: str) -> tuple[Field, int, str, int] | None:
    """Field, rank, unit and number of the set that a header names; None where it names none."""
    told = plain_header(header)
    if told in words().fields:
        return (*words().fields[told], told if units_said(told) else "", 0)
    parts = told.split()
    if len(parts) > 1 and units_said(parts[-1]):
        known = meaning_of(" ".join(parts[:-1]))
        return known and (known[0], known[1], parts[-1], known[3])
    return _numbered(parts) or _without_fillers(parts)


def _without_fillers(parts: Sequence[str]) -> tuple[Field, int, str, int] | None:
    """ "weight in", "number of the set": what is left without words that mean nothing in a header."""
    kept = [part for part in parts if part not in words().fillers]
    return meaning_of(" ".join(kept)) if kept and len(kept) < len(parts) else None


def _numbered(parts: Sequence[str]) -> tuple[Field, int, str, int] | None:
    """ "set 1", "reps 2", "set 3 weight", or the bare number above a column."""
    numbers = [part for part in parts if part.isdecimal()]
    if len(numbers) != 1 or not 1 <= int(numbers[0]) <= MOST_NUMBERED:
        return None
    rest = [part for part in parts if part != numbers[0]]
    field, rank, unit = Field.WORK, 0, ""
    known = [found for part in rest if (found := meaning_of(part)) is not None]
    if len(known) < len(rest):
        return None
    for found in known:
        if found[0] not in (Field.SETS, Field.SET_NUMBER):
            field, rank, unit, _ = found
    return (field, rank, unit, int(numbers[0])) if field in OF_EACH_SET else None


def columns_of(cells: Sequence[str]) -> tuple[Column, ...] | None:
    """The columns of a header row; None where the row is none: it names no exercise, or no work."""
    found = []
    for place, cell in enumerate(cells):
        meaning = meaning_of(cell) if cell else None
        if meaning is not None:
            found.append(Column(place, *meaning))
    fields = {column.field for column in found}
    if Field.EXERCISE not in fields or not (fields & OF_WORK or any(column.number for column in found)):
        return None
    return tuple(_apart(found))


def is_header(cells: Sequence[str]) -> bool:
    """Whether the row heads a table of sets."""
    return columns_of([cell.strip() for cell in cells]) is not None


def _apart(columns: Sequence[Column]) -> list[Column]:
    """The columns, those that repeat under one header numbered as sets from left to right."""
    alike: dict[tuple[Field, int, str], list[Column]] = {}
    for column in columns:
        if column.field in OF_EACH_SET and not column.number and column.field is not Field.NOTES:
            alike.setdefault((column.field, column.rank, column.unit), []).append(column)
    numbered = {
        column.place: number
        for group in alike.values()
        if len(group) > 1
        for number, column in enumerate(group, start=1)
    }
    return [replace(column, number=numbered.get(column.place, column.number)) for column in columns]


def unit_of(word: str) -> Unit | None:
    """The unit of mass that a word names."""
    units = units_said(word)
    if Says.KG in units:
        return Unit.KG
    return Unit.LB if Says.LB in units or word.strip() == "#" else None
