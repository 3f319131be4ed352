"""Where the days of a diary begin.

2024-03-05            ## 5 March            Tue 5.3. push day            5/3: bench 80x5            Date: 05/03/2024

Bare numbers are sets more often than dates: "12/10/10" is a date only where something marks it as one. A mark is a
weekday, a heading, a label, a point behind the month, a colon, a leading nought; or the line stands alone below an
empty one. What opens days somewhere in a diary opens them everywhere in it.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from engine.imports.headers import Field, words
from engine.imports.written_dates import Pair, Written, written_date
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word

BULLET = re.compile(r"^\s*(?:[-*•·–—>+]+\s+|\d{1,2}[.)]\s+(?=\D|\d+\s*[x×*@]))")
HEADING = re.compile(r"^\s*(#+|\*\*|__|==+)\s*")
LABEL = re.compile(r"^([^\W\d]+)\s*:\s*")
BEHIND = " \t:,;-–—|*_=#.)]"
DOTTED = re.compile(r"\d{1,2}\.\s?\d{1,2}\.(?:\s?\d{2,4})?$")
NOUGHT = re.compile(r"\b0\d")
FULL_YEAR = re.compile(r"\d{4}")
BARE = re.compile(r"\d{1,2}([./\-–])\d{1,2}(?:([./\-–])\d{2})?")
MOST_WORDS = 6
WORDS_AHEAD = 3
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
    lines = tuple(_raw_lines(text.lstrip("\ufeff")))
    forms = _forms(lines)
    return tuple(_line(raw, forms) for raw in lines)


@dataclass(frozen=True, slots=True)
class _Raw:
    """A line without its bullet or heading sign; `alone`: the first, or below an empty one."""

    number: int
    text: str
    heading: bool
    alone: bool


def _raw_lines(text: str) -> Iterator[_Raw]:
    alone = True
    for number, raw in enumerate(text.splitlines(), start=1):
        line = raw[:LONGEST_LINE].strip()
        if not line.strip(BEHIND):
            alone = True
            continue
        heading = HEADING.match(line)
        bare = line[heading.end() :] if heading else BULLET.sub("", line)
        yield _Raw(number, bare, heading is not None, alone)
        alone = False


def _line(raw: _Raw, forms: Mapping[str, bool]) -> DiaryLine:
    opened = _opening(raw) or _in_form(raw, forms)
    if opened is None:
        return DiaryLine(raw.number, BULLET.sub("", raw.text).strip(), heading=raw.heading)
    opening, rest = opened
    return DiaryLine(raw.number, BULLET.sub("", rest.lstrip(BEHIND)).strip(" \t*_#"), opening, raw.heading)


def _forms(lines: Sequence[_Raw]) -> Mapping[str, bool]:
    """The forms of bare numbers that open days in this diary; True where the form alone is enough.

    5/3/24 is enough once a marked line has that form, or where no line at all is marked and two have it. 5/3 never is:
    it may be reps; once marked lines have that form, the others are in doubt.
    """
    marked = [opened[0] for raw in lines if (opened := _opening(raw)) is not None and opened[0].written is not None]
    forms = {form: len(form) > 1 for opening in marked if (form := _form(opening.text))}
    if not marked:
        bare = Counter(form for raw in lines if len(form := _form(raw.text.strip(BEHIND))) > 1)
        forms = {form: True for form, count in bare.items() if count > 1}
    return forms


def _form(text: str) -> str:
    """The signs between the numbers of a bare date: "//" of 5/3/24; empty for other words."""
    found = BARE.fullmatch(text)
    return (found[1] + (found[2] or "")) if found and isinstance(written_date(text, cell=False), Pair) else ""


def _in_form(raw: _Raw, forms: Mapping[str, bool]) -> tuple[Opening, str] | None:
    text = raw.text.strip(BEHIND)
    form = _form(text)
    if form not in forms:
        return None
    return Opening(text, written_date(text, cell=False) if forms[form] else None), ""


def _opening(raw: _Raw) -> tuple[Opening, str] | None:
    """What marks the line as the first of a day, and the rest of it."""
    line, marked = raw.text, raw.heading
    label = LABEL.match(line)
    if label and words().fields.get(plain_word(label[1].casefold()), (None, 0))[0] in (Field.DATE, Field.DAY):
        line, marked = line[label.end() :], True
    parts = line.split(" ")
    for count in range(min(MOST_WORDS, len(parts)), 0, -1):
        found = _date(" ".join(parts[:count]), " ".join(parts[count:]), marked=marked, alone=raw.alone)
        if found is not None:
            return found
    weekday = _weekday(line)
    return (Opening(line, None, weekday), "") if weekday is not None else _at_the_end(parts, marked=marked)


def _at_the_end(parts: Sequence[str], *, marked: bool) -> tuple[Opening, str] | None:
    """A date behind a few words: "Week 1 day 1 (01/15/24)", "Legs, 5 March 2024"."""
    marked = marked or is_label(parts[0])
    for start in range(1, min(len(parts), MOST_WORDS + 1)):
        head, tail = " ".join(parts[:start]), " ".join(parts[start:]).strip(f"()[]{BEHIND}")
        written = written_date(tail, cell=False)
        if written is not None:
            told = not isinstance(written, Pair) or FULL_YEAR.search(tail) is not None
            short = start <= WORDS_AHEAD and not any(letter.isdigit() for letter in head)
            return (Opening(tail, written), head) if (told and short) or marked else None
    return None


def is_label(text: str) -> bool:
    """Whether the words head a session: "Push day", "Week 3 day 1"."""
    phrases = lexicon().phrases
    folded = [plain_word(word.strip(BEHIND).casefold()) for word in text.split()]
    told = (phrases.get(" ".join(folded)), phrases.get(folded[0]) if folded else None)
    return any(meaning is not None and meaning.kind is K.HEADING for meaning in told)


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
