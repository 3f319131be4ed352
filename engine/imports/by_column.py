"""Sheets with a column for each exercise: date | squat | bench press, the sets in the cells."""

from __future__ import annotations

from collections.abc import Sequence

from engine.imports.columns import meaning_of
from engine.imports.headers import Field
from engine.imports.names import Names
from engine.sheets.rows import HEADER_WITHIN, Sheet

HEADER = ("date", "exercise", "result")


def row_by_row(sheet: Sheet, names: Names) -> Sheet | None:
    """The same sheet with one row for each day and exercise; None where its columns are no exercises.

    Shape: the first columns that hold dates head the rows; each other column whose header is the name of one or several
    exercises gives a row for each filled cell.
    """
    for place, (_, cells) in enumerate(sheet.rows[:HEADER_WITHIN]):
        date_column = _date_column(cells)
        lifts = [column for column, cell in enumerate(cells) if names.look_up(cell.strip()).meant]
        if date_column is not None and lifts:
            return Sheet(sheet.name, ((0, HEADER), *_rows(sheet.rows[place + 1 :], cells, date_column, lifts)))
    return None


def _date_column(cells: Sequence[str]) -> int | None:
    meanings = (meaning_of(cell.strip()) if cell.strip() else None for cell in cells)
    dated = (
        place for place, meaning in enumerate(meanings) if meaning is not None and meaning[0] in (Field.DATE, Field.DAY)
    )
    return next(dated, None)


def _rows(
    rows: Sequence[tuple[int, Sequence[str]]], header: Sequence[str], date_column: int, lifts: Sequence[int]
) -> list[tuple[int, tuple[str, str, str]]]:
    found, on = [], ""
    for line, cells in rows:
        on = (cells[date_column].strip() if date_column < len(cells) else "") or on
        found += [
            (line, (on, header[column].strip(), cells[column].strip()))
            for column in lifts
            if column < len(cells) and cells[column].strip()
        ]
    return found
