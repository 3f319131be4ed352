"""What was held, how many of it, and how far it went, told in words beside the sets that it is of."""

from __future__ import annotations

from engine.reading.marks.bar_ahead import with_bar_ahead
from engine.reading.marks.each_round import with_rounds_told
from engine.reading.marks.implements import with_implements
from engine.reading.marks.weight_hung import HUNG, with_weight_hung
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

TELLING_WHAT_IS = frozenset((K.ASKS, K.FILLER))
"""Kinds of the words for is and was."""


def with_things_held(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, so that what was held, hung on and walked stands as sets tell it."""
    if K.BAR in kinds:
        pieces = with_bar_ahead(pieces)
    if not kinds.isdisjoint(HUNG):
        pieces = with_weight_hung(pieces)
    pieces = with_implements(pieces)
    return with_rounds_told(pieces) if not kinds.isdisjoint(TELLING_WHAT_IS) else pieces
