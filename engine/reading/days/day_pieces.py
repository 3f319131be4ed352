"""The piece that a day becomes, and why nothing can be recorded for some days."""

from __future__ import annotations

from datetime import date, datetime
from typing import NamedTuple

from engine.reading.days.days_apart import TWO_DAYS
from engine.reading.days.week_headings import WHICH_DAY
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

NO_SUCH_DAY, STILL_AHEAD, LONG_AGO = 1, 2, 3
PERHAPS, OTHER_WEEKDAY = 6, 7
"""What a DATE piece's `told` says of a day that may be that of the sets, or of something else."""
WHY_NOT = {
    NO_SUCH_DAY: "there is no such day",
    STILL_AHEAD: "that day is still ahead",
    LONG_AGO: "that day is too long ago",
    TWO_DAYS: "two days are told of the same sets",
    OTHER_WEEKDAY: "that date is another day of the week",
    WHICH_DAY: "a week, but which day of it; put the day in front of its sets",
}
"""Of a day that nothing can be recorded for, by its piece's `told`."""
FIRST_YEAR = 2000
"""Before it a day is a slip. Common practice, no source."""


class Slip:
    """A day that no calendar has: 31/02."""


class Doubted(NamedTuple):
    """A day that may be that of the sets, or of what else is told."""

    day: date | None


NO_DAY = Slip()
Day = date | Slip | Doubted | None
Found = tuple[Day, int]


def as_day(piece: Piece, day: Day, now: datetime | None, end: int) -> Piece:
    """The DATE piece; `told` says why nothing can be recorded for that day, where nothing can."""
    if isinstance(day, Slip):
        return piece._replace(kind=K.DATE, day=None, told=NO_SUCH_DAY, end=end)
    if isinstance(day, Doubted):
        return piece._replace(kind=K.DATE, day=day.day, told=PERHAPS, end=end)
    slip = 0
    if day is not None and now is not None:
        slip = STILL_AHEAD if day > now.date() else LONG_AGO if day.year < FIRST_YEAR else 0
    return piece._replace(kind=K.DATE, day=day, told=slip, end=end)
