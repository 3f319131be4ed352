"""A plan as a document: plain text, .csv, or .xlsx, whose columns carry the same fields as the lines of a plan.

Only values are read from a workbook: no formulas are worked out, no macros run, no links followed.
"""

from __future__ import annotations

import csv
import io
import zipfile
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from pathlib import PurePath

from openpyxl import load_workbook

from engine.catalogue.catalogue import Catalogue
from engine.plan.columns import Table, header_fields
from engine.plan.lines import PlanLine
from engine.plan.text import ParsedPlan, parse_plan, read_lines
from engine.values.load import Unit, plain
from engine.values.problem import Problem

TEXT_KINDS = frozenset({".txt", ".md", ".markdown", ".text", ""})
CSV_KINDS = frozenset({".csv", ".tsv", ".tab"})
LARGEST_FILE = 5_000_000
LARGEST_UNPACKED = 50_000_000
MOST_ROWS = 2_000
MOST_COLUMNS = 60
HEADER_WITHIN = 30
DELIMITERS = ",;\t|"
ENCODINGS = ("utf-8-sig", "cp1252")
SECONDS_AN_HOUR = 3600

Rows = Sequence[tuple[int, Sequence[str]]]


class _Unreadable(Exception):
    """A document that cannot be read, with what was read, what was expected and what to send instead."""

    def __init__(self, read: str, expected: str, try_instead: str) -> None:
        super().__init__(read)
        self.problem = Problem(0, read, expected, try_instead)


def parse_sheet(file_name: str, content: bytes, catalogue: Catalogue, unit: Unit) -> ParsedPlan:
    """The plan that a document states, or its problems; the line of a problem is the row of the sheet.

    Errors: none; a document of another kind, too large or broken comes back as one problem.
    """
    kind = PurePath(file_name).suffix.lower()
    try:
        if len(content) > LARGEST_FILE:
            raise _Unreadable(f"{len(content)} bytes", f"a file of up to {LARGEST_FILE} bytes", "send one block a file")
        if kind in TEXT_KINDS:
            return parse_plan(_decoded(content), catalogue, unit)
        if kind in CSV_KINDS:
            return _from_rows(_csv_rows(_decoded(content)), catalogue, unit)
        if kind == ".xlsx":
            return _from_rows(_workbook_rows(content), catalogue, unit)
        raise _Unreadable(
            file_name, f"another kind of file: I can't read {kind} files", "send .csv, .xlsx or paste the text"
        )
    except _Unreadable as unreadable:
        return ParsedPlan(None, (unreadable.problem,), ())


def _from_rows(rows: Rows, catalogue: Catalogue, unit: Unit) -> ParsedPlan:
    if len(rows) > MOST_ROWS:
        raise _Unreadable(f"{len(rows)} rows", f"a sheet of up to {MOST_ROWS} rows", "send one block a file")
    if not any(header_fields(cells) for _, cells in rows[:HEADER_WITHIN]):
        expected = "a row of headers with at least exercise, sets and reps"
        raise _Unreadable(
            " | ".join(rows[0][1])[:60] if rows else "an empty sheet", expected, "exercise,sets,reps,load"
        )
    table = Table()
    lines: list[PlanLine] = [line for number, cells in rows for line in table.lines(number, cells)]
    parsed = read_lines(lines, catalogue, unit)
    problems = sorted((*parsed.problems, *table.warnings), key=lambda problem: problem.line)
    return replace(parsed, problems=tuple(problems))


def _decoded(content: bytes) -> str:
    if content.startswith((b"\xff\xfe", b"\xfe\xff")):
        return content.decode("utf-16", errors="replace")
    for encoding in ENCODINGS:
        try:
            return content.decode(encoding)
        except UnicodeDecodeError:
            continue
    return content.decode("latin-1")


def _csv_rows(text: str) -> Rows:
    """The rows of the text, parted by whichever delimiter makes a header row of one of the first."""
    read = {delimiter: _parted(text, delimiter) for delimiter in DELIMITERS}
    for rows in read.values():
        if any(header_fields(cells) for _, cells in rows[:HEADER_WITHIN]):
            return rows
    return max(read.values(), key=lambda rows: max((len(cells) for _, cells in rows[:HEADER_WITHIN]), default=0))


def _parted(text: str, delimiter: str) -> Rows:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    rows = []
    try:
        for cells in reader:
            rows.append((reader.line_num, tuple(cell.replace("\n", "; ") for cell in cells[:MOST_COLUMNS])))
    except csv.Error as error:
        raise _Unreadable(f"line {reader.line_num}", f"rows of cells ({error})", "save it as .csv again") from error
    return [(number, cells) for number, cells in rows if any(cell.strip() for cell in cells)]


def _workbook_rows(content: bytes) -> Rows:
    """The rows of the first sheet that has a header row, or else of the first sheet."""
    _refuse_bombs(content)
    try:
        book = load_workbook(io.BytesIO(content), read_only=True, data_only=True, keep_links=False)
        sheets = [
            _sheet_rows(sheet.iter_rows(max_col=MOST_COLUMNS, values_only=True))
            for sheet in book.worksheets
            if sheet.sheet_state == "visible"
        ]
        book.close()
    except _Unreadable:
        raise
    except Exception as error:  # openpyxl raises whatever the broken part of a file leads it to
        raise _Unreadable(
            "the workbook", f"a whole .xlsx file ({type(error).__name__})", "save it again, or as .csv"
        ) from error
    with_header = (rows for rows in sheets if any(header_fields(cells) for _, cells in rows[:HEADER_WITHIN]))
    return next(with_header, sheets[0] if sheets else [])


def _refuse_bombs(content: bytes) -> None:
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as archive:
            size = sum(entry.file_size for entry in archive.infolist())
    except (zipfile.BadZipFile, ValueError, OSError) as error:
        raise _Unreadable("the workbook", "a whole .xlsx file", "save it again, or as .csv") from error
    if size > LARGEST_UNPACKED:
        raise _Unreadable(f"{size} bytes unpacked", f"up to {LARGEST_UNPACKED}", "send the plan's sheet alone, as .csv")


def _sheet_rows(rows: Iterable[tuple[object, ...]]) -> Rows:
    found = []
    for number, cells in enumerate(rows, start=1):
        told = tuple(_cell(value) for value in cells)
        if number > MOST_ROWS * 5:
            raise _Unreadable(f"more than {number} rows", f"a sheet of up to {MOST_ROWS} rows", "send one block a file")
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
