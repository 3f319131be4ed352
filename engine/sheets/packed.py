"""What a packed workbook holds, looked at before any of it is parsed: a small file can unpack to a very large one."""

from __future__ import annotations

import io
import re
import zipfile
import zlib
from dataclasses import dataclass

from engine.sheets.unreadable import Unreadable

LARGEST_UNPACKED = 50_000_000
LARGEST_OF_STYLES = 5_000_000
MOST_PARTS = 1_000
MOST_CELLS = 1_500_000
MOST_TEXTS = 500_000
CHUNK = 1 << 20
SHEET = re.compile(r"xl/worksheets/[^/]+\.xml$")
TEXTS = "xl/sharedStrings.xml"
STYLES = frozenset(("xl/styles.xml", "xl/workbook.xml"))
ROW, CELL, TEXT, FORMULA = b"<row", b"<c", b"<si", b"<f"


@dataclass(frozen=True, slots=True)
class Packed:
    """Whether a sheet has formulas."""

    formulas: bool


def looked_into(content: bytes, most_rows: int) -> Packed:
    """What the workbook holds.

    Errors: Unreadable for a broken archive, and for more than a log or plan can need.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(content)) as archive:
            return _looked_into(archive, most_rows)
    except (zipfile.BadZipFile, ValueError, OSError, RuntimeError, NotImplementedError, EOFError, zlib.error) as error:
        raise Unreadable("the workbook", "a whole .xlsx file", "save it again, or as .csv") from error


def _looked_into(archive: zipfile.ZipFile, most_rows: int) -> Packed:
    parts = archive.infolist()
    size = sum(part.file_size for part in parts)
    styles = sum(part.file_size for part in parts if part.filename in STYLES)
    if size > LARGEST_UNPACKED or styles > LARGEST_OF_STYLES or len(parts) > MOST_PARTS:
        raise _too_large(f"{size} bytes unpacked in {len(parts)} parts", f"up to {LARGEST_UNPACKED} bytes")
    rows = cells = formulas = 0
    for part in parts:
        if SHEET.fullmatch(part.filename):
            counts = _counted(archive, part, (ROW, CELL, FORMULA))
            rows, cells, formulas = rows + counts[0], cells + counts[1], formulas + counts[2]
        elif part.filename == TEXTS and _counted(archive, part, (TEXT,))[0] > MOST_TEXTS:
            raise _too_large("a very large workbook", f"up to {MOST_TEXTS} different texts")
    if rows > most_rows:
        raise _too_large(f"more than {most_rows} rows", f"up to {most_rows} rows")
    if cells > MOST_CELLS:
        raise _too_large(f"more than {MOST_CELLS} cells", f"up to {MOST_CELLS} cells")
    return Packed(formulas > 0)


def _counted(archive: zipfile.ZipFile, part: zipfile.ZipInfo, tags: tuple[bytes, ...]) -> list[int]:
    """How often each tag begins in the part, read a piece at a time."""
    counts, tail = [0] * len(tags), b""
    with archive.open(part) as file:
        while piece := file.read(CHUNK):
            joined = tail + piece
            counts = [count + joined.count(tag) - tail.count(tag) for count, tag in zip(counts, tags, strict=True)]
            tail = joined[-max(map(len, tags)) + 1 :]
    return counts


def _too_large(read: str, expected: str) -> Unreadable:
    return Unreadable(read, expected, "send the one sheet alone, as .csv, or in parts")
