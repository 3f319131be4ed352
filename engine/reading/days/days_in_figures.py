"""Days told in figures alone: 2025-03-13, 13.3., 13.03 ahead of a lift, 12/3.

day = d "." m "." [ year ] | d "." m with a zero, or behind a weekday, ahead of a lift
    | d "/" m [ "/" year ] | year "-" m "-" d
A pair with no zero that ends the message behind its sets may be reps, too: asked, where that day is not long ago.
"""

from __future__ import annotations

from datetime import date

from engine.reading.days.calendar_days import day_of, in_year
from engine.reading.days.day_pieces import NO_DAY, Doubted, Found
from engine.reading.days.headed_days import (
    LAST_DAY_OF_A_MONTH,
    MONTHS_OF_A_YEAR,
    TOLD_LATE,
    day_and_month,
    ends_the_message,
    heads_a_day,
    heads_a_lift,
    rates_a_state,
)
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.load import Unit

YEAR_DIGITS = (2, 4)


def joined(pieces: list[Piece], at: int) -> tuple[list[Piece], str, int]:
    """The numbers that slashes or dashes join from here on, those signs, and the place behind."""
    numbers, signs = [pieces[at]], ""
    at += 1
    while at + 1 < len(pieces) and len(numbers) < 3:
        sign, number = pieces[at], pieces[at + 1]
        if sign.kind not in (K.SLASH, K.DASH) or not sign.glued or number.kind is not K.NUMBER or not number.glued:
            break
        numbers.append(number)
        signs += sign.text
        at += 2
    if len(numbers) == 3 and at + 1 < len(pieces) and pieces[at].kind in (K.SLASH, K.DASH) and pieces[at].glued:
        return numbers[:1], "", at  # "4/2/1/1": a list
    return numbers, signs, at


def iso_day(numbers: list[Piece], end: int) -> Found | None:
    """The day of "2025-03-13"."""
    if len(numbers) != 3:
        return None
    year, month, day = (int(number.value) for number in numbers)
    return day_of(year, month, day) or NO_DAY, end


def dotted_day(numbers: list[Piece], pieces: list[Piece], at: int, today: date | None) -> Found | None:
    """13.3. or 13.03.2025: the point behind the month makes it a date."""
    if len(numbers) != 1 or "." not in numbers[0].text or at + 1 >= len(pieces):
        return None
    alone = pieces[at + 1].kind is K.LINE and at + 2 < len(pieces) and numbers[0].value * 100 % 100 != 50
    pointed = pieces[at + 1].kind is K.STOP and pieces[at + 1].glued
    headed = heads_a_lift(pieces, at)
    if not alone and not pointed and not headed:
        return None
    told = day_and_month(numbers[0].text)
    if told is None:
        return None
    day, month = told
    if alone and not (1 <= day <= LAST_DAY_OF_A_MONTH and 1 <= month <= MONTHS_OF_A_YEAR):
        return None
    if alone or headed:
        return in_year(day, month, None, today), at + 1
    year, end = None, at + 2
    if end < len(pieces) and pieces[end].kind is K.NUMBER and pieces[end].glued:
        year, end = _year(pieces[end].text), end + 1
    found = in_year(day, month, year, today)
    if found is None and year is not None:
        return NO_DAY, end
    return (found, end) if found or today is None else None


def slashed_day(
    numbers: list[Piece],
    signs: str,
    pieces: list[Piece],
    at: int,
    today: date | None,
    unit: Unit,
    said_on: bool,
) -> Found | None:
    """The day of "12/3", "12/03/2025"; the month first where loads are told in pounds."""
    end = at + 2 * len(numbers) - 1
    if not signs or set(signs) != {"/"}:
        return None
    if not (said_on or _reads_as_date(numbers, pieces, end) or heads_a_day(numbers, pieces, end)):
        return None
    if len(numbers) == 3 and len(numbers[2].text) not in YEAR_DIGITS:
        return None  # "wednesday 6/4/3": reps
    first, second = int(numbers[0].value), int(numbers[1].value)
    day, month = (second, first) if unit is Unit.LB else (first, second)
    if month > 12:
        day, month = month, day
    found = in_year(day, month, _year(numbers[2].text) if len(numbers) == 3 else None, today)
    if found is not None and today is not None and rates_a_state(numbers, pieces, end) and found < today - TOLD_LATE:
        return None
    if ends_the_message(pieces, at) and kind_at(pieces, at - 1) is not K.WEEKDAY:
        late = found is not None and today is not None and found >= today - TOLD_LATE
        return (Doubted(found), end) if late else None  # "squat 100 5 5 5 14/3"
    if found or today is None:
        return found, end
    may_be = 1 <= day <= LAST_DAY_OF_A_MONTH and 1 <= month <= MONTHS_OF_A_YEAR
    return (NO_DAY, end) if may_be or len(numbers) == 3 or _colon_ends(pieces, end) else None


def _colon_ends(pieces: list[Piece], at: int) -> bool:
    return at < len(pieces) and pieces[at].kind is K.COLON


def _reads_as_date(numbers: list[Piece], pieces: list[Piece], end: int) -> bool:
    """A slash pair at the head of a line is a date where it is written as one, or a whole set line follows."""
    if len(numbers) == 3:
        return len(numbers[2].text) in (2, 4) and int(numbers[2].value) > 20
    if any(len(number.text) == 2 and number.text[0] == "0" for number in numbers):
        return True
    if end < len(pieces) and pieces[end].kind is K.COLON:
        return True
    line: list[K] = []
    while end < len(pieces) and pieces[end].kind is not K.LINE:
        line.append(pieces[end].kind)
        end += 1
    return K.NAME in line[:4] and (K.TIMES in line or line.count(K.NUMBER) >= 2)


def _year(text: str) -> int | None:
    return None if not text.isdigit() else int(text) + (2000 if len(text) <= 2 else 0)
