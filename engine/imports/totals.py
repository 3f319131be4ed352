"""Rows of totals between the rows of sets: nobody did them.

One says so in words ("Total", "Summe"), or it has neither name nor number of a set, closes a group of rows, and each of
its numbers is the sum over them (a load may be the volume: sets x reps x load).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from decimal import Decimal

from engine.imports.headers import Field, Says, said
from engine.imports.numbers import Comma, number_of
from engine.imports.old_rows import Row

SUMMED = (Field.SETS, Field.REPS, Field.LOAD)
NOT_A_SET = "a row of totals, no set"
MAY_BE = "no name, and its numbers are the sums of the rows above: a total?"
FEWEST = 2
FEWEST_OF_ONE_COLUMN = 3
"""1, 2 and 3 reps on end are a ladder; one column alone needs more rows to be taken for summed. Common practice."""


def says_total(cells: Iterable[str]) -> bool:
    """Whether a cell says that its row is one of totals."""
    return any(Says.TOTAL in said(cell) for cell in cells)


@dataclass(slots=True)
class _Group:
    """Sums over rows on end."""

    rows: int = 0
    sums: dict[Field, Decimal] = field(default_factory=lambda: dict.fromkeys(SUMMED, Decimal(0)))
    volume: Decimal = Decimal(0)

    def add(self, numbers: dict[Field, Decimal]) -> None:
        self.rows += 1
        for kind, number in numbers.items():
            self.sums[kind] += number
        load = numbers.get(Field.LOAD, Decimal(0))
        self.volume += numbers.get(Field.SETS, Decimal(1)) * numbers.get(Field.REPS, Decimal(1)) * load

    def comes_to(self, numbers: dict[Field, Decimal]) -> bool:
        least = FEWEST if len(numbers) > 1 else FEWEST_OF_ONE_COLUMN
        return self.rows >= least and all(
            number == self.sums[kind] or (kind is Field.LOAD and number == self.volume)
            for kind, number in numbers.items()
        )


def unnamed_totals(rows: Sequence[Row]) -> frozenset[int]:
    """The places of rows that may be totals of those above them, though nothing says so."""
    found = set()
    of_lift, of_day, of_all = _Group(), _Group(), _Group()
    before = ("", "")
    for place, row in enumerate(rows):
        numbers = _numbers(row)
        of_day = of_day if row.date == before[0] else _Group()
        of_lift = of_lift if (row.date, row.exercise) == before else _Group()
        bare = not row.named and not row.dated and bool(numbers) and _closes(rows, place)
        if bare and any(one.comes_to(numbers) for one in (of_lift, of_day, of_all)):
            found.add(place)
            of_lift = _Group()
            continue
        before = (row.date, row.exercise)
        for group in (of_lift, of_day, of_all):
            group.add(numbers)
    return frozenset(found)


def _closes(rows: Sequence[Row], place: int) -> bool:
    """Whether a name, a date, a gap or the end comes next; a row that says which set it is closes nothing."""
    row = rows[place]
    if row.sets or Field.SET_NUMBER in row.cells:
        return False
    after = rows[place + 1] if place + 1 < len(rows) else None
    return after is None or after.named or after.dated or after.line > row.line + 1


def _numbers(row: Row) -> dict[Field, Decimal]:
    """The numbers of the columns that could be summed; empty where a cell of them holds something else."""
    told = {kind: number_of(row.cells[kind].text, Comma.DECIMAL) for kind in SUMMED if kind in row.cells}
    if any(number is None for number in told.values()) or Field.WORK in row.cells:
        return {}
    return {kind: number for kind, number in told.items() if number is not None}
