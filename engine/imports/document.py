"""An old log from a document of any kind, or the finding that it is none."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.imports.columns import is_header
from engine.imports.diary import read_diary
from engine.imports.sheet_log import read_sheets
from engine.imports.values import Habits, OldLog
from engine.sheets.document import DocumentKind, document_kind, sheets_of
from engine.sheets.rows import HEADER_WITHIN
from engine.sheets.text import csv_rows, decoded
from engine.sheets.unreadable import Unreadable

MOST_ROWS_WITH_GAPS = 200_000


def read_log(file_name: str, content: bytes, habits: Habits, catalogue: Catalogue) -> OldLog | None:
    """The old log that a document holds; None where it holds none: a plan, say.

    Errors: Unreadable for what no reader of ours can read.
    """
    kind = document_kind(file_name, content)
    if kind is DocumentKind.TEXT and not _holds_table(text := decoded(content)):
        return read_diary(text, habits, catalogue)
    kind = DocumentKind.CSV if kind is DocumentKind.TEXT else kind
    return read_sheets(sheets_of(kind, content, is_header, MOST_ROWS_WITH_GAPS), habits, catalogue)


def _holds_table(text: str) -> bool:
    """Whether one of the first lines of a text heads a table, as when the rows of a sheet are pasted."""
    first = "\n".join(text.splitlines()[:HEADER_WITHIN])
    try:
        return any(is_header(cells) for _, cells in csv_rows(first, is_header, HEADER_WITHIN))
    except Unreadable:
        return False
