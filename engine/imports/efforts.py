"""Effort columns: RPE, reps in reserve, or a bare "effort", whose scale the whole column tells."""

from __future__ import annotations

import re
from collections.abc import Iterable
from decimal import Decimal
from enum import Enum

from engine.imports.counts import CannotBe
from engine.imports.numbers import Comma, number_of
from engine.values.effort import TOP_OF_SCALE, Effort

TOLD = re.compile(r"(?:@|rpe|rir)?\s*(\d[\d.,]*)\s*(?:/\s*10|rpe|rir|in reserve)?$", re.IGNORECASE)
LISTED = re.compile(r"\s*[/;|]\s*|,\s+|\s+")
HALFWAY = Decimal(5)


class Scale(Enum):
    RPE = "rpe"
    RIR = "rir"


def scale_of(cells: Iterable[str]) -> Scale | None:
    """The scale of a column that is only called effort; None where its numbers do not tell.

    Nobody logs sets with more than five reps in reserve alone, nor only sets below RPE 5. Common practice, no source.
    """
    amounts = [amount for cell in cells if (amount := _amount(cell)) is not None]
    if not amounts or max(amounts) > TOP_OF_SCALE:
        return None
    if min(amounts) >= HALFWAY and max(amounts) > HALFWAY:
        return Scale.RPE
    return Scale.RIR if max(amounts) < HALFWAY else None


def _amount(cell: str) -> Decimal | None:
    found = TOLD.match(cell)
    return number_of(found[1].rstrip(".,"), Comma.DECIMAL) if found else None


def _own_scale(cell: str) -> Scale | None:
    folded = cell.casefold()
    return Scale.RPE if "rpe" in folded else Scale.RIR if "rir" in folded or "reserve" in folded else None


def efforts_in(cell: str, scale: Scale | None, sets: int) -> tuple[Effort | None, ...] | None:
    """The effort of each set; None where the cell holds words, which are kept as a note.

    Errors: CannotBe for a number off the scale.
    """
    parts = [cell] if TOLD.match(cell) else LISTED.split(cell)
    amounts = [_amount(part) for part in parts]
    chosen = _own_scale(cell) or scale
    if chosen is None or None in amounts or len(parts) not in (1, sets):
        return None
    efforts = tuple(_effort(amount, chosen) for amount in amounts if amount is not None)
    return efforts if len(efforts) == sets else efforts * sets


def _effort(amount: Decimal, scale: Scale) -> Effort:
    if amount > TOP_OF_SCALE:
        raise CannotBe(f"{scale.value.upper()} {amount}")
    return Effort.from_rpe(amount) if scale is Scale.RPE else Effort(amount)
