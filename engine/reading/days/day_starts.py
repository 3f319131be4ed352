"""Where a day may begin: at a word for one, or at a number by what stands right behind it; and what may stand ahead.

start = TODAY | WEEKDAY | ... | ORDINAL | NUMBER ( "/" | "-" | "." | MONTH | "days ago" | line end )
"""

from __future__ import annotations

from engine.reading.days.day_places import is_bullet
from engine.reading.days.headed_days import heads_a_lift, is_before_a_month
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_in

DATE_KINDS = frozenset((K.TODAY, K.YESTERDAY, K.DAYS_AGO, K.WEEKDAY, K.LAST_WEEKDAY, K.AGO, K.WEEKS_AGO, K.MONTH))
DAYS_BACK = frozenset((K.AGO, K.WEEKS_AGO))
BEGINNING_A_DAY = DATE_KINDS | {K.NUMBER, K.ORDINAL}
BEHIND_NO_DAY = frozenset((K.TIMES, K.COMMA, K.NUMBER, K.AT))
BEFORE_A_DAY = frozenset(
    (K.FILLER, K.AND, K.THEN, K.FOR, K.HEADING, K.DATE, K.OTHER_SIGN, K.OPEN, K.LAST, K.NOT_DATE, K.DASH, K.STOP,
     K.COLON)
)  # fmt: skip


def perhaps_days(pieces: list[Piece]) -> list[int]:
    """The places where a day may begin by its kind and what stands right behind it."""
    kinds = kinds_in_order(pieces)
    found = places_in(BEGINNING_A_DAY, kinds)
    ends = len(kinds) - 1
    return [
        at
        for at in found
        if kinds[at] is not K.NUMBER
        or (at < ends and kinds[at + 1] not in BEHIND_NO_DAY and _lets_a_day_begin(pieces, at))
    ]


def _lets_a_day_begin(pieces: list[Piece], at: int) -> bool:
    """Whether the number may be that of a day by what stands right behind it: "16/", "13.", "8 march", "3 days ago"."""
    after = pieces[at + 1]
    if after.kind in (K.SLASH, K.DASH):
        return after.glued
    if after.kind is K.LINE:
        return "." in pieces[at].text
    if after.kind is K.NAME or after.kind is K.COLON:
        return heads_a_lift(pieces, at)
    return after.kind is K.MONTH or after.kind in DAYS_BACK or is_before_a_month(after)


def opens_a_line(pieces: list[Piece], at: int, seen: int, anchored: bool) -> bool:
    """Whether nothing but what may stand ahead of a day is told in front of it on its line.

    Shape: `anchored` says so of the place `seen` in front of it.
    """
    while at > seen:
        at -= 1
        if pieces[at].kind is K.LINE:
            return True
        if pieces[at].kind not in BEFORE_A_DAY and not is_bullet(pieces, at):
            return False
    return anchored
