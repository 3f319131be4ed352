"""A row of a table of sets, with what its cells say."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from engine.imports.headers import Field
from engine.imports.written_dates import Written, written_date

SHOWN_CELLS = 8


@dataclass(frozen=True, slots=True)
class Cell:
    """What a cell says, and the unit that its header names."""

    text: str
    unit: str = ""


Cells = Mapping[Field, Cell]


@dataclass(frozen=True, slots=True)
class Row:
    """One row with an exercise. `sets` are the cells of single sets, in order, where columns are numbered.

    `named` and `dated`: by a cell of its own, not by one above it. `why` tells what else the row is than sets.
    """

    line: int
    date: str
    exercise: str
    cells: Cells
    sets: tuple[Cells, ...]
    raw: tuple[str, ...]
    named: bool = True
    dated: bool = True
    why: str = ""

    @property
    def text(self) -> str:
        """The row as a person would quote it."""
        return " | ".join([cell for cell in self.raw if cell][:SHOWN_CELLS])

    @property
    def written(self) -> Written | None:
        return written_date(self.date)
