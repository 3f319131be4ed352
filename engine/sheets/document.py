"""Which kind of document it is, and its sheets."""

from __future__ import annotations

from enum import Enum
from pathlib import PurePath

from engine.sheets.rows import IsHeader, Sheet
from engine.sheets.text import csv_rows, decoded
from engine.sheets.unreadable import Unreadable
from engine.sheets.workbook import workbook_sheets

LARGEST_FILE = 5_000_000
PACKED = b"PK\x03\x04"
"""How every .xlsx file begins. Source: ISO/IEC 21320-1, a file of this kind is a ZIP archive."""
COMPOUND = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
"""How workbooks of the older kind begin, and those under a password. Source: [MS-CFB] 2.2, header signature."""


class DocumentKind(Enum):
    TEXT = "text"
    CSV = "csv"
    WORKBOOK = "workbook"


KINDS = {
    **dict.fromkeys((".txt", ".md", ".markdown", ".text", ""), DocumentKind.TEXT),
    **dict.fromkeys((".csv", ".tsv", ".tab"), DocumentKind.CSV),
    ".xlsx": DocumentKind.WORKBOOK,
}


def document_kind(file_name: str, content: bytes) -> DocumentKind:
    """The kind of a document: by its name, unless its first bytes say that it was renamed.

    Errors: Unreadable for another kind of file, an empty one, or one too large.
    """
    if len(content) > LARGEST_FILE:
        raise Unreadable(f"{len(content)} bytes", f"a file of up to {LARGEST_FILE} bytes", "send it in parts")
    suffix = PurePath(file_name).suffix.lower()
    if suffix not in KINDS:
        expected = f"another kind of file: I can't read {suffix} files"
        raise Unreadable(file_name, expected, "send .csv, .xlsx or paste the text")
    if not content.strip(b"\xef\xbb\xff\xfe\xbf\x00 \t\r\n"):
        raise Unreadable("an empty file", "a plan or an old log", "save it again and send it")
    if content.startswith(COMPOUND):
        raise Unreadable(
            "an older or a locked workbook", "an .xlsx file without a password", "save it as .xlsx or .csv"
        )
    if content.startswith(PACKED):
        return DocumentKind.WORKBOOK
    return DocumentKind.CSV if KINDS[suffix] is DocumentKind.WORKBOOK else KINDS[suffix]


def sheets_of(kind: DocumentKind, content: bytes, is_header: IsHeader, most_rows: int) -> tuple[Sheet, ...]:
    """The sheets of a .csv file or a workbook.

    Errors: Unreadable.
    """
    if kind is DocumentKind.WORKBOOK:
        return workbook_sheets(content, most_rows)
    return (Sheet("", csv_rows(decoded(content), is_header, most_rows)),)
