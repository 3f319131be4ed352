"""Sheets that have no column of exercises, written out with one row for each day and exercise.

date | squat | bench press      a column for each exercise, the sets in the cells
exercise | 4 Mar | 6 Mar        a column for each day
date | reps | weight            a sheet for each exercise: its name, or the line above the headers, names it
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from engine.imports.columns import OF_WORK, meaning_of
from engine.imports.headers import Field
from engine.imports.names import Names
from engine.imports.written_dates import written_date
from engine.sheets.rows import HEADER_WITHIN, Rows, Sheet

HEADER = ("date", "exercise", "result")
DATES = frozenset((Field.DATE, Field.DAY))


@dataclass(frozen=True, slots=True)
class WrittenOut:
    """The sheet row by row, and the headers of columns that hold something else."""

    sheet: Sheet
    not_read: tuple[str, ...] = ()


def row_by_row(sheet: Sheet, names: Names) -> WrittenOut | None:
    """The same sheet with one row for each day and exercise; None where it is none of these."""
    title = sheet.name
    for place, (_, raw) in enumerate(sheet.rows[:HEADER_WITHIN]):
        cells = [cell.strip() for cell in raw]
        rows = sheet.rows[place + 1 :]
        found = (
            _by_lift(sheet, cells, rows, names) or _by_day(sheet, cells, rows) or _of_one(sheet, place, title, names)
        )
        if found is not None:
            return found
        filled = [cell for cell in cells if cell]
        title = filled[0] if len(filled) == 1 else title
    return None


def _by_lift(sheet: Sheet, cells: Sequence[str], rows: Rows, names: Names) -> WrittenOut | None:
    dates = [column for column, cell in enumerate(cells) if _field(cell) in DATES]
    lifts = [column for column, cell in enumerate(cells) if names.look_up(cell).meant]
    if not dates or not lifts:
        return None
    found, on = [], ""
    for line, row in rows:
        on = _at(row, dates[0]) or on
        found += [(line, (on, cells[column], _at(row, column))) for column in lifts if _at(row, column)]
    return WrittenOut(_sheet(sheet, found), _others(cells, (dates[0], *lifts), rows))


def _by_day(sheet: Sheet, cells: Sequence[str], rows: Rows) -> WrittenOut | None:
    name = next((column for column, cell in enumerate(cells) if cell), -1)
    days = [column for column, cell in enumerate(cells) if column != name and cell and written_date(cell) is not None]
    if name < 0 or not days or _field(cells[name]) is not Field.EXERCISE:
        return None
    found = [
        (line, (cells[column], _at(row, name), _at(row, column)))
        for column in days
        for line, row in rows
        if _at(row, name) and _at(row, column)
    ]
    return WrittenOut(_sheet(sheet, found), _others(cells, (name, *days), rows))


def _of_one(sheet: Sheet, place: int, title: str, names: Names) -> WrittenOut | None:
    header = sheet.rows[place][1]
    fields = {_field(cell.strip()) for cell in header}
    if not fields & DATES or not fields & OF_WORK or Field.EXERCISE in fields or not names.look_up(title).meant:
        return None
    first, *rows = sheet.rows[place:]
    named = [(line, (title, *cells)) for line, cells in rows]
    return WrittenOut(Sheet(sheet.name, ((first[0], ("exercise", *header)), *named)))


def _sheet(sheet: Sheet, rows: Sequence[tuple[int, tuple[str, str, str]]]) -> Sheet:
    return Sheet(sheet.name, ((0, HEADER), *rows))


def _field(cell: str) -> Field | None:
    meaning = meaning_of(cell) if cell else None
    return meaning[0] if meaning is not None else None


def _at(row: Sequence[str], column: int) -> str:
    return row[column].strip() if column < len(row) else ""


def _others(cells: Sequence[str], read: Sequence[int], rows: Rows) -> tuple[str, ...]:
    others = (column for column, cell in enumerate(cells) if cell and column not in read)
    return tuple(cells[column] for column in others if any(_at(row, column) for _, row in rows))
