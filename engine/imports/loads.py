"""What a cell says of the load, for an exercise: the loads of its sets, their unit and what they count.

80   80,5 kg   175lb   BW   BW+10   +10   -20   2x20   24s   30 each   80/85/90   band
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal

from engine.imports.columns import unit_of
from engine.imports.counts import CannotBe
from engine.imports.headers import Says, said
from engine.imports.numbers import THOUSANDS, Comma, number_of
from engine.reading.weighing.resolve import BASES
from engine.values.exercise import Exercise, Loading
from engine.values.load import Basis, Load, Unit

SIGNED = re.compile(r"([+\-–−]?)\s*(\d[\d.,]*)\s*(.*)$")
BODY_AND = re.compile(r"([^\W\d]+(?: [^\W\d]+)?)\s*([+\-–−].*)$")
PAIR = re.compile(r"2\s*[x×*]\s*(\d.*)$", re.IGNORECASE)
COMMAS = re.compile(r"\s*,\s*")
LISTED = re.compile(r"\s*[/;|]\s*")
NOTHING = frozenset(("-", "–", "—", ".", "?", "x", "X"))
HEAVIEST_KG = {
    Loading.BAR: Decimal(500),
    Loading.PER_HAND: Decimal(125),
    Loading.IMPLEMENT: Decimal(500),
    Loading.STACK: Decimal(300),
    Loading.PLATES: Decimal(1000),
    Loading.BODY: Decimal(200),
    Loading.BAND: Decimal(200),
}
"""More than anyone lifts. Common practice, no source."""
HEAVY_ADDED_KG = Decimal(60)
"""A bare number above this, beside an exercise with body weight, may be the body weight itself. Common practice."""


@dataclass(frozen=True, slots=True)
class LoadColumn:
    """What holds for the load of a row before its cell is read.

    `default` is the unit of a bare number; `basis` what the row itself says that a load counts.
    """

    default: Unit
    comma: Comma
    basis: Basis | None = None
    assisted: bool = False


@dataclass(frozen=True, slots=True)
class Loads:
    """One load for all sets, or one for each. `named`: each number had its unit beside it."""

    loads: tuple[Load | None, ...]
    named: bool = True


def loads_in(cell: str, exercise: Exercise, column: LoadColumn) -> Loads:
    """The loads that a cell says; for an empty cell body weight alone, or nothing known.

    Errors: CannotBe.
    """
    basis = column.basis or BASES.get(exercise.loading, Basis.TOTAL)
    parts = (COMMAS if _is_comma_list(cell, column.comma) else LISTED).split(cell)
    read = [_load(part.strip(), exercise, basis, column) for part in parts]
    return Loads(tuple(load for load, _ in read), all(named for _, named in read))


def _is_comma_list(cell: str, comma: Comma) -> bool:
    short = len(cell.rpartition(",")[2]) < THOUSANDS
    return cell.count(",") > 1 or ", " in cell or ("," in cell and short and comma is Comma.THOUSANDS)


def _load(cell: str, exercise: Exercise, basis: Basis, column: LoadColumn) -> tuple[Load | None, bool]:
    body = basis is Basis.BODY
    words = said(cell)
    if not cell or cell in NOTHING or Says.BODY in words or Says.NOTHING in words:
        nothing = body and not column.assisted
        return (Load(Decimal(0), column.default, Basis.BODY) if nothing else None), True
    if Says.BAND in words or (exercise.loading is Loading.BAND and not any(letter.isdigit() for letter in cell)):
        return None, True
    if found := BODY_AND.match(cell):
        if Says.BODY not in said(found[1]) or not body:
            raise CannotBe(f"load “{cell}”")
        cell = found[2]
    if (found := PAIR.match(cell)) and basis is Basis.PER_HAND:
        cell = found[1]
    return _number(cell, exercise, basis, column)


def _number(cell: str, exercise: Exercise, basis: Basis, column: LoadColumn) -> tuple[Load | None, bool]:
    found = SIGNED.match(cell)
    amount = number_of(found[2].rstrip(".,"), column.comma) if found else None
    if found is None or amount is None:
        raise CannotBe(f"load “{cell}”")
    unit = _unit(found[3].strip(), basis, cell)
    if found[1] in ("-", "–", "−") or (column.assisted and found[1] != "+" and basis is Basis.BODY):
        amount = -amount
    if amount == 0 and basis is not Basis.BODY and column.basis is None:
        return None, True  # nobody lifts nothing: such a column has no blank
    load = _checked(amount, unit or column.default, exercise, basis, cell)
    if basis is Basis.BODY and column.basis is None and not found[1] and load.kilograms() > HEAVY_ADDED_KG:
        raise CannotBe(f"load {cell}: added, or the body's own? Write +{cell} or BW")
    return load, unit is not None


def _unit(behind: str, basis: Basis, cell: str) -> Unit | None:
    """The unit behind a number; "s" and "each" say that there are two of them, which only two implements can be."""
    if not behind:
        return None
    first, _, rest = behind.partition(" ")
    unit = unit_of(first)
    words = rest if unit is not None else behind
    if words and not (basis is Basis.PER_HAND and (words == "s" or Says.EACH in said(words))):
        raise CannotBe(f"load “{cell}”")
    return unit


def _checked(amount: Decimal, unit: Unit, exercise: Exercise, basis: Basis, cell: str) -> Load:
    try:
        load = Load(amount, unit, basis)
    except ValueError:
        raise CannotBe(f"load “{cell}”") from None
    if abs(load.kilograms()) > HEAVIEST_KG[exercise.loading]:
        raise CannotBe(f"load {cell}: more than anyone lifts")
    return load
