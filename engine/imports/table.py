"""The rows of a table of sets: what each cell holds, with what merged and empty cells carry down from above.

An empty date is that of the row above; an empty name too, inside one day. A row of one cell that is a date opens a day.
Header rows may come again. A sheet that has no column of names is of the exercise that it is called by.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from engine.imports.columns import OF_WORK, PARTS_OF, Column, columns_of, meaning_of
from engine.imports.headers import Field
from engine.imports.old_rows import Cell, Cells, Row
from engine.imports.totals import MAY_BE, NOT_A_SET, says_total, unnamed_totals
from engine.imports.written_dates import written_date
from engine.sheets.rows import Rows, Sheet
from engine.values.load import Unit

TWO = re.compile(
    r"([+-]?\d[\d.,]*(?: ?(?:kg|lbs?))?|bw)\s*[x×*хХ@/]\s*([+-]?\d[\d.,]*(?: ?(?:kg|lbs?))?|bw)", re.IGNORECASE
)
SAMPLE = 200
"""So many rows below a header tell what its columns hold."""
MOST = 0.5


@dataclass(slots=True)
class Reader:
    """One walk over a sheet. `date` and `exercise` are what the last rows said."""

    sheet: Sheet
    unit: Unit
    columns: tuple[Column, ...] = ()
    name_place: int = 0
    date: str = ""
    exercise: str = ""
    rows: list[Row] = field(default_factory=list)
    unread: dict[int, str] = field(default_factory=dict)
    used: set[int] = field(default_factory=set)

    def run(self) -> None:
        for place, (line, raw) in enumerate(self.sheet.rows):
            cells = tuple(cell.strip() for cell in raw)
            if not self._is_header(cells, place):
                self._read(line, cells)
        for place in unnamed_totals(self.rows):
            self.rows[place] = replace(self.rows[place], why=MAY_BE)

    @property
    def columns_not_read(self) -> tuple[str, ...]:
        """The headers of columns that hold something and are none of ours."""
        return tuple(header for place, header in self.unread.items() if place in self.used)

    def _read(self, line: int, cells: tuple[str, ...]) -> None:
        filled = [cell for cell in cells if cell]
        if self.columns and says_total(self._labels(cells)):
            if any(letter.isdigit() for cell in cells for letter in cell):
                self.rows.append(Row(line, "", "", {}, (), cells, why=NOT_A_SET))
        elif len(filled) == 1 and written_date(filled[0]) is not None:
            self.date, self.exercise = filled[0], ""
        elif self.columns and any(cell.strip("-:= ") for cell in filled):
            self._take(line, cells)

    def _labels(self, cells: tuple[str, ...]) -> list[str]:
        """The cells that may say what a row is: names, dates, and those of columns that are none of ours."""
        told = {column.place for column in self.columns if column.field not in (Field.EXERCISE, Field.DATE)}
        return [cell for place, cell in enumerate(cells) if cell and place not in told]

    def _is_header(self, cells: tuple[str, ...], place: int) -> bool:
        if self.columns and not self._repeats(cells):
            return False
        found = columns_of(cells)
        if found is None:
            return False
        known = {column.place for column in found}
        self.unread |= {at: cell for at, cell in enumerate(cells) if cell and at not in known and at not in self.unread}
        self.columns = _in_order(_with_one_date(found, self.sheet.rows[place + 1 : place + 1 + SAMPLE]), self.unit)
        self.name_place = next(column.place for column in self.columns if column.field is Field.EXERCISE)
        return True

    def _repeats(self, cells: tuple[str, ...]) -> bool:
        """Whether the cell under the name of the exercise is itself such a header."""
        if self.name_place >= len(cells) or not cells[self.name_place]:
            return False
        meaning = meaning_of(cells[self.name_place])
        return meaning is not None and meaning[0] is Field.EXERCISE

    def _take(self, line: int, cells: tuple[str, ...]) -> None:
        told, sets = self._told(cells)
        opened = told.get(Field.DATE)
        date = opened.text if opened else self.date
        name = told.get(Field.EXERCISE)
        exercise = name.text if name else self.exercise if date == self.date else ""
        self.date, self.exercise = date, exercise
        self.used |= {place for place in self.unread if place < len(cells) and cells[place]}
        if sets or Field.NOTES in told or any(kind in OF_WORK for kind in told):
            self.rows.append(Row(line, date, exercise, told, sets, cells, name is not None, opened is not None))

    def _told(self, cells: tuple[str, ...]) -> tuple[dict[Field, Cell], tuple[Cells, ...]]:
        told: dict[Field, Cell] = {}
        numbered: dict[int, dict[Field, Cell]] = {}
        for column in self.columns:
            if column.place >= len(cells) or not (text := cells[column.place]):
                continue
            into = numbered.setdefault(column.number, {}) if column.number else told
            if column.field in PARTS_OF:
                into.update(_two(column, text))
            elif column.field not in into:
                into[column.field] = Cell(text, column.unit)
            elif column.field is Field.NOTES:
                into[column.field] = Cell(f"{into[column.field].text}; {text}")
        in_order = (numbered[number] for number in sorted(numbered))
        return told, tuple(cells for cells in in_order if any(kind in OF_WORK for kind in cells))


def _two(column: Column, text: str) -> Cells:
    """A cell of two numbers in the order of its header; any other is read as people write sets."""
    found = TWO.fullmatch(text)
    if found is None:
        return {Field.WORK: Cell(text, column.unit)}
    return {
        kind: Cell(part, column.unit) for kind, part in zip(PARTS_OF[column.field], (found[1], found[2]), strict=True)
    }


def _in_order(columns: Sequence[Column], unit: Unit) -> tuple[Column, ...]:
    """The columns as they are to be asked: the better header first, of two units the writer's own."""
    own = {Unit.KG: ("kg", "kgs", "kilos"), Unit.LB: ("lb", "lbs", "pounds")}[unit]
    return tuple(sorted(columns, key=lambda one: (bool(one.unit) and one.unit not in own, one.rank, one.place)))


def _with_one_date(columns: Sequence[Column], rows: Rows) -> list[Column]:
    """The columns with one date among them: of those that may be, the one with the most dates in it.

    A column that is called a day is one only where most of its cells are dates.
    """
    dated: list[tuple[float, int, int, Column]] = []
    for column in columns:
        if column.field in (Field.DATE, Field.DAY):
            share = _share_of_dates(column, rows)
            is_day = column.field is Field.DAY
            if not is_day or share >= MOST:
                dated.append((-share, is_day, column.rank, column))
    chosen = [replace(min(dated, key=lambda one: one[:3])[3], field=Field.DATE)] if dated else []
    return chosen + [column for column in columns if column.field not in (Field.DATE, Field.DAY)]


def _share_of_dates(column: Column, rows: Rows) -> float:
    cells = [cells[column.place].strip() for _, cells in rows if column.place < len(cells)]
    filled = [cell for cell in cells if cell]
    return sum(written_date(cell) is not None for cell in filled) / len(filled) if filled else 0.0


@dataclass(frozen=True, slots=True)
class Table:
    """The rows of a sheet that name work, hold a note beside an exercise, or are no sets though they look so."""

    rows: tuple[Row, ...]
    not_read: tuple[str, ...]


def table_of(sheet: Sheet, unit: Unit) -> Table:
    """The rows of a sheet, and the headers of its columns that are not read."""
    reader = Reader(sheet, unit)
    reader.run()
    return Table(tuple(reader.rows), reader.columns_not_read)
