"""A workbook's visible sheets as rows of text.

Only values are read: no formulas are worked out, no macros run, no links followed. A formula whose result the file
does not keep stands as it is written, "=50+50", so that its cell is not taken for an empty one.
"""

from __future__ import annotations

import io
from collections.abc import Iterable, Iterator
from datetime import date, datetime, time, timedelta
from decimal import Decimal

from openpyxl import Workbook, load_workbook

from engine.sheets.packed import looked_into
from engine.sheets.rows import MOST_COLUMNS, Rows, Sheet
from engine.sheets.unreadable import Unreadable
from engine.values.load import plain

SECONDS_AN_HOUR = 3600
TEXT_RESULT = "str"
"""The kind of a cell whose formula came to a text, perhaps an empty one."""

Values = tuple[object, ...]


def workbook_sheets(content: bytes, most_rows: int) -> tuple[Sheet, ...]:
    """The visible sheets in their order.

    Errors: Unreadable for a broken workbook, or one of more than `most_rows` rows.
    """
    packed = looked_into(content, most_rows)
    try:
        book = _opened(content, results=True)
        formulas = _opened(content, results=False) if packed.formulas else None
        sheets = tuple(
            Sheet(sheet.title, _rows(_told(book, formulas, sheet.title), most_rows))
            for sheet in book.worksheets
            if sheet.sheet_state == "visible"
        )
        book.close()
    except Unreadable:
        raise
    except Exception as error:  # openpyxl raises whatever the broken part of a file leads it to
        expected = f"a whole .xlsx file ({type(error).__name__})"
        raise Unreadable("the workbook", expected, "save it again, or as .csv") from error
    return sheets


def _opened(content: bytes, *, results: bool) -> Workbook:
    return load_workbook(io.BytesIO(content), read_only=True, data_only=results, keep_links=False)


def _told(book: Workbook, formulas: Workbook | None, name: str) -> Iterator[Values]:
    """The values of each row; of a formula its result, or the formula where none is kept."""
    if formulas is None:
        yield from book[name].iter_rows(max_col=MOST_COLUMNS, values_only=True)
        return
    results = book[name].iter_rows(max_col=MOST_COLUMNS)
    written = formulas[name].iter_rows(max_col=MOST_COLUMNS, values_only=True)
    for cells, formed in zip(results, written, strict=True):
        yield tuple(
            formula if cell.value is None and cell.data_type != TEXT_RESULT else cell.value
            for cell, formula in zip(cells, formed, strict=True)
        )


def _rows(rows: Iterable[Values], most_rows: int) -> Rows:
    """The rows that hold something, with their numbers in the sheet."""
    found = []
    for number, cells in enumerate(rows, start=1):
        if cells.count(None) == len(cells):
            continue
        told = tuple(_cell(value) for value in cells)
        if any(told):
            found.append((number, told))
        if len(found) > most_rows:
            raise Unreadable(f"more than {most_rows} rows", f"a sheet of up to {most_rows} rows", "send it in parts")
    return found


def _cell(value: object) -> str:
    """What a cell shows, as text."""
    match value:
        case None:
            return ""
        case bool():
            return "yes" if value else "no"
        case int():
            return str(value)
        case float():
            return plain(Decimal(repr(round(value, 3))))
        case datetime() | date():
            return value.strftime("%Y-%m-%d")
        case time():
            return _clock(value.hour * SECONDS_AN_HOUR + value.minute * 60 + value.second)
        case timedelta():
            return _clock(int(value.total_seconds()))
        case _:
            return "; ".join(str(value).splitlines())


def _clock(seconds: int) -> str:
    """Minutes and seconds. 1:30 typed into a cell is kept as hours and minutes, and no one rests for hours."""
    if seconds >= SECONDS_AN_HOUR:
        seconds //= 60
    return f"{seconds // 60}:{seconds % 60:02}"
