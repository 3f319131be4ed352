"""Rows of text cells, each with its number in the document; rows without a word are left out."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

HEADER_WITHIN = 30
MOST_COLUMNS = 60

Rows = Sequence[tuple[int, Sequence[str]]]
IsHeader = Callable[[Sequence[str]], bool]


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet of a workbook; a .csv file is one sheet without a name."""

    name: str
    rows: Rows

    def has_header(self, is_header: IsHeader) -> bool:
        """Whether one of the first rows is a row of headers."""
        return has_header(self.rows, is_header)


def has_header(rows: Rows, is_header: IsHeader) -> bool:
    """Whether one of the first rows is a row of headers."""
    return any(is_header(cells) for _, cells in rows[:HEADER_WITHIN])
