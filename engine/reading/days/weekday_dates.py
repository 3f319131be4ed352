"""A weekday told with its day of the month: "fri 7th", "on monday the 3rd", which may be weeks ago; "wed 25 nov",
of which the weekday says the year.
"""

from __future__ import annotations

from datetime import date

from engine.reading.days.calendar_days import latest_of_month
from engine.reading.days.day_pieces import OTHER_WEEKDAY, STILL_AHEAD
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_in, places_of

DAYS_TOLD = frozenset((K.DATE, K.WEEKDAY))
OF_SOMETHING_ELSE = frozenset((K.MONTH, K.OF, K.SETS))


def with_weekdays_dated(pieces: list[Piece], today: date) -> list[Piece]:
    """The pieces, each such pair put to how many days ago it was, where such a day fits both."""
    out: list[Piece] = []
    behind = 0
    for at in places_of(K.WEEKDAY, kinds_in_order(pieces)):
        number = at + 1 + (kind_at(pieces, at + 1) is K.FILLER and "the" in CUES_OF[pieces[at + 1].text])
        days = _days_ago(pieces, at, number, today)
        if days is not None:
            out += [*pieces[behind:at], pieces[at]._replace(kind=K.DAYS_AGO, told=days, end=pieces[number].end)]
            behind = number + 1
    return [*out, *pieces[behind:]] if behind else pieces


def _days_ago(pieces: list[Piece], at: int, number: int, today: date) -> int | None:
    if kind_at(pieces, number) is not K.ORDINAL or not pieces[number].text[:1].isdigit():
        return None
    if kind_at(pieces, number + 1) in OF_SOMETHING_ELSE:
        return None
    day = latest_of_month(pieces[number].told, today)
    return (today - day).days if day is not None and day.weekday() == pieces[at].told else None


def with_years_by_weekdays(told: list[Piece], pieces: list[Piece], today: date) -> list[Piece]:
    """The pieces with their days told, where each date behind a weekday that is none of it is one of the year to come,
    which is still ahead, or no day at all; they were `pieces`.
    """
    out = list(told)
    starts = {pieces[at].start: pieces[at].told for at in places_of(K.WEEKDAY, kinds_in_order(pieces))}
    for at in places_in(DAYS_TOLD, kinds_in_order(told[:-1])):
        weekday, behind = starts.get(told[at].start), told[at + 1]
        if weekday is None or behind.kind is not K.DATE or behind.day is None or behind.start in starts:
            continue
        if told[at].kind is K.WEEKDAY and not behind.text[:1].isdigit():
            continue  # Italian "di ieri", where "di" is no Tuesday
        if behind.day.weekday() != weekday:
            ahead = _a_year_later(behind.day)
            is_ahead = ahead > today and ahead.weekday() == weekday
            out[at] = told[at]._replace(kind=K.FILLER)
            out[at + 1] = behind._replace(day=None, told=STILL_AHEAD if is_ahead else OTHER_WEEKDAY)
    return out


def _a_year_later(day: date) -> date:
    """The day of the same name in the year to come; the last of February for its 29th."""
    leap = day.month == FEBRUARY and day.day == LEAP_DAY
    return day.replace(year=day.year + 1, day=LEAP_DAY - 1 if leap else day.day)


FEBRUARY, LEAP_DAY = 2, 29
