"""A table pasted with its header, told as lines of sets: "Exercise | Sets | Reps | Weight" with a row for each lift.

header = cell { separator cell }        separator = tab | "|" | ";" | ","
       | LIFT { blank cell }                              "Exercise Sets Reps Weight", "Leg Press 3 8 120"
       | LIFT-LINE cell { ( separator | blank ) cell }      "Squat", "set reps kg", "1 5 100": a lift, its sets below
cell   = LIFT | SETS | REPS | LOAD [ "(" unit ")" ] | unit | "rpe" | "rir" | "#"

The words are those of the language files. A header has a column of lifts, one of reps, and one of sets or loads. A
column that is not known, and a row that does not fit its header, are never guessed at: then no row is read.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from enum import Enum
from itertools import groupby
from typing import NamedTuple

from engine.reading.words.cues import is_cued
from engine.reading.words.kept import Kept
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word
from engine.values.load import Unit

SEPARATORS = ("\t", "|", ";", ",")
LEAST_COLUMNS = 3
OF_A_CELL = re.compile(r"[^\W\d_]+|#")
COUNT = re.compile(r"\d{1,3}")
LISTED = re.compile(r"\d[\d/, -]*")
AMOUNT = re.compile(r"\+?\d{1,4}(?:[.,]\d{1,2})?\s*(?:[^\W\d_]{1,6}\.?)?|[^\W\d_]{2,12}")
EFFORT = re.compile(r"\d{1,2}(?:[.,]5)?")
LEFT_OUT = "-–—"
"""What stands in a cell that is left empty."""


class Of(Enum):
    """What a column tells of its sets."""

    __hash__ = object.__hash__

    LIFT = "lift"
    SETS = "sets"
    REPS = "reps"
    LOAD = "load"
    RPE = "rpe"
    RIR = "rir"
    NUMBER = "number"  # of the set, or of the row


COLUMNS = {K.SETS: Of.SETS, K.REPS: Of.REPS, K.KG: Of.LOAD, K.LB: Of.LOAD, K.RPE: Of.RPE, K.RIR: Of.RIR}
UNITS = {"kg": K.KG, "lb": K.LB}
CUES = {Of.LIFT: frozenset(("columnlift",)), Of.LOAD: frozenset(("loadword",))}


class Column(NamedTuple):
    told: Of
    unit: str


class Misfit(Exception):
    """What does not fit in a table; the text is the row, or the name of the column."""


def told_in_lines(text: str, unit: Unit) -> str | None:
    """The message with the rows of its tables as lines of sets; None where it holds no table.

    `unit` is that of loads without one. Errors: Misfit.
    """
    if "\n" not in text:
        return None
    lines = text.split("\n")
    out: list[str] = []
    table: _Table | None = None
    for line in lines:
        found = _header(line) or _header_in_words(line) or _header_below_a_lift(line, out)
        if found is not None:
            out += table.lines(unit) if table is not None else []
            out = out if not found.lift else out[:-1]
            table = found
        elif table is not None and table.separator in line and table.holds(line):
            table.take(line)
        else:
            out += table.lines(unit) if table is not None else []
            out.append(line)
    out += table.lines(unit) if table is not None else []
    return "\n".join(out) if table is not None else None


class _Table:
    """A table under way: its columns, and the rows since the last line that was none."""

    def __init__(self, columns: list[Column], separator: str, framed: bool) -> None:
        self.columns = columns
        self.separator = separator
        self.framed = framed
        self.rows: list[dict[Of, str]] = []
        self.lift = ""

    def take(self, line: str) -> None:
        """One row more.

        Errors: Misfit.
        """
        if not any(letter.isalnum() for letter in line):
            return  # "|---|---|", the line between a header and its rows
        row = _told_by_column(self._cells(line), self.columns)
        self.lift = row[Of.LIFT] = row.get(Of.LIFT) or self.lift
        if not self.lift:
            raise Misfit(line.strip())
        self.rows.append(row)

    def _cells(self, line: str) -> list[str]:
        """The cells of a row; a lift in front of columns that blanks part may be of several words."""
        if self.separator != " ":
            return _cells(line, self.separator, self.framed)
        words = line.split()
        if self.columns[0].told is not Of.LIFT:
            return words
        behind = len(words) - len(self.columns) + 1
        return [" ".join(words[:behind]), *words[behind:]]

    def holds(self, line: str) -> bool:
        """Whether the line may be a row; of columns that blanks part, numbers alone stand behind the lift."""
        if self.separator == " " and self.columns[0].told is Of.LIFT:
            words = line.lower().split()
            first = next((at for at, word in enumerate(words) if DIGIT.search(word)), len(words))
            cells = [word for word in words[first:] if word not in UNITS]
            return len(cells) > 1 and all(DIGIT.search(cell) or cell in LEFT_OUT for cell in cells)
        return self.separator != " " or line.strip()[:1].isdigit()

    def lines(self, unit: Unit) -> list[str]:
        """The rows so far as lines, each taken once.

        Errors: Misfit.
        """
        rows, self.rows = self.rows, []
        numbered = _counts_up(rows, Of.SETS)
        if rows and Of.NUMBER in rows[0] and not (_counts_up(rows, Of.NUMBER) or _numbers_rows(rows)):
            raise Misfit("#")
        told = next((column.unit for column in self.columns if column.told is Of.LOAD), "")
        return [_line(row, told or unit.value, numbered) for row in rows]


def _header(line: str) -> _Table | None:
    """The table that this line heads.

    Errors: Misfit for a column that is not known.
    """
    for separator in SEPARATORS:
        if line.count(separator) + 1 >= LEAST_COLUMNS:
            framed = line.strip().startswith(separator)
            cells = _cells(line, separator, framed)
            found = [COLUMN_OF[cell] for cell in cells]
            told = [column.told for column in found if column is not None]
            if Of.LIFT in told and Of.REPS in told and (Of.SETS in told or Of.LOAD in told):
                return _Table(_all_known(cells, found), separator, framed)
    return None


def _header_in_words(line: str) -> _Table | None:
    """The table that this line of words heads, a lift in front and nothing but blanks between."""
    words = line.split() if line[:1].isalpha() and len(line) <= LONGEST_HEADER else []
    if not LEAST_COLUMNS <= len(words) <= MOST_COLUMNS:
        return None
    known = [column for column in map(COLUMN_OF.__getitem__, words) if column is not None]
    told = [column.told for column in known]
    if len(known) < len(words) or told[0] is not Of.LIFT or len(set(told)) < len(told):
        return None
    whole = Of.REPS in told and (Of.SETS in told or Of.LOAD in told)
    return _Table(known, " ", framed=False) if whole else None


def _header_below_a_lift(line: str, ahead: Sequence[str]) -> _Table | None:
    """The table of one lift, which the line ahead names, that this line of words heads."""
    lift = ahead[-1].strip().rstrip(":") if ahead else ""
    if not (line[:1].isalpha() or line[:1] == "#") or not lift or DIGIT.search(line) or DIGIT.search(lift):
        return None
    separator = next((sign for sign in SEPARATORS if sign in line), " ")
    cells = _cells(" ".join(line.split()) if separator == " " else line, separator, framed=False)
    found = [COLUMN_OF[cell] for cell in cells] if LEAST_COLUMNS <= len(cells) <= MOST_COLUMNS else []
    known = [column for column in found if column is not None]
    told = [column.told for column in known]
    if len(known) < len(cells) or not {Of.REPS, Of.LOAD} <= set(told) or Of.LIFT in told or len(set(told)) < len(told):
        return None
    table = _Table(known, separator, framed=False)
    table.lift = lift
    return table


MOST_COLUMNS = 6
LONGEST_HEADER = 80
DIGIT = re.compile(r"\d")


def _all_known(cells: Sequence[str], found: Sequence[Column | None]) -> list[Column]:
    known: list[Column] = []
    for cell, column in zip(cells, found, strict=True):
        if column is None or column.told in [one.told for one in known]:
            raise Misfit(cell)
        known.append(column)
    return known


def _cells(line: str, separator: str, framed: bool) -> list[str]:
    """The cells of a row; `framed`: the separator stands at both ends of it too."""
    cells = [cell.strip() for cell in (line.strip() if framed else line).split(separator)]
    return cells[1:-1] if framed else cells


def _column(cell: str) -> Column | None:
    """What a cell of a header says of its column; None where it is no header."""
    words = OF_A_CELL.findall(cell.lower())
    told = [_meaning(word) for word in words]
    if not told or told[0] is None or None in told or len(words) > LEAST_COLUMNS:
        return None
    kinds = [_kind(word) for word in words]
    return Column(told[0], next((unit for unit, kind in UNITS.items() if kind in kinds), ""))


COLUMN_OF = Kept(_column)


def _meaning(word: str) -> Of | None:
    if word == "#":
        return Of.NUMBER
    cued = next((told for told, cues in CUES.items() if is_cued(word, cues)), None)
    return cued or COLUMNS.get(_kind(word) or K.PLAIN)


def _kind(word: str) -> K | None:
    meaning = lexicon().phrases.get(plain_word(word))
    return meaning.kind if meaning is not None else None


def _told_by_column(row: Sequence[str], columns: Sequence[Column]) -> dict[Of, str]:
    """The cells of a row.

    Errors: Misfit.
    """
    if len(row) != len(columns):
        raise Misfit(" ".join(row))
    told = {column.told: "" if cell in LEFT_OUT else cell for column, cell in zip(columns, row, strict=True)}
    for kind, cell in told.items():
        if (cell or kind is Of.REPS) and not FITS[kind].fullmatch(cell):
            raise Misfit(" ".join(row))
    return told


FITS = {
    Of.LIFT: re.compile(r"[^\d]+"),
    Of.REPS: LISTED,
    Of.SETS: COUNT,
    Of.NUMBER: COUNT,
    Of.LOAD: AMOUNT,
    Of.RPE: EFFORT,
    Of.RIR: EFFORT,
}


def _counts_up(rows: Sequence[dict[Of, str]], told: Of) -> bool:
    """Whether the sets of each lift are numbered: 1, 2, 3."""
    runs = [[row.get(told) for row in run] for _, run in groupby(rows, lambda row: row[Of.LIFT])]
    numbered = all(run == [str(place) for place in range(1, len(run) + 1)] for run in runs)
    return numbered and any(len(run) > 1 for run in runs)


def _numbers_rows(rows: Sequence[dict[Of, str]]) -> bool:
    return [row[Of.NUMBER] for row in rows] == [str(place) for place in range(1, len(rows) + 1)]


def _line(row: dict[Of, str], unit: str, numbered: bool) -> str:
    load, reps = row.get(Of.LOAD, ""), row[Of.REPS]
    load = f"{load} {unit}" if load and load[-1].isdigit() else load
    sets = "" if numbered else row.get(Of.SETS, "")
    efforts = [f", {kind.value} {row[kind]}" for kind in (Of.RPE, Of.RIR) if row.get(kind)]
    if COUNT.fullmatch(reps):
        reps = f"{sets} sets x {reps} reps" if sets else f"{load} x {reps} reps" if load else f"{reps} reps"
        told = f"{reps} {load}" if sets else reps
    else:
        told = f"{load} x {reps}" if load else reps
    return f"{row[Of.LIFT]} {told}{''.join(efforts)}"
