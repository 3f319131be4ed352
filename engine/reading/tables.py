"""A table pasted with its header, told as lines of sets: "Exercise | Sets | Reps | Weight" with a row for each lift.

header = cell { separator cell }        separator = tab | "|" | ";" | ","
cell   = LIFT | SETS | REPS | LOAD [ "(" unit ")" ] | unit | "rpe" | "rir"

The words are those of the language files. A row that does not fit its header is never guessed at: then no row is read.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from enum import Enum
from itertools import groupby, pairwise
from typing import NamedTuple

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word

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


COLUMNS = {K.SETS: Of.SETS, K.REPS: Of.REPS, K.KG: Of.LOAD, K.LB: Of.LOAD, K.RPE: Of.RPE, K.RIR: Of.RIR}
UNITS = {"kg": K.KG, "lb": K.LB}
CUES = {Of.LIFT: frozenset(("columnlift",)), Of.LOAD: frozenset(("loadword",))}


class Column(NamedTuple):
    told: Of
    unit: str


class MisfitRow(Exception):
    """A row that does not fit the header; the text is the row."""


def told_in_lines(text: str) -> str | None:
    """The message with the rows of its table as lines of sets; None where it holds no table.

    Errors: MisfitRow.
    """
    lines = text.split("\n")
    for at, line in enumerate(lines[:-1]):
        for separator in SEPARATORS:
            if line.count(separator) + 1 >= LEAST_COLUMNS and (columns := _columns(line, separator)) is not None:
                end = next((end for end in range(at + 1, len(lines)) if separator not in lines[end]), len(lines))
                framed = line.strip().startswith(separator)
                rows = [
                    _cells(row.strip() if framed else row, separator, framed)
                    for row in lines[at + 1 : end]
                    if not _is_rule(row)
                ]
                return "\n".join([*lines[:at], *_told(rows, columns), *lines[end:]]) if rows else None
    return None


def _cells(line: str, separator: str, framed: bool) -> list[str]:
    """The cells of a row; `framed`: the separator stands at both ends of it too."""
    cells = [cell.strip() for cell in line.split(separator)]
    return cells[1:-1] if framed else cells


def _is_rule(line: str) -> bool:
    """ "|---|---|": the line between a header and its rows."""
    return bool(line) and not any(letter.isalnum() for letter in line)


def _columns(line: str, separator: str) -> list[Column] | None:
    framed = line.strip().startswith(separator)
    columns: list[Column] = []
    for cell in _cells(line.strip() if framed else line, separator, framed):
        column = _column(cell)
        if column is None:
            return None
        columns.append(column)
    told = {column.told for column in columns}
    return columns if len(told) == len(columns) and Of.LIFT in told and Of.REPS in told else None


def _column(cell: str) -> Column | None:
    """What a cell of a header says of its column; None where it is no header."""
    words = OF_A_CELL.findall(cell.lower())
    told = [_meaning(word) for word in words]
    if not told or told[0] is None or None in told or len(words) > LEAST_COLUMNS:
        return None
    kinds = [_kind(word) for word in words]
    return Column(told[0], next((unit for unit, kind in UNITS.items() if kind in kinds), ""))


def _meaning(word: str) -> Of | None:
    if word == "#":
        return Of.SETS
    cued = next((told for told, cues in CUES.items() if is_cued(word, cues)), None)
    return cued or COLUMNS.get(_kind(word) or K.PLAIN)


def _kind(word: str) -> K | None:
    meaning = lexicon().phrases.get(plain_word(word))
    return meaning.kind if meaning is not None else None


def _told(rows: Sequence[Sequence[str]], columns: Sequence[Column]) -> list[str]:
    """The lines that the rows tell.

    Errors: MisfitRow.
    """
    told = [_told_by_column(row, columns) for row in rows]
    for before, row in pairwise(told):
        row[Of.LIFT] = row[Of.LIFT] or before[Of.LIFT]
    if not told[0][Of.LIFT]:
        raise MisfitRow(" ".join(rows[0]))
    numbered = Of.SETS in told[0] and _counts_up(told)
    return [_line(row, {column.told: column.unit for column in columns}, numbered) for row in told]


def _told_by_column(row: Sequence[str], columns: Sequence[Column]) -> dict[Of, str]:
    if len(row) != len(columns):
        raise MisfitRow(" ".join(row))
    told = {column.told: "" if cell in LEFT_OUT else cell for column, cell in zip(columns, row, strict=True)}
    fits = {Of.LIFT: NAMED, Of.REPS: LISTED, Of.SETS: COUNT, Of.LOAD: AMOUNT, Of.RPE: EFFORT, Of.RIR: EFFORT}
    for kind, cell in told.items():
        if (cell or kind is Of.REPS) and not fits[kind].fullmatch(cell):
            raise MisfitRow(" ".join(row))
    return told


NAMED = re.compile(r"[^\d]+")


def _counts_up(rows: Sequence[dict[Of, str]]) -> bool:
    """Whether the sets of each lift are numbered: 1, 2, 3."""
    runs = [[row[Of.SETS] for row in run] for _, run in groupby(rows, lambda row: row[Of.LIFT])]
    numbered = all(run == [str(place) for place in range(1, len(run) + 1)] for run in runs)
    return numbered and any(len(run) > 1 for run in runs)


def _line(row: dict[Of, str], units: dict[Of, str], numbered: bool) -> str:
    load, unit = row.get(Of.LOAD, ""), units.get(Of.LOAD, "")
    load = f"{load} {unit}" if load and unit and load[-1].isdigit() else load
    sets = "" if numbered else row.get(Of.SETS, "")
    reps = row[Of.REPS]
    efforts = [f", {kind.value} {row[kind]}" for kind in (Of.RPE, Of.RIR) if row.get(kind)]
    listed = f"{load} x {reps}" if load else reps
    told = f"{sets}x{reps} {load}" if sets and COUNT.fullmatch(reps) else listed
    return f"{row[Of.LIFT]} {told}{''.join(efforts)}"
