"""Numbers as a column writes them: with decimal points or commas, with or without separators of thousands."""

from __future__ import annotations

import re
from collections.abc import Iterable
from decimal import Decimal
from enum import Enum

NUMBER = re.compile(r"\d[\d.,]{0,15}")
THOUSANDS = 3


class Comma(Enum):
    """What a comma inside the numbers of a column is."""

    DECIMAL = "decimal"
    THOUSANDS = "thousands"
    OPEN = "open"  # all of them could be either: 1,250


def comma_of(cells: Iterable[str]) -> Comma:
    """What the commas of a column are, by all its cells together."""
    commas = [number for cell in cells if "," in cell for number in NUMBER.findall(cell) if "," in number.rstrip(",")]
    tails = [number.rstrip(".,").rpartition(",")[2] for number in commas]
    if any(len(tail.partition(".")[0]) != THOUSANDS for tail in tails):
        return Comma.DECIMAL
    if any("." in tail for tail in tails) or any(number.count(",") > 1 for number in commas):
        return Comma.THOUSANDS
    return Comma.OPEN


def number_of(text: str, comma: Comma) -> Decimal | None:
    """The number that the whole text is, unsigned; None where it is none, or could be two."""
    if text.isdecimal() and text.isascii():
        return Decimal(text)
    if NUMBER.fullmatch(text) is None:
        return None
    if "," in text:
        if comma is Comma.OPEN:
            return None
        text = text.replace(",", "") if comma is Comma.THOUSANDS else text.replace(".", "").replace(",", ".")
    elif text.count(".") > 1:
        return None
    return Decimal(text) if text[-1] != "." and text.count(".") <= 1 else None


def whole(number: Decimal | None) -> int | None:
    """The number as a count; None where it is none."""
    return int(number) if number is not None and number == number.to_integral_value() else None
