"""A message without the sets that are told of another time: of a day to compare with, a plan, the last session."""

from __future__ import annotations

from engine.reading.marks.days_bettered import without_days_bettered
from engine.reading.marks.earlier_sets import without_earlier_sets
from engine.reading.marks.told_for_comparison import WORDS, with_what_is_compared
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_of

TELLING_OF_EARLIER = frozenset((K.EARLIER, K.OPEN, K.STORY))


def without_sets_of_another_time(pieces: list[Piece], kinds: set[K]) -> tuple[list[Piece], set[K]]:
    """The pieces, which are of these kinds, with such sets set aside; and their kinds."""
    told = without_days_bettered(pieces, kinds)
    if K.TIMES in kinds and not kinds.isdisjoint(WORDS):
        told = with_what_is_compared(told)
    kinds = kinds if told is pieces else kinds_of(told)
    if kinds.isdisjoint(TELLING_OF_EARLIER):
        return told, kinds
    told = without_earlier_sets(told)
    return told, kinds_of(told)
