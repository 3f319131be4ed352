"""The day of something without numbers, ahead of another day that heads a lift: a remark, and no day of those sets.

was = what ... DAY "," DAY lift sets        "legs were on monday, today just bench 3x8 65"
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_of

WHAT_WAS = frozenset((K.MUSCLE, K.HEADING, K.UNRELATED, K.SORE, K.PAIN))
DAYS = frozenset((K.WEEKDAY, K.LAST_WEEKDAY, K.YESTERDAY, K.DAYS_AGO, K.TODAY))
LITTLE = frozenset((K.ONLY, K.FILLER, K.COLON, K.NOT_DATE))
REACH = 5


def without_days_of_what_was(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with such a day made a remark."""
    if kinds.isdisjoint(WHAT_WAS) or K.NUMBER not in kinds:
        return pieces
    out = list(pieces)
    order = kinds_in_order(pieces)
    for comma in places_of(K.COMMA, order):
        ahead = {*order[:comma]}
        if ahead.isdisjoint(WHAT_WAS) or K.NUMBER in ahead or K.NAME in ahead:
            break
        if kind_at(pieces, comma - 1) in DAYS - {K.TODAY} and _heads_a_lift(order[comma + 1 : comma + 2 + REACH]):
            out[comma - 1] = pieces[comma - 1]._replace(kind=K.NOTE, told=0)
    return out


def _heads_a_lift(kinds: Sequence[K]) -> bool:
    """ "today just bench 3x8 65"."""
    told = [kind for kind in kinds if kind not in LITTLE]
    return told[:1] != [] and told[0] in DAYS and told[1:3] == [K.NAME, K.NUMBER]
