"""The latest day that a day of the month, or a day and a month, can mean."""

from __future__ import annotations

from datetime import date, timedelta


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
