"""The days that a correction names, and the word that ties a day to its sets."""

from __future__ import annotations

import re
from datetime import date
from typing import NamedTuple

from engine.reading.days.dates import with_dates
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.prepare import Prepared
from engine.reading.values import Context


class Named(NamedTuple):
    day: date
    start: int
    end: int


def days_named(prepared: Prepared, context: Context) -> list[Named]:
    """The days that the words name, wherever they stand."""
    found = []
    for piece in prepared.pieces:
        day = piece.day
        if day is None and piece.kind in DATE_KINDS:
            day = with_dates([piece], context.now, context.unit)[0].day
        if day is not None:
            found.append(Named(day, piece.start, piece.end))
    return found


def day_named(prepared: Prepared, context: Context) -> Named | None:
    """The only day that the message names, if it is none to come."""
    days = days_named(prepared, context)
    past = len(days) == 1 and context.now is not None and days[0].day <= context.now.date()
    return days[0] if past else None


ON_A_DAY = re.compile(r"(?<!\w)(?:on|from|of|am|vom|el|del|le|du|il|di|op|på)\s+(?:the\s+)?$", re.IGNORECASE)
"""The word that ties a day to its sets: it goes with the day."""
