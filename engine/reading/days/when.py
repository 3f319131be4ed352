"""Days ahead: until when to pause, to which day a session moves."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date, timedelta
from decimal import Decimal

from engine.reading.days.calendar_days import weekday_after
from engine.reading.values import Context
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.load import Unit

COUNTED_WEEKDAYS = {"segunda": 0}
"""Weekdays whose word counts sets as well: Monday in Portuguese."""
FURTHEST_AHEAD = 730


def day_told(pieces: Sequence[Piece], context: Context) -> date | None:
    """The day ahead that is told, or None."""
    if context.now is None:
        return None
    today = context.now.date()
    for at, piece in enumerate(pieces):
        found = _by_word(piece, today) or _counted(pieces, at, today) or _calendar(pieces, at, today, context.unit)
        if found is not None:
            return _dated(pieces[at:], found, today, context.unit) if piece.kind is K.WEEKDAY else found
    return None


def _dated(pieces: Sequence[Piece], weekday: date, today: date, unit: Unit) -> date:
    """ "monday the 24th": the date, where it is such a day of the week."""
    dates = (_calendar(pieces, at, today, unit) for at in range(1, min(len(pieces), REACH_OF_A_DATE)))
    return next((day for day in dates if day is not None and day.weekday() == weekday.weekday()), weekday)


REACH_OF_A_DATE = 4


def _by_word(piece: Piece, today: date) -> date | None:
    """ "tomorrow", "monday", "next week"."""
    if piece.kind is K.TOMORROW:
        return today + timedelta(days=piece.told or 1)
    if piece.kind is K.TODAY:
        return today
    if piece.kind is K.WEEKDAY:
        return weekday_after(today, piece.told)
    if piece.kind is K.ORDINAL and piece.text in COUNTED_WEEKDAYS:
        return weekday_after(today, COUNTED_WEEKDAYS[piece.text])
    return _next(piece.told, today) if piece.kind is K.FUTURE and piece.told else None


def _next(told: int, today: date) -> date:
    """The day of "next thursday"; of "next week" its Monday, of "next month" its first."""
    if told == NEXT_WEEK:
        return weekday_after(today, 0)
    if told == NEXT_MONTH:
        return (today.replace(day=1) + timedelta(days=LONGEST_MONTH)).replace(day=1)
    return weekday_after(today, told - 1)


NEXT_WEEK, NEXT_MONTH = 8, 9
"""What a FUTURE piece tells where no weekday is named; 1 to 7 are the weekdays from Monday."""
LONGEST_MONTH = 31


def _counted(pieces: Sequence[Piece], at: int, today: date) -> date | None:
    """ "2 weeks", "a week", "10 days"."""
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    if (
        pieces[at].kind is K.NUMBER
        and after is not None
        and (span := _span(after))
        and pieces[at].value < FURTHEST_AHEAD
    ):
        return today + timedelta(days=int(pieces[at].value) * span)
    if (span := _span(pieces[at])) and (at == 0 or pieces[at - 1].kind is not K.NUMBER):
        return today + timedelta(days=span)
    return None


def _calendar(pieces: Sequence[Piece], at: int, today: date, unit: Unit) -> date | None:
    piece = pieces[at]
    behind = list(pieces[at : at + 5])
    if piece.kind is K.NUMBER and len(behind) > 1 and behind[1].kind is K.MONTH:
        return _ahead(int(piece.value), behind[1].told, today)
    if piece.kind is K.MONTH and len(behind) > 1 and behind[1].kind in (K.NUMBER, K.ORDINAL):
        return _ahead(behind[1].told or int(behind[1].value), piece.told, today)
    if piece.kind is K.ORDINAL and any(p.kind is K.MONTH for p in behind):
        return _ahead(piece.told, next(p.told for p in behind if p.kind is K.MONTH), today)
    if piece.kind is K.ORDINAL and piece.told and (piece.text[0].isdigit() or "the" in CUES_OF[piece.text]):
        return _of_month(piece.told, today)
    if piece.kind is K.NUMBER and (dotted := DOTTED.fullmatch(piece.text)):
        return _ahead(int(dotted[1]), int(dotted[2]), today)
    numbers = [p for p in behind if p.kind is K.NUMBER]
    if piece.kind is K.NUMBER and len(behind) > 4 and behind[1].kind is K.DASH and len(numbers) == 3:
        return _exactly(*(int(min(n.value, Decimal(9_999))) for n in numbers))
    if piece.kind is K.NUMBER and len(behind) > 2 and behind[1].kind is K.SLASH and len(numbers) >= 2:
        first, second = (int(min(n.value, Decimal(99))) for n in numbers[:2])
        return _ahead(second, first, today) if unit is Unit.LB else _ahead(first, second, today)
    return None


def _ahead(day: int, month: int, today: date) -> date | None:
    found = _exactly(today.year, month, day)
    return found if found is None or found >= today else _exactly(today.year + 1, month, day)


def _of_month(day: int, today: date) -> date | None:
    """The next day with this number, this month or in one of those after it: "back on the 24th"."""
    firsts = (today.replace(day=1) + timedelta(days=LONGEST_MONTH * months) for months in range(3))
    days = (_exactly(first.year, first.month, day) for first in firsts)
    return next((found for found in days if found is not None and found > today), None)


DOTTED = re.compile(r"(\d{1,2})\.(\d{1,2})")
""" "24.3.", a day and a month as most of the continent writes them."""


def _exactly(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None


def _span(piece: Piece) -> int:
    """How many days "days", "week" are; 0 for any other word."""
    cues = CUES_OF[piece.text]
    return 7 if "week" in cues else 1 if "day" in cues else 0
