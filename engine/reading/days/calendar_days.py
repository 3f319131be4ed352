"""The latest day that a day of the month, a day and a month, or a word for a day can mean."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date, timedelta

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

DAYS_OF_A_WEEK = 7


def latest_of_month(day: int, today: date) -> date | None:
    """That day of this month or, while it is still ahead, of the latest month before that has one."""
    before = today.replace(day=1) - timedelta(days=1)
    months = (today, before, before.replace(day=1) - timedelta(days=1))
    found = (day_of(month.year, month.month, day) for month in months)
    return next((one for one in found if one is not None and one <= today), None)


def in_year(day: int, month: int, year: int | None, today: date | None) -> date | None:
    """The day of that year, or the latest such day that is not in the future; None for a day that no calendar has."""
    if year is not None:
        return day_of(year, month, day)
    if today is None:
        return None
    this = day_of(today.year, month, day)
    return this if this and this <= today else day_of(today.year - 1, month, day)


def day_of(year: int, month: int, day: int) -> date | None:
    """The day, or None for one that no calendar has."""
    try:
        return date(year, month, day)
    except (ValueError, OverflowError):  # dozens of digits fit no calendar
        return None


def weekday_before(today: date, weekday: int, strictly: bool = False) -> date:
    """The latest such day: today where today is one, unless `strictly` before."""
    back = (today.weekday() - weekday) % DAYS_OF_A_WEEK
    return today - timedelta(days=back or (DAYS_OF_A_WEEK if strictly else 0))


def weekday_after(today: date, weekday: int) -> date:
    """The next such day after today."""
    return today + timedelta(days=(weekday - today.weekday()) % DAYS_OF_A_WEEK or DAYS_OF_A_WEEK)


WORD_DAYS: Mapping[K, Callable[[Piece, date, bool], date]] = {
    K.TODAY: lambda piece, today, last: today,
    K.YESTERDAY: lambda piece, today, last: today - timedelta(days=1),
    K.DAYS_AGO: lambda piece, today, last: today - timedelta(days=piece.told),
    K.WEEKDAY: lambda piece, today, last: weekday_before(today, piece.told, strictly=last),
    K.LAST_WEEKDAY: lambda piece, today, last: weekday_before(today, piece.told, strictly=True),
}
"""The day that a piece of this kind tells, by what day it is today; whether "last" was said of it."""
