"""Where the days of a diary begin.

2024-03-05            ## 5 March            Tue 5.3. push day            5/3: bench 80x5            Date: 05/03/2024

Bare numbers are sets more often than dates: "12/10/10" is a date only where something marks it as one. A mark is a
weekday, a heading, a label, a point behind the month, a colon, a leading nought; or the line stands alone below an
empty one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from engine.imports.headers import Field, words
from engine.imports.written_dates import Pair, Written, written_date
from engine.reading.kinds import K
from engine.reading.lexicon import lexicon, plain_word

BULLET = re.compile(r"^\s*(?:[-*•·–—>+]+\s+|\d{1,2}[.)]\s+(?=\D|\d+\s*[x×*@]))")
HEADING = re.compile(r"^\s*(#+|\*\*|__|==+)\s*")
LABEL = re.compile(r"^([^\W\d]+)\s*:\s*")
BEHIND = " \t:,;-–—|*_=#.)]"
DOTTED = re.compile(r"\d{1,2}\.\s?\d{1,2}\.(?:\s?\d{2,4})?$")
NOUGHT = re.compile(r"\b0\d")
FULL_YEAR = re.compile(r"\d{4}")
MOST_WORDS = 6
LONGEST_LINE = 600


@dataclass(frozen=True, slots=True)
class Opening:
    """What opens a day: a date, or (`written` None) a day of the week alone."""

    text: str
    written: Written | None
    weekday: int | None = None


@dataclass(frozen=True, slots=True)
class DiaryLine:
    """A line without its bullet, and without the date that opens a day."""

    number: int
    text: str
    opens: Opening | None = None
    heading: bool = False


def diary_lines(text: str) -> tuple[DiaryLine, ...]:
    """The lines of a diary that hold something."""
    return tuple(_lines(text.lstrip("\ufeff")))


def _lines(text: str) -> Iterator[DiaryLine]:
    above_empty = True
    for number, raw in enumerate(text.splitlines(), start=1):
        line = raw[:LONGEST_LINE].strip()
        if not line.strip(BEHIND):
            above_empty = True
            continue
        heading = HEADING.match(line)
        bare = line[heading.end() :] if heading else BULLET.sub("", line)
        opened = _opening(bare, marked=heading is not None, alone=above_empty)
        if opened is None:
            yield DiaryLine(number, BULLET.sub("", bare).strip(), heading=heading is not None)
        else:
            opening, rest = opened
            yield DiaryLine(number, BULLET.sub("", rest.lstrip(BEHIND)).strip(" \t*_#"), opening, heading is not None)
        above_empty = False


def _opening(line: str, *, marked: bool, alone: bool) -> tuple[Opening, str] | None:
    """What opens a day at the head of the line, and the rest of it."""
    label = LABEL.match(line)
    if label and words().fields.get(plain_word(label[1].casefold()), (None, 0))[0] in (Field.DATE, Field.DAY):
        line, marked = line[label.end() :], True
    parts = line.split(" ")
    for count in range(min(MOST_WORDS, len(parts)), 0, -1):
        head = " ".join(parts[:count])
        found = _date(head, " ".join(parts[count:]), marked=marked, alone=alone)
        if found is not None:
            return found
    weekday = _weekday(line)
    return (Opening(line, None, weekday), "") if weekday is not None else None


def _date(head: str, rest: str, *, marked: bool, alone: bool) -> tuple[Opening, str] | None:
    shown = head.rstrip(":,;-–—|*_=#)] ")
    date_text, colon, behind = shown.partition(":") if ":" in shown and " " not in shown else (shown, "", "")
    written = written_date(date_text, cell=False)
    if written is None:
        return None
    rest = f"{behind} {rest}".strip()
    marked = marked or bool(colon) or head.endswith(":")
    if isinstance(written, Pair) and not FULL_YEAR.search(date_text):
        is_alone = alone and not rest
        if not (marked or is_alone or _is_marked(date_text, written)):
            return None
    return Opening(date_text, written), rest


def _is_marked(text: str, written: Pair) -> bool:
    return written.weekday is not None or DOTTED.search(text) is not None or NOUGHT.search(text) is not None


def _weekday(line: str) -> int | None:
    """The day of the week that is all the line says."""
    meaning = lexicon().phrases.get(plain_word(line.strip(BEHIND).casefold()))
    return meaning.value if meaning is not None and meaning.kind is K.WEEKDAY else None
