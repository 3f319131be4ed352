"""Dates as people and spreadsheets write them, before anyone decides which number is the month.

2024-03-05   2024/3/5   20240305   5.3.2024   5/3/24   5.3.   5 Mar 2024   March 5th, 2024   Tue 5 de marzo   45356

The last is the serial day of a spreadsheet's cell. A time of day behind a date is passed over. Words for months and
days of the week are those of `engine.reading`.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache

from engine.reading.words.kinds import K
from engine.reading.words.lexicon import lexicon, plain_word

LONGEST = 48
TIME_BEHIND = re.compile(
    r"[T ,]+((at|um|om|kl|kl\.|a las|alle|às|à|o|в) )?\d{1,2}:\d{2}(:\d{2}([.,]\d+)?)?"
    r" ?([ap]\.?m\.?|uhr)? ?(z|utc|[+-]\d{2}:?\d{2})?$",
    re.IGNORECASE,
)
PART = re.compile(r"[^\W\d_]+|\d+")
NUMERIC = re.compile(r"\D*\d{1,2} ?[./\-–] ?\d{1,2}(?: ?[./\-–] ?\d{4}|[./\-–]\d{2}|\.)?\D*$")
BETWEEN = re.compile(r"[\s.,/\-–()'’]*")
FILLERS = frozenset(
    ("de", "of", "the", "st", "nd", "rd", "th", "den", "le", "del", "di", "der", "am", "on", "r", "г", "года")
)
FIRST_SERIAL, LAST_SERIAL = 20_000, 80_000
SERIAL_ZERO = date(1899, 12, 30)
"""Day 0 of spreadsheet dates from March 1900 on. Source: ECMA-376 part 1, 18.17.4.1 (the 1900 date base)."""
FIRST_YEAR = 1950
CENTURY = 100
MONTHS, MOST_DAYS = 12, 31


@dataclass(frozen=True, slots=True)
class Told:
    """A date whose parts are known for what they are; the day may not exist. `year` None: not written."""

    year: int | None
    month: int
    day: int
    weekday: int | None = None


@dataclass(frozen=True, slots=True)
class Pair:
    """Two numbers that are day and month in one order or the other.

    `dotted`: parted by points, as day-first writers do.
    """

    first: int
    second: int
    year: int | None
    dotted: bool
    weekday: int | None = None


Written = Told | Pair


@lru_cache(maxsize=16_384)
def written_date(text: str, *, cell: bool = True) -> Written | None:
    """The date that the whole text writes, or None. `cell`: a lone number may be a spreadsheet's serial day."""
    text = text.strip()
    if not text or len(text) > LONGEST or not any(letter.isdigit() for letter in text):
        return None
    if cell and (serial := _serial(text)) is not None:
        return serial
    bare = TIME_BEHIND.sub("", text)
    parts = PART.findall(bare)
    if BETWEEN.fullmatch("".join(PART.split(bare))) is None:
        return None
    return _from_parts(parts, bare)


def is_weekday(text: str) -> bool:
    """Whether the text is the name of a day of the week and nothing more."""
    meaning = lexicon().phrases.get(plain_word(text.strip().casefold()))
    return meaning is not None and meaning.kind is K.WEEKDAY


def _serial(text: str) -> Told | None:
    whole = text.partition(".")[0]
    if not whole.isdecimal() or not whole.isascii() or len(whole) != 5 or not FIRST_SERIAL <= int(whole) <= LAST_SERIAL:
        return None
    day = SERIAL_ZERO + timedelta(days=int(whole))
    return Told(day.year, day.month, day.day)


def _from_parts(parts: list[str], text: str) -> Written | None:
    numbers = [part for part in parts if part.isdecimal()]
    month = weekday = None
    for part in parts:
        if part.isdecimal():
            continue
        meaning = lexicon().phrases.get(plain_word(part.casefold()))
        if meaning is not None and meaning.kind is K.MONTH and month is None:
            month = meaning.value
        elif meaning is not None and meaning.kind is K.WEEKDAY and weekday is None:
            weekday = meaning.value
        elif part.casefold() not in FILLERS:
            return None
    if month is not None:
        return _with_month(numbers, month, weekday)
    return _numeric(numbers, text, weekday)


def _with_month(numbers: list[str], month: int, weekday: int | None) -> Told | None:
    if not 1 <= len(numbers) <= 2:
        return None
    if len(numbers[0]) == 4 and len(numbers) == 2:
        numbers = numbers[::-1]
    if len(numbers[0]) > 2:
        return None
    year = _year(numbers[1]) if len(numbers) == 2 else None
    return None if len(numbers) == 2 and year is None else Told(year, month, int(numbers[0]), weekday)


def _numeric(numbers: list[str], text: str, weekday: int | None) -> Written | None:
    if len(numbers) == 1:
        return _compact(numbers[0], weekday)
    if not 2 <= len(numbers) <= 3 or not all(len(number) in (1, 2, 4) for number in numbers):
        return None
    if len(numbers) == 3 and len(numbers[0]) == 4:
        return Told(int(numbers[0]), int(numbers[1]), int(numbers[2]), weekday)
    if NUMERIC.match(text) is None:
        return None
    year = _year(numbers[2]) if len(numbers) == 3 else None
    if len(numbers) == 3 and year is None:
        return None
    low, high = sorted((int(numbers[0]), int(numbers[1])))
    if len(numbers[-1]) != 4 and not (1 <= low <= MONTHS and high <= MOST_DAYS):
        return None
    return Pair(int(numbers[0]), int(numbers[1]), year, "." in text, weekday)


def _compact(number: str, weekday: int | None) -> Told | None:
    """20240305."""
    if len(number) != 8 or not FIRST_YEAR <= int(number[:4]) < FIRST_YEAR + 2 * CENTURY:
        return None
    return Told(int(number[:4]), int(number[4:6]), int(number[6:]), weekday)


def _year(text: str) -> int | None:
    """The year that is written; two figures are of the hundred years from 1950 on."""
    if len(text) == 4:
        return int(text)
    if len(text) != 2:
        return None
    return int(text) + (2000 if int(text) < FIRST_YEAR % CENTURY else 1900)
