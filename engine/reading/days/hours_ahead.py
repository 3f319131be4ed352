"""When a reminder is due: "at 7", "tomorrow 6:30am", "in 20 min", "half past six tonight".

moment = "in" TIME | [ day ] hour
hour   = [ HALF [ "past" ] | QUARTER ( "past" | "to" ) ] ( NUMBER | CLOCK ) [ "am" | "pm" ] | NOON
An hour of the clock's first twelve without its half of the day is the next one at which people are up.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime, time, timedelta
from itertools import pairwise
from typing import NamedTuple

from engine.reading.days.when import day_told
from engine.reading.values import Context
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role

HALF_DAY = 12
LAST_HOUR = 23
UP_FROM = 5
"""Nobody is reminded before this hour unless they say so. Common practice, no source."""
HOURS, HALF_BEFORE = frozenset(("oclock",)), frozenset(("halfbefore",))
LONGEST_SPAN_S, LONGEST_SPAN_H = 86_400, 48


class Hour(NamedTuple):
    """An hour as told; `open`: it may be in either half of the day."""

    at: time
    open: bool


def moment_told(pieces: Sequence[Piece], context: Context, words: Sequence[str] = ()) -> datetime | None:
    """The next moment that is told once; None where none is, or where it returns on several days."""
    now = context.now
    if now is None or sum(1 for piece in pieces if piece.kind is K.WEEKDAY) > 1:
        return None
    pieces = _without_sets(pieces)
    span = _in_a_while(pieces, now, words)
    if span is not None:
        return span
    dated = _date_in(pieces)
    told = next(hours_told([piece for piece in pieces if piece not in dated], words), None)
    if told is None:
        return None
    day = day_told(dated or [piece for piece in pieces if piece.kind is not K.NUMBER], context)
    if day is None:
        return min(moment for moment in _next_days(told, now) if moment > now)
    moments = [datetime.combine(day, at) for at in _halves(told)]
    return next((moment for moment in moments if moment > now), moments[0])


def _without_sets(pieces: Sequence[Piece]) -> Sequence[Piece]:
    """The pieces without numbers that count sets: of "to squat 3x5 100 tomorrow at 7" the seven alone is an hour."""
    if all(piece.kind is not K.TIMES for piece in pieces):
        return pieces
    told = zip((None, *pieces), pieces, (*pieces[1:], None), strict=False)
    return [piece for before, piece, behind in told if piece.kind is not K.NUMBER or _is_an_hour(before, piece, behind)]


def _is_an_hour(before: Piece | None, piece: Piece, behind: Piece | None) -> bool:
    halved = behind is not None and behind.text in HALF_OF_IT
    led = behind is None or behind.kind is not K.TIMES if before is None else "athour" in CUES_OF[before.text]
    return ":" in piece.text or halved or led


HALF_OF_IT = frozenset(("am", "pm"))
SPANS = frozenset(("day", "week"))


def _date_in(pieces: Sequence[Piece]) -> Sequence[Piece]:
    """The day and the month of a date, or a number of days, whose number is no hour: "on 3 dec at 6pm", "in 3 days"."""
    for at, piece in enumerate(pieces[1:]):
        if pieces[at].kind is K.NUMBER and is_cued(piece.text, SPANS):
            return pieces[at : at + 2]
    month = next((at for at, piece in enumerate(pieces) if piece.kind is K.MONTH), None)
    if month is None:
        return ()
    ahead = month > 0 and pieces[month - 1].kind in (K.NUMBER, K.ORDINAL)
    return pieces[month - 1 : month + 1] if ahead else pieces[month : month + 2]


def _halves(told: Hour) -> list[time]:
    """The hours of a day that may be meant, the likelier first."""
    if not told.open:
        return [told.at]
    later = told.at.replace(hour=told.at.hour % HALF_DAY + HALF_DAY)
    return [told.at, later] if UP_FROM <= told.at.hour < HALF_DAY else [later]


def _next_days(told: Hour, now: datetime) -> Iterator[datetime]:
    for days in (0, 1):
        for at in _halves(told):
            yield datetime.combine(now.date() + timedelta(days=days), at)


def _in_a_while(pieces: Sequence[Piece], now: datetime, words: Sequence[str]) -> datetime | None:
    """ "in 20 min", "in 2 hours", "in an hour"."""
    told = " ".join(piece.text for piece in pieces)
    for span, minutes in (("half an hour", 30), ("an hour", 60)):
        if f"in {span}" in told:
            return now + timedelta(minutes=minutes)
    for before, piece in pairwise(pieces):
        if piece.kind is not K.NUMBER or "aheadby" not in CUES_OF[before.text]:
            continue
        clock = (":" in piece.text and before.text not in ("in", "for")) or any_cued(words, HOURS)
        if piece.role is Role.SECONDS and piece.value < LONGEST_SPAN_S and not clock:
            return now + timedelta(seconds=int(piece.value))
        if piece.role is Role.METRES and piece.value <= LONGEST_SPAN_S / 60:
            return now + timedelta(minutes=float(piece.value))  # "in 40m"
        if piece.role is Role.NOT_A_SET and piece.value <= LONGEST_SPAN_H and not clock:
            return now + timedelta(hours=float(piece.value))
    return None


def hours_told(pieces: Sequence[Piece], words: Sequence[str]) -> Iterator[Hour]:
    """The hours that the pieces tell, one after the other, among these words."""
    said = {spoken(word) for word in words} | {spoken(piece.text) for piece in pieces}
    cues = phrasebook().cues
    evening, morning = not cues["evening"].isdisjoint(said), not cues["morning"].isdisjoint(said)
    for at, piece in enumerate(pieces):
        if piece.kind is not K.NUMBER:
            continue
        hour, minute, exact = clock_of(piece)
        minutes = hour * 60 + minute + _parts_of_an_hour(pieces[max(0, at - 3) : at], piece)
        minutes += _parts_behind(pieces[at + 1 : at + 4])
        half = pieces[at + 1].text if at + 1 < len(pieces) else ""
        later = half == "pm" or (evening and half != "am")
        hour, minute = divmod(minutes, 60)
        if later and 0 < hour < HALF_DAY:
            hour += HALF_DAY
        if half == "am" and hour == HALF_DAY:
            hour = 0
        if minutes >= 0 and 0 <= hour <= LAST_HOUR:
            yield Hour(time(hour, minute), not (exact or later or morning or half == "am") and 0 < hour <= HALF_DAY)
    if not cues["noon"].isdisjoint(said):
        yield Hour(time(HALF_DAY), False)


def clock_of(piece: Piece) -> tuple[int, int, bool]:
    """The hour and minute of a number, and whether it says by itself which half of the day it means; -1: no hour."""
    exact = piece.text.startswith("0") or piece.role is Role.NOT_A_SET
    if piece.role is Role.SECONDS and ":" in piece.text:
        return *divmod(int(piece.value), 60), exact
    if piece.role not in (Role.BARE, Role.NOT_A_SET) or piece.value >= 2400:
        return -1, 0, False
    if piece.text.isdigit() and len(piece.text) in (3, 4):
        hour, minute = divmod(int(piece.value), 100)
    else:
        hour, minute = int(piece.value), int((piece.value % 1) * 100)
    return (hour, minute, exact) if minute < 60 and hour <= LAST_HOUR + 1 else (-1, 0, False)


def _parts_behind(behind: Sequence[Piece]) -> int:
    """ "a las ocho y media"."""
    told = [spoken(word) for piece in behind for word in piece.text.split()]
    cues = phrasebook().cues
    return 30 if not cues["andhalf"].isdisjoint(told) else 15 if not cues["andquarter"].isdisjoint(told) else 0


def _parts_of_an_hour(ahead: Sequence[Piece], number: Piece) -> int:
    """Minutes that "half past", "half", "quarter to" in front of an hour add to it."""
    told = [spoken(piece.text) for piece in ahead]
    cues = phrasebook().cues
    quarter = next((at for at, word in enumerate(told) if word in cues["quarter"]), None)
    if quarter is not None and quarter + 1 < len(told):
        return -15 if told[quarter + 1] in cues["tohour"] else 15
    if not any(piece.kind is K.HALF or is_cued(piece.text, HALF_BEFORE) for piece in ahead):
        return 0
    continental = any_cued(told, HALF_BEFORE) or told[:1] == ["om"] or (number.spelled and not number.text.isascii())
    return -30 if continental else 30
