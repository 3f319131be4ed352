"""Weekdays of a week that is named: a heading over lines of them, or the two side by side.

heading = [ words ] week [ ":" ] line end { WEEKDAY sets line end }      last week:     2 weeks ago
day     = week [ words ] WEEKDAY | WEEKDAY [ words ] week                 last week monday     monday of last week
week    = "last week" | NUMBER "weeks ago"

Weeks begin on Monday. A heading with lines of sets below it and no day names a week, and no day of it: that is asked.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from engine.reading.days.calendar_days import DAYS_OF_A_WEEK
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

A_WEEK = 3
"""What an EARLIER piece's `told` says of "last week"; the others name a session."""
WHICH_DAY = 4
"""What a DATE piece's `told` says of a week without a day."""
WORDS = frozenset((K.FILLER, K.NOT_DATE, K.HEADING, K.OF, K.DASH, K.OTHER_SIGN, K.OPEN, K.CLOSE, K.STOP))
WEEKS_IN_A_YEAR = 52


def with_weeks(pieces: list[Piece], today: date | None) -> list[Piece]:
    """The pieces, weekdays of a week that is named made days ago, and the words that name the week taken away."""
    out = list(pieces)
    at = 0
    while today is not None and at < len(out):
        weeks, end = _week_at(out, at)
        if weeks:
            _settle(out, at, end, weeks, today)
        at += 1
    return out


def _week_at(pieces: list[Piece], at: int) -> tuple[int, int]:
    """How many weeks ago, and the place behind the words; 0 where no week is named here."""
    piece = pieces[at]
    if piece.kind is K.EARLIER and piece.told == A_WEEK:
        return 1, at + 1
    behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
    if piece.kind is K.NUMBER and behind is K.WEEKS_AGO and 1 <= piece.value <= WEEKS_IN_A_YEAR:
        return int(piece.value), at + 2
    return 0, at


def _settle(out: list[Piece], at: int, end: int, weeks: int, today: date) -> None:
    """The days that the words here are about, in their place; "last week 95x5" is about none."""
    day = _beside(out, at, end)
    if day is not None:
        _turn(out, range(day, day + 1) if day < at else _going_on(out, day, end), weeks, today)
        start = at if day > at else day + 1  # "monday of last week"
        out[start:end] = [out[at]._replace(kind=K.FILLER)]
        return
    if not _is_a_heading(out, at, end):
        return
    below = [place for place in _below(out, end) if out[place].kind is K.WEEKDAY]
    _turn(out, below, weeks, today)
    if not below and out[at].kind is K.NUMBER:
        return  # "2 weeks ago" alone is a day of its own
    kind = K.FILLER if below else K.DATE
    out[at:end] = [out[at]._replace(kind=kind, day=None, told=WHICH_DAY)]


def _turn(out: list[Piece], places: Iterable[int], weeks: int, today: date) -> None:
    for place in places:
        back = today.weekday() - out[place].told + DAYS_OF_A_WEEK * weeks
        out[place] = out[place]._replace(kind=K.DAYS_AGO, told=back)


def _going_on(pieces: list[Piece], day: int, end: int) -> list[int]:
    """The weekday here and those behind it that are later in the same week: "last week mon: ..., wed: ..."."""
    found = [day]
    for place in _below(pieces, max(day + 1, end)):
        if pieces[place].kind is K.WEEKDAY and pieces[place].told > pieces[found[-1]].told:
            found.append(place)
    return found


def _beside(pieces: list[Piece], at: int, end: int) -> int | None:
    """The weekday right behind the words, or right in front of them."""
    after = end + (end < len(pieces) and pieces[end].kind in (K.FILLER, K.NOT_DATE))
    if after < len(pieces) and pieces[after].kind is K.WEEKDAY:
        return after
    before = at - 1
    while before > max(0, at - 3) and pieces[before].kind in (K.OF, K.FILLER, K.NOT_DATE):
        before -= 1
    return before if before >= 0 and pieces[before].kind is K.WEEKDAY else None


def _is_a_heading(pieces: list[Piece], at: int, end: int) -> bool:
    """Whether the words stand on a line of their own, with lines of sets below it."""
    start = at
    while start and pieces[start - 1].kind in WORDS:
        start -= 1
    while end < len(pieces) and pieces[end].kind in WORDS | {K.COLON}:
        end += 1
    alone = (start == 0 or pieces[start - 1].kind is K.LINE) and end < len(pieces) and pieces[end].kind is K.LINE
    return alone and any(pieces[place].kind is K.NUMBER for place in _below(pieces, end))


def _below(pieces: list[Piece], end: int) -> range:
    """The places below a heading, up to the next one that names a week."""
    stop = next(
        (at for at in range(end, len(pieces)) if _is_this_week(pieces[at]) or _is_alone(pieces, at)), len(pieces)
    )
    return range(end, stop)


def _is_this_week(piece: Piece) -> bool:
    return piece.kind is K.FILLER and piece.text.split()[0] == "this" and piece.end - piece.start == len("this week")


def _is_alone(pieces: list[Piece], at: int) -> bool:
    """Whether another week heads the lines here."""
    if not _week_at(pieces, at)[0]:
        return False
    before = pieces[at - 1].kind if at else None
    after = pieces[_week_at(pieces, at)[1] :][:1]
    return before in (None, K.LINE) and [piece.kind for piece in after] in ([K.LINE], [K.COLON])
