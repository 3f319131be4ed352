"""Bytes to text, and text to rows: any encoding a spreadsheet writes, any delimiter."""

from __future__ import annotations

import csv
import io

from engine.sheets.rows import HEADER_WITHIN, MOST_COLUMNS, IsHeader, Rows, has_header
from engine.sheets.unreadable import Unreadable

DELIMITERS = ",;\t|"
ENCODINGS = ("utf-8-sig", "cp1252")


def decoded(content: bytes) -> str:
    """The text of a file: UTF-16 where it is marked so, else UTF-8, else the code page of Western Windows."""
    if content.startswith((b"\xff\xfe", b"\xfe\xff")):
        return content.decode("utf-16", errors="replace")
    for encoding in ENCODINGS:
        try:
            return content.decode(encoding)
        except UnicodeDecodeError:
            continue
    return content.decode("latin-1")


def csv_rows(text: str, is_header: IsHeader) -> Rows:
    """The rows of the text, parted by whichever delimiter makes a header row of one of the first.

    Errors: Unreadable.
    """
    read = []
    for delimiter in DELIMITERS:
        rows = _parted(text, delimiter)
        if has_header(rows, is_header):
            return rows
        read.append(rows)
    return max(read, key=lambda rows: max((len(cells) for _, cells in rows[:HEADER_WITHIN]), default=0))


def _parted(text: str, delimiter: str) -> Rows:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    rows = []
    try:
        for cells in reader:
            rows.append((reader.line_num, tuple(cell.replace("\n", "; ") for cell in cells[:MOST_COLUMNS])))
    except csv.Error as error:
        raise Unreadable(f"line {reader.line_num}", f"rows of cells ({error})", "save it as .csv again") from error
    return [(number, cells) for number, cells in rows if any(cell.strip() for cell in cells)]
