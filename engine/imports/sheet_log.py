"""An old log from the rows of one or several sheets."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from engine.catalogue.catalogue import Catalogue
from engine.imports.by_column import row_by_row
from engine.imports.columns import is_header, meaning_of
from engine.imports.counts import CannotBe, SetColumn, set_column
from engine.imports.dates import Day, date_order, days_of, is_settled
from engine.imports.efforts import scale_of
from engine.imports.entries import Entries, Entry, old_log, refuse_too_long
from engine.imports.headers import Field
from engine.imports.names import Names, is_assisted
from engine.imports.numbers import comma_of
from engine.imports.old_rows import Row
from engine.imports.pain import tells_pain
from engine.imports.row_sets import TableHabits, row_sets, runs_of_sets
from engine.imports.said_sets import SaidSets
from engine.imports.table import table_of
from engine.imports.values import Habits, NameMatch, OldLog, OldNote
from engine.imports.written_dates import is_weekday
from engine.sheets.rows import HEADER_WITHIN, Sheet
from engine.values.exercise import Exercise, Measure

MOST_ROWS = 30_000
MOST = 0.5
SHOWN = 20


def read_sheets(sheets: Sequence[Sheet], habits: Habits, catalogue: Catalogue) -> OldLog | None:
    """The log that sheets hold; None where they hold none: no table of sets, or one without days gone by.

    Errors: Unreadable for more rows than are read at once.
    """
    names = Names(catalogue, habits.taught)
    tables, not_read = _tables(sheets, names)
    refuse_too_long(sum(len(sheet.rows) for sheet in tables), MOST_ROWS)
    read = [table_of(sheet, habits.unit) for sheet in tables]
    not_read += [header for table in read for header in table.not_read]
    rows = [row for table in read for row in table.rows]
    written = [row.written for row in rows]
    dated = [one for one in written if one is not None]
    if not _is_dated(tables, rows, len(dated)):
        return None
    order = date_order(dated, habits.unit, habits.today)
    if order is not None:
        order = habits.order or order
    days = days_of(dated, order, habits.today)
    if _is_plan(tables, days):
        return None
    reader = _Rows(_table_habits(rows, habits, names), names, SaidSets(catalogue, habits))
    each = iter(days)
    for row, one in zip(rows, written, strict=True):
        reader.read(row, next(each) if one is not None else _no_date(row))
    assumed = habits.unit if reader.assumed_unit else None
    log = old_log(reader.entries, reader.names.written(), order, assumed)
    return replace(log, not_read=tuple(dict.fromkeys(not_read)), order_assumed=not is_settled(dated))


def _tables(sheets: Sequence[Sheet], names: Names) -> tuple[list[Sheet], list[str]]:
    """The sheets that hold sets row by row, and the headers of columns left behind in writing them so."""
    tables = [sheet for sheet in sheets if sheet.has_header(is_header)]
    if tables:
        return tables, []
    found = [one for sheet in sheets if (one := row_by_row(sheet, names)) is not None]
    return [one.sheet for one in found], [header for one in found for header in one.not_read]


def _is_dated(tables: Sequence[Sheet], rows: Sequence[Row], dated: int) -> bool:
    """Whether the rows stand under days, as those of a log do and those of most plans do not.

    Under a header of dates they are a log's, whatever the cells hold, unless those name days of the week.
    """
    sets = sum(not row.why for row in rows)
    if sets and dated >= MOST * sets:
        return True
    headed = Field.DATE in _headed(tables) and Field.PLANNED not in _headed(tables)
    return headed and bool(tables) and not any(is_weekday(row.date) for row in rows)


def _no_date(row: Row) -> str:
    return f"no date that I can read: {row.date}" if row.date else "no date"


def _is_plan(tables: Sequence[Sheet], days: Sequence[Day]) -> bool:
    """Whether the dates are those of a plan: all to come, or under a column of days beside columns of a plan alone."""
    if days and all(isinstance(day, str) for day in days):
        return any(day == "the date is in the future" for day in days)
    headed = _headed(tables)
    return Field.PLANNED in headed and Field.DATE not in headed


def _headed(tables: Sequence[Sheet]) -> frozenset[Field]:
    """What the tables have columns for."""
    meanings = (meaning_of(cell.strip()) for sheet in tables for cell in _header(sheet) if cell.strip())
    return frozenset(meaning[0] for meaning in meanings if meaning is not None)


def _header(sheet: Sheet) -> Sequence[str]:
    return next((cells for _, cells in sheet.rows[:HEADER_WITHIN] if is_header(cells)), ())


def _table_habits(rows: Sequence[Row], habits: Habits, names: Names) -> TableHabits:
    return TableHabits(
        unit=habits.unit,
        sets=_set_column(rows),
        comma=comma_of(_cells(rows, Field.LOAD)),
        effort=scale_of(_cells(rows, Field.EFFORT)),
        session_times=any(_has_other_time(row, names) for row in rows),
    )


def _has_other_time(row: Row, names: Names) -> bool:
    """Whether a lift that is counted in reps alone has a time beside it."""
    cell = row.cells.get(Field.DURATION)
    if cell is None or not cell.text.strip("0:.,-"):
        return False
    measures = [names.catalogue.exercises[meant].measure for meant in names.look_up(row.exercise).meant]
    return bool(measures) and all(measure is Measure.REPS for measure in measures)


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
        formula = next((cell for cell in row.raw if cell.startswith("=")), "")
        if row.why:
            self.entries.leave_out(row.line, row.text, row.why)
            return
        if formula:
            self.entries.leave_out(row.line, row.text, f"a formula without its result: {formula[:SHOWN]}")
            return
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
