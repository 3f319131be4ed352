"""An old log from the rows of one or several sheets."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date

from engine.catalogue.catalogue import Catalogue
from engine.imports.by_column import row_by_row
from engine.imports.columns import is_header, meaning_of
from engine.imports.counts import CannotBe, SetColumn, set_column
from engine.imports.dates import Day, date_order, days_of
from engine.imports.efforts import scale_of
from engine.imports.entries import Entries, Entry, old_log, too_long
from engine.imports.headers import Field
from engine.imports.names import Names, is_assisted
from engine.imports.numbers import comma_of
from engine.imports.pain import tells_pain
from engine.imports.row_sets import TableHabits, row_sets, runs_of_sets
from engine.imports.said_sets import SaidSets
from engine.imports.table import Row, rows_of
from engine.imports.values import Habits, NameMatch, OldLog, OldNote
from engine.sheets.rows import HEADER_WITHIN, Sheet
from engine.values.exercise import Exercise

MOST_ROWS = 30_000
MOST = 0.5


def read_sheets(sheets: Sequence[Sheet], habits: Habits, catalogue: Catalogue) -> OldLog | None:
    """The log that sheets hold; None where they hold none: no table of sets, or one without days gone by."""
    names = Names(catalogue, habits.taught)
    tables = [sheet for sheet in sheets if sheet.has_header(is_header)]
    if not tables:
        tables = [turned for sheet in sheets if (turned := row_by_row(sheet, names)) is not None]
    count = sum(len(sheet.rows) for sheet in tables)
    if count > MOST_ROWS:
        return too_long(count, MOST_ROWS)
    rows = [row for sheet in tables for row in rows_of(sheet, habits.unit)]
    written = [row.written for row in rows]
    dated = [one for one in written if one is not None]
    if not rows or len(dated) < MOST * len(rows):
        return None
    order = date_order(dated, habits.unit, habits.today)
    days = days_of(dated, order, habits.today)
    if _is_plan(tables, days):
        return None
    reader = _Rows(_table_habits(rows, habits), names, SaidSets(catalogue, habits))
    each = iter(days)
    for row, one in zip(rows, written, strict=True):
        reader.read(row, next(each) if one is not None else _no_date(row))
    return old_log(reader.entries, reader.names.written(), order, habits.unit if reader.assumed_unit else None)


def _no_date(row: Row) -> str:
    return f"no date that I can read: {row.date}" if row.date else "no date"


def _is_plan(tables: Sequence[Sheet], days: Sequence[Day]) -> bool:
    """Whether the dates are those of a plan: all to come, or under a column of days beside columns of a plan alone."""
    if all(isinstance(day, str) for day in days):
        return any(day == "the date is in the future" for day in days)
    meanings = (meaning_of(cell.strip()) for sheet in tables for cell in _header(sheet))
    headed = {meaning[0] for meaning in meanings if meaning is not None}
    return Field.PLANNED in headed and Field.DATE not in headed


def _header(sheet: Sheet) -> Sequence[str]:
    return next((cells for _, cells in sheet.rows[:HEADER_WITHIN] if is_header(cells)), ())


def _table_habits(rows: Sequence[Row], habits: Habits) -> TableHabits:
    return TableHabits(
        unit=habits.unit,
        sets=_set_column(rows),
        comma=comma_of(_cells(rows, Field.LOAD)),
        effort=scale_of(_cells(rows, Field.EFFORT)),
    )


def _set_column(rows: Sequence[Row]) -> SetColumn:
    if any(Field.SETS in row.cells and Field.SET_NUMBER in row.cells for row in rows):
        return SetColumn.COUNTS
    return set_column(runs_of_sets(rows), singular=any(Field.SET_NUMBER in row.cells for row in rows))


def _cells(rows: Sequence[Row], kind: Field) -> Iterator[str]:
    for row in rows:
        for cells in (row.cells, *row.sets):
            if kind in cells:
                yield cells[kind].text


@dataclass(slots=True)
class _Rows:
    """Rows to entries, one by one: a row is taken whole or not at all."""

    habits: TableHabits
    names: Names
    said_sets: SaidSets
    entries: Entries = field(default_factory=Entries)
    assumed_unit: bool = False
    assisted: dict[str, bool] = field(default_factory=dict)

    def read(self, row: Row, day: Day) -> None:
        if not row.exercise:
            self.entries.leave_out(row.line, row.text, "no exercise")
            return
        exercise = self.names.exercise(row.exercise)
        if exercise is None:
            self.entries.leave_out(row.line, row.text, self._which(row.exercise), row.exercise)
        elif isinstance(day, str):
            self.entries.leave_out(row.line, row.text, day)
        else:
            try:
                self.entries.read.append(self._entry(row, day, exercise))
            except CannotBe as reason:
                self.entries.leave_out(row.line, row.text, str(reason))

    def _which(self, written: str) -> str:
        met = self.names.look_up(written)
        return f"which one: {' or '.join(met.meant)}?" if met.match is NameMatch.OPEN else "unknown exercise"

    def _entry(self, row: Row, day: date, exercise: Exercise) -> Entry:
        if row.exercise not in self.assisted:
            self.assisted[row.exercise] = is_assisted(row.exercise)
        found = row_sets(row, exercise, self.assisted[row.exercise], self.habits, self.said_sets)
        self.assumed_unit |= found.assumed_unit
        words = [cells[Field.NOTES].text for cells in (row.cells, *row.sets) if Field.NOTES in cells]
        notes = tuple(
            OldNote(row.line, day, text, exercise.name, tells_pain(text, self.names.catalogue))
            for text in (*words, *found.words)
        )
        return Entry(row.line, row.text, day, found.sets, notes)
