"""Bytes to text, and text to rows: any encoding a spreadsheet writes, any delimiter."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterator
from itertools import islice

from engine.sheets.rows import HEADER_WITHIN, MOST_COLUMNS, IsHeader, Rows, has_header
from engine.sheets.unreadable import Unreadable

DELIMITERS = ",;\t|"
UTF_8_SIGN = b"\xef\xbb\xbf"
UTF_16_SIGNS = (b"\xff\xfe", b"\xfe\xff")
SAMPLE = 4_096
A_FIFTH = 0.2
CYRILLIC_WORD = re.compile(rb"(?<![A-Za-z])[\xb8\xc0-\xff]{3,}(?![A-Za-z])")
"""Three letters on end beyond ASCII: whole words have them in Cyrillic code pages, hardly one in Western ones."""
LATIN_WORD = re.compile(rb"[A-Za-z][\xb8\xc0-\xff]|[\xb8\xc0-\xff][A-Za-z]")
CENTRAL_LETTER = re.compile(rb"[A-Za-z\xc0-\xff][\xb3\xb9\xbf\x9c\x9f]|[\xb3\x9c][A-Za-z]")
"""Polish letters that are superscripts, signs or seldom letters in the Western code page, beside a letter of a word."""
NEVER_TEXT = re.compile("[\x00-\x08\x0e-\x1a\x1c-\x1f\x7f]")
MOST_NEVER = 0.01


def decoded(content: bytes) -> str:
    """The text of a file, in whichever encoding it is: UTF-16 or UTF-8, else the Windows code page of its letters.

    Errors: Unreadable for what is no text at all.
    Source: the code pages 1250, 1251 and 1252 as Unicode's mapping tables give them; which letters tell them apart is
    from memory.
    """
    text = _in_unicode(content)
    if text is None:
        text = content.decode(_code_page(content), errors="replace")
    sample = text[:SAMPLE]
    if len(NEVER_TEXT.findall(sample)) > MOST_NEVER * len(sample):
        raise Unreadable("the file", "text, or a table", "save it as .csv or .xlsx, or paste the text")
    return NEVER_TEXT.sub("", text)


def _in_unicode(content: bytes) -> str | None:
    if content.startswith(UTF_16_SIGNS):
        return content.decode("utf-16", errors="replace")
    if not content.startswith(UTF_8_SIGN) and (order := _unmarked_utf_16(content[:SAMPLE])):
        return content.decode(order, errors="replace")
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError:
        return None


def _unmarked_utf_16(sample: bytes) -> str:
    """The byte order of UTF-16 without its mark, by where the empty bytes of figures and commas stand; else empty."""
    pairs = len(sample) // 2
    odd, even = sample[1::2].count(0), sample[0::2].count(0)
    if odd > A_FIFTH * pairs and even == 0:
        return "utf-16-le"
    return "utf-16-be" if even > A_FIFTH * pairs and odd == 0 else ""


def _code_page(content: bytes) -> str:
    if len(CYRILLIC_WORD.findall(content)) > len(LATIN_WORD.findall(content)):
        return "cp1251"
    return "cp1250" if CENTRAL_LETTER.search(content) else "cp1252"


def csv_rows(text: str, is_header: IsHeader, most_rows: int) -> Rows:
    """The rows of the text, parted by whichever delimiter makes a header row of one of the first.

    Errors: Unreadable; also for more than `most_rows` rows, without reading on.
    """
    first = {delimiter: list(islice(_parted(text, delimiter), HEADER_WITHIN)) for delimiter in DELIMITERS}
    headed = (delimiter for delimiter, rows in first.items() if has_header(rows, is_header))
    chosen = next(headed, None) or max(
        DELIMITERS, key=lambda one: max((len(cells) for _, cells in first[one]), default=0)
    )
    rows = list(islice(_parted(text, chosen), most_rows + 1))
    if len(rows) > most_rows:
        raise Unreadable(f"more than {most_rows} rows", f"a table of up to {most_rows} rows", "send it in parts")
    return rows


def _parted(text: str, delimiter: str) -> Iterator[tuple[int, tuple[str, ...]]]:
    """The rows with something in them, each with the number of its last line.

    Errors: Unreadable; also for quotation marks that close rows later, whose rows would else vanish into one cell.
    """
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    before = 0
    try:
        for cells in reader:
            if reader.line_num - before > 1:
                _refuse_swallowed(cells, delimiter, before + 1)
            before = reader.line_num
            if any(cell.strip() for cell in cells):
                yield before, tuple(_on_one_line(cell) for cell in cells[:MOST_COLUMNS])
    except csv.Error as error:
        expected = f"rows of cells ({error})"
        raise Unreadable(f"line {reader.line_num}", expected, "save it as .csv again") from error


def _on_one_line(cell: str) -> str:
    return "; ".join(cell.splitlines()) if "\n" in cell or "\r" in cell else cell


def _refuse_swallowed(cells: list[str], delimiter: str, line: int) -> None:
    """Refuse a cell of several lines of which one has as many delimiters as a row of the table needs."""
    needed = max(len(cells) - 1, 2)
    if any(row.count(delimiter) >= needed for cell in cells for row in cell.splitlines()[1:]):
        raise Unreadable(f"line {line}", "a quotation mark that closes", "close or remove the mark there")
