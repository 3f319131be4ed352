"""How many sets a row has, and how many reps, seconds or metres each."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import Enum
from itertools import pairwise

from engine.imports.headers import Says, said, units_said
from engine.imports.numbers import Comma, number_of, whole
from engine.values.sets import MOST_REPS

MOST_SETS = 50
"""More sets in one row than anyone does. Common practice, no source."""
PARTS = re.compile(r"\s*[,;/|]\s*|\s+")
DASHES = re.compile(r"\s*[-–—]\s*")
TIMES = re.compile(r"(\d+)\s*(?:[x×*хХX]|sets? of)\s*(\d+)(?:\s*reps?)?$")
MARKED = re.compile(r"(\d+)\s*([^\W\d]+)\.?$")
CLOCK = re.compile(r"(?:(\d{1,2}):)?(\d{1,3}):(\d{2})(?:\.\d+)?$")
AMOUNT = re.compile(r"(\d[\d.,]*)\s*([^\W\d]*)\.?[\"'″′]*$")
A_DATE = re.compile(r"\d{4}-\d{2}-\d{2}")
A_MINUTE = 60
MOST_AGREE = 4
"""A column is taken for what four in five of its days say."""
OF_TIME = {Says.SECONDS: Decimal(1), Says.MINUTES: Decimal(A_MINUTE)}
OF_LENGTH = {
    Says.METRES: Decimal(1),
    Says.KILOMETRES: Decimal(1000),
    # Exact by definition of the international yard. Source: NIST SP 811 (2008), appendix B.
    Says.YARDS: Decimal("0.9144"),
    Says.FEET: Decimal("0.3048"),
    Says.MILES: Decimal("1609.344"),
}


class CannotBe(Exception):
    """A row that cannot be taken over, with the reason in words."""


@dataclass(frozen=True, slots=True)
class Counted:
    """Reps of each set. `failed`: the last was marked as taken to failure."""

    reps: tuple[int, ...]
    failed: bool = False
    sets: int | None = None
    """How many sets the cell itself states, where it states it."""


def set_count(cell: str) -> int:
    """The number of sets that a cell states.

    Errors: CannotBe.
    """
    count = whole(number_of(cell, Comma.DECIMAL))
    if count is None or not 1 <= count <= MOST_SETS:
        raise CannotBe(f"{cell} sets")
    return count


def reps_in(cell: str) -> Counted | None:
    """The reps that a cell lists; None where its words are left to the reader of sets.

    Errors: CannotBe for what can be read and cannot be, or can be read two ways.
    """
    if cell.isdecimal() and cell.isascii():
        return Counted((_reps(cell),))
    if A_DATE.match(cell):
        raise CannotBe(f"reps {cell}: the sheet made a date of them")
    if found := TIMES.fullmatch(cell):
        return Counted((_reps(found[2]),) * set_count(found[1]), sets=set_count(found[1]))
    if (one := whole(number_of(cell, Comma.DECIMAL))) is not None:
        return Counted((_reps(str(one)),))
    if (listed := _listed(PARTS.split(cell))) is not None:
        return listed
    return _dashed(cell)


def _dashed(cell: str) -> Counted | None:
    """8-8-7 is a list; 8-12 may be a list or a range."""
    listed = _listed(DASHES.split(cell))
    if listed is None or len(listed.reps) > 2 or len(set(listed.reps)) == 1:
        return listed
    return Counted(listed.reps, listed.failed, sets=0)


def _listed(parts: Sequence[str]) -> Counted | None:
    reps: list[int] = []
    failed = False
    for part in parts:
        found = MARKED.fullmatch(part)
        mark = said(found[2]) if found else frozenset()
        if found and Says.FAILURE in mark:
            failed = True
        elif found and not mark & {Says.REPS, Says.EACH}:
            return None
        number = found[1] if found else part
        if not (number.isdecimal() and number.isascii()):
            return None
        reps.append(_reps(number))
    return Counted(tuple(reps), failed) if reps else None


def _reps(number: str) -> int:
    if len(number) > 5 or not 0 <= int(number) <= MOST_REPS:
        raise CannotBe(f"{number} reps")
    return int(number)


def spread(counted: Counted, sets: int | None) -> tuple[int, ...]:
    """The reps of each set, given how many sets the row states.

    Errors: CannotBe where the two do not agree, or a pair may be a range.
    """
    reps = counted.reps
    if counted.sets == 0:
        if sets != len(reps):
            raise CannotBe(f"reps {reps[0]}-{reps[1]}: a range, or two sets?")
        return reps
    if sets is None or sets == len(reps) or (counted.sets is not None and sets == 1):
        return reps
    if len(reps) > 1:
        raise CannotBe(f"{sets} sets, but reps for {len(reps)}")
    return reps * sets


def seconds_in(cell: str, unit: str) -> Decimal | None:
    """Seconds: 45, 1:30, 1 min; None where the cell is no length of time."""
    if clock := CLOCK.fullmatch(cell):
        return Decimal(int(clock[1] or 0) * 3600 + int(clock[2]) * A_MINUTE + int(clock[3]))
    return _measured(cell, unit, OF_TIME)


def metres_in(cell: str, unit: str) -> Decimal | None:
    """Metres: 40, 40 m, 50 yd; None where the cell is no length."""
    return _measured(cell, unit, OF_LENGTH)


def _measured(cell: str, unit: str, factors: Mapping[Says, Decimal]) -> Decimal | None:
    """The amount in the first unit of the factors: by the unit in the cell, else by that of its header."""
    found = AMOUNT.fullmatch(cell)
    amount = number_of(found[1], Comma.DECIMAL) if found else None
    if found is None or amount is None:
        return None
    word = found[2] or unit
    known = [factor for says, factor in factors.items() if says in units_said(word)]
    return amount * known[0] if known else amount if not word else None


class SetColumn(Enum):
    """What the numbers of a column headed "set" or "sets" are."""

    COUNTS = "how many sets"
    NUMBERS = "which set"
    OPEN = "either"


def set_column(runs: Iterable[Sequence[str]], *, singular: bool) -> SetColumn:
    """What a column of sets holds, by its cells in the rows of one day and exercise.

    Shape: `runs` holds the cells of each day and exercise, in order. Numbers go 1, 2, 3; counts seldom do. `singular`:
    the header says "set".
    """
    counting = contrary = 0
    for cells in runs:
        run = [whole(number_of(cell, Comma.DECIMAL)) or 1 for cell in cells]
        in_step = all(after in (1, before + 1) for before, after in pairwise([0, *run]))
        counting += in_step and max(run) > 1
        contrary += not in_step
    if counting == 0:
        return SetColumn.COUNTS
    if counting > MOST_AGREE * contrary and (singular or counting > 1):
        return SetColumn.NUMBERS
    return SetColumn.COUNTS if contrary > MOST_AGREE * counting else SetColumn.OPEN
