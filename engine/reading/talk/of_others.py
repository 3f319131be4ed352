"""Lifts that somebody else did, or says, in front of numbers without a name: "my mate did rdl, 3x8 90"."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece

TOLD_OF_OTHERS = frozenset((K.OTHERS, K.SAYING, K.STORY))


def lift_of_somebody(talk: Sequence[Piece]) -> Piece | None:
    """The lift of a clause about somebody that has no numbers; those behind it are of it, whoever did them."""
    kinds = {piece.kind for piece in talk}
    if kinds.isdisjoint(TOLD_OF_OTHERS) or K.NEVER in kinds or not kinds.isdisjoint(COUNTED):
        return None
    return next((piece for piece in reversed(talk) if piece.kind is K.NAME), None)


def tells_something(clause: Sequence[Piece]) -> bool:
    """Whether it counts anything or names a lift; other words may stand between a lift and its numbers."""
    return any(piece.kind is K.NAME or piece.kind in COUNTED for piece in clause)


def names_a_lift(clause: Sequence[Piece]) -> bool:
    """Whether a lift is named in it."""
    return any(piece.kind is K.NAME for piece in clause)
