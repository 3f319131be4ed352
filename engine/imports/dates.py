"""Whole columns of dates: which number is the month, which year is meant, and which dates cannot be.

The order of day and month is settled by the column: a number over 12, a weekday that fits one way only, dates that
would lie in the future one way only; dates that go forward (or back) row by row one way only, or that lie days apart
one way and months the other; else by the habit that goes with the writer's unit (dotted dates: day first).
Where the column holds both orders, a date that fits both ways stays open.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date
from itertools import pairwise
from typing import assert_never

from engine.imports.values import DateOrder
from engine.imports.written_dates import FIRST_YEAR, Pair, Told, Written
from engine.values.load import Unit

MOST_DAYS = 31
A_YEAR = 12 * MOST_DAYS
OUT_OF_ORDER = 6
YEARS_BACK = 8
"""A 29th of February without a year lies at most so many years back (1900 and 2100 are no leap years)."""
FEWEST_TOLD = 3
OFTEN = 10
FAR_APART = 3
"""From three dates on, those at most ten days apart on average, and three times as far apart when read the other way,
are read as the nearer ones: people train more often than they skip to the same day of another month. Common practice,
no source."""
SHORT_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")

Day = date | str
"""A day, or why there is none."""


def date_order(written: Iterable[Written | None], unit: Unit, today: date) -> DateOrder | None:
    """The order that all the dates together settle; None where none of them needs one."""
    pairs = tuple(dict.fromkeys(one for one in written if isinstance(one, Pair)))
    if not pairs:
        return None
    told = {order for pair in pairs if (order := _says(pair)) is not None}
    if len(told) == 1:
        return told.pop()
    return DateOrder.MIXED if told else _likely(pairs, unit, today)


def is_settled(written: Iterable[Written | None]) -> bool:
    """Whether the dates themselves settle their order, or need none."""
    pairs = [one for one in written if isinstance(one, Pair)]
    return not pairs or any(_says(pair) is not None for pair in pairs)


def _says(pair: Pair) -> DateOrder | None:
    """The one order in which a date can be; None where both will do, or neither."""
    ways = [order for order in (DateOrder.DAY_FIRST, DateOrder.MONTH_FIRST) if _exists(pair, order)]
    if len(ways) == 2 and pair.weekday is not None and pair.year is not None and pair.first != pair.second:
        ways = [order for order in ways if _weekday(pair, order) == pair.weekday]
    return ways[0] if len(ways) == 1 else None


def _exists(pair: Pair, order: DateOrder) -> bool:
    told = _ordered(pair, order)
    return isinstance(_in_year(told, told.year or 2000), date)


def _weekday(pair: Pair, order: DateOrder) -> int:
    told = _ordered(pair, order)
    day = _in_year(told, told.year or 2000)
    return day.weekday() if isinstance(day, date) else -1


def _likely(pairs: Sequence[Pair], unit: Unit, today: date) -> DateOrder:
    dotted = all(pair.dotted for pair in pairs)
    habit = DateOrder.MONTH_FIRST if unit is Unit.LB and not dotted else DateOrder.DAY_FIRST
    other = DateOrder.DAY_FIRST if habit is DateOrder.MONTH_FIRST else DateOrder.MONTH_FIRST
    if _ahead(pairs, habit, today) != _ahead(pairs, other, today):
        return other if _ahead(pairs, habit, today) else habit
    return other if _goes_better(_days(pairs, other), _days(pairs, habit)) else habit


def _days(pairs: Sequence[Pair], order: DateOrder) -> list[date]:
    found = [_in_year(_ordered(pair, order), pair.year) for pair in pairs if pair.year is not None]
    return [day for day in found if isinstance(day, date)]


def _goes_better(one: Sequence[date], other: Sequence[date]) -> bool:
    """Whether dates make a diary in one order rather than in the other."""
    if len(one) < FEWEST_TOLD or not _in_turn(one):
        return False
    if not _in_turn(other):
        return True
    gap, other_gap = ((max(days) - min(days)).days / (len(days) - 1) for days in (one, other))
    return gap <= OFTEN and other_gap >= FAR_APART * gap


def _in_turn(days: Sequence[date]) -> bool:
    """Whether each day lies after the one before, or each before it."""
    return list(days) in (sorted(days), sorted(days, reverse=True))


def _ahead(pairs: Sequence[Pair], order: DateOrder, today: date) -> bool:
    """Whether a date would lie in the future: nobody logs that."""
    days = (_in_year(_ordered(pair, order), pair.year) for pair in pairs if pair.year is not None)
    return any(isinstance(day, date) and day > today for day in days)


def _ordered(pair: Pair, order: DateOrder) -> Told:
    month, day = (pair.first, pair.second) if order is DateOrder.MONTH_FIRST else (pair.second, pair.first)
    return Told(pair.year, month, day, pair.weekday)


def days_of(written: Sequence[Written], order: DateOrder | None, today: date) -> list[Day]:
    """The day of each date, or why it has none.

    Shape: `written` in the order of the document. A date without a year lies as near as can be to the dates beside it;
    where none of them has a year, the newest is the latest such day, whichever end of the document it stands at.
    """
    told = [_told(one, order) for one in written]
    days = [one if isinstance(one, str) else _known(one, today) if one.year is not None else "" for one in told]
    open_places = [place for place, one in enumerate(told) if isinstance(one, Told) and one.year is None]
    if not open_places:
        return days
    dated = next((place for place, day in enumerate(days) if isinstance(day, date)), None)
    rising = _rises(told)
    start = dated if dated is not None else open_places[-1 if rising else 0]
    near = today
    for place in (*range(start, len(told)), *range(start - 1, -1, -1)):
        if place == start - 1 and isinstance(first := days[start], date):
            near = first
        one = told[place]
        if isinstance(one, Told) and one.year is None:
            days[place] = _nearest(one, near, today, later=rising == (place > start))
        if isinstance(day := days[place], date):
            near = day
    return days


def _told(written: Written, order: DateOrder | None) -> Told | str:
    match written:
        case Told():
            return written
        case Pair():
            return _by_order(written, order)
        case _:
            assert_never(written)


def _by_order(pair: Pair, order: DateOrder | None) -> Told | str:
    if order is DateOrder.MIXED and pair.first != pair.second:
        says = _says(pair)
        if says is None and _exists(pair, DateOrder.DAY_FIRST):
            ways = ((pair.first, pair.second), (pair.second, pair.first))
            first, second = (f"{day} {SHORT_MONTHS[month - 1]}" for day, month in ways)
            return f"could be {first} or {second}: this document writes dates both ways"
        order = says
    elif order is not None and not _exists(pair, order):
        order = _says(pair) or order
    return _ordered(pair, order if order is not None and order is not DateOrder.MIXED else DateOrder.DAY_FIRST)


def _rises(told: Sequence[Told | str]) -> bool:
    """Whether the document goes from old to new, by which way the dates go from each to the next."""
    days = [one.month * MOST_DAYS + one.day for one in told if isinstance(one, Told)]
    steps = [(after - before) % A_YEAR for before, after in pairwise(days) if after != before]
    return 2 * sum(step < A_YEAR / 2 for step in steps) >= len(steps)


def _known(told: Told, today: date) -> Day:
    day = _in_year(told, told.year or 0)
    if isinstance(day, date) and day > today:
        return "the date is in the future"
    if isinstance(day, date) and day.year < FIRST_YEAR:
        return f"the date is before {FIRST_YEAR}"
    return day


def _nearest(told: Told, near: date, today: date, *, later: bool) -> Day:
    """The day nearest to another that is not to come; of the day of the week that is told, where one is.

    Shape: `later` or earlier than the other it is to be: a day out of order counts as so many times farther.
    """
    years = range(near.year + 1, near.year - YEARS_BACK - 1, -1)
    days = [day for year in years if isinstance(day := _in_year(told, year), date) and day <= today]
    fitting = [day for day in days if told.weekday in (None, day.weekday())] or days
    return min(fitting, key=lambda day: _apart(near, day) if later else _apart(day, near), default="no such day")


def _apart(before: date, after: date) -> int:
    days = (after - before).days
    return days if days >= 0 else -OUT_OF_ORDER * days


def _in_year(told: Told, year: int) -> Day:
    try:
        return date(year, told.month, told.day)
    except ValueError:
        return "no such day"
