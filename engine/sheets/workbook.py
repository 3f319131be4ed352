"""A workbook's visible sheets as rows of text.

Only values are read: no formulas are worked out, no macros run, no links followed.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterable
from datetime import date, datetime, time, timedelta
from decimal import Decimal

from openpyxl import load_workbook

from engine.sheets.rows import MOST_COLUMNS, Rows, Sheet
from engine.sheets.unreadable import Unreadable
from engine.values.load import plain

LARGEST_UNPACKED = 50_000_000
SECONDS_AN_HOUR = 3600


def workbook_sheets(content: bytes, most_rows: int) -> tuple[Sheet, ...]:
    """The visible sheets in their order.

    Errors: Unreadable for a broken workbook, or a sheet of more than `most_rows` rows.
    """
    _refuse_bombs(content)
    try:
        book = load_workbook(io.BytesIO(content), read_only=True, data_only=True, keep_links=False)
        sheets = tuple(
            Sheet(sheet.title, _rows(sheet.iter_rows(max_col=MOST_COLUMNS, values_only=True), most_rows))
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


def _refuse_bombs(content: bytes) -> None:
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as archive:
            size = sum(entry.file_size for entry in archive.infolist())
    except (zipfile.BadZipFile, ValueError, OSError) as error:
        raise Unreadable("the workbook", "a whole .xlsx file", "save it again, or as .csv") from error
    if size > LARGEST_UNPACKED:
        raise Unreadable(f"{size} bytes unpacked", f"up to {LARGEST_UNPACKED}", "send the one sheet alone, as .csv")


def _rows(rows: Iterable[tuple[object, ...]], most_rows: int) -> Rows:
    found = []
    for number, cells in enumerate(rows, start=1):
        told = tuple(_cell(value) for value in cells)
        if number > most_rows:
            raise Unreadable(f"more than {most_rows} rows", f"a sheet of up to {most_rows} rows", "send it in parts")
        if any(told):
            found.append((number, told))
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
            return str(value).replace("\n", "; ")


def _clock(seconds: int) -> str:
    """Minutes and seconds. 1:30 typed into a cell is kept as hours and minutes, and no one rests for hours."""
    if seconds >= SECONDS_AN_HOUR:
        seconds //= 60
    return f"{seconds // 60}:{seconds % 60:02}"
