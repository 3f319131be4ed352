"""Days and times as people read them: Thu 12 Nov, 18:00. Never 12/11, which two halves of the world read two ways."""

from __future__ import annotations

from datetime import date, datetime, time

DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def day(on: date, today: date | None = None) -> str:
    """Thu 12 Nov; with the year where it is not this year's."""
    year = f" {on.year}" if today is not None and on.year != today.year else ""
    return f"{DAYS[on.weekday()]} {on.day} {MONTHS[on.month - 1]}{year}"


def near(on: date, today: date) -> str:
    """Today, yesterday, tomorrow, or the day as `day` writes it."""
    match (on - today).days:
        case 0:
            return "today"
        case -1:
            return "yesterday"
        case 1:
            return "tomorrow"
        case _:
            return day(on, today)


def clock(at: datetime | time) -> str:
    """18:05."""
    return f"{at.hour:02d}:{at.minute:02d}"
