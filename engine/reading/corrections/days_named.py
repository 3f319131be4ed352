"""The days that a correction names, and the word that ties a day to its sets."""

from __future__ import annotations

from datetime import date
from typing import NamedTuple

from engine.reading.days.dates import with_dates
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.prepare import Prepared
from engine.reading.values import Context
from engine.reading.words.cues import is_cued


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


def without_lead(before: str) -> str:
    """The text ahead of a day without the word that ties it to its sets, "on", "from the", which goes with the day."""
    kept, last = _last_word(before)
    if is_cued(last, LEADS):
        return kept
    kept, lead = _last_word(kept)
    return kept if is_cued(last, THE) and is_cued(lead, LEADS) else before


LEADS, THE = frozenset(("onday", "fromwhen")), frozenset(("the",))


def _last_word(text: str) -> tuple[str, str]:
    """The text up to its last word, and that word."""
    told = text.rstrip()
    at = max(told.rfind(" "), told.rfind("\n")) + 1
    return told[:at], told[at:]
