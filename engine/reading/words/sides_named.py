"""Words for each side of the body, and of a bar."""

from __future__ import annotations

from engine.reading.words.cues import any_cued
from engine.reading.words.pieces import Piece

SIDE_OF_A_BAR = frozenset(("barside",))
SIDES = SIDE_OF_A_BAR | {"limb"}


def tells_a_side(piece: Piece, sides: frozenset[str] = SIDES) -> bool:
    """Whether "each side", "per leg", "por pierna" names a side of the body, and not a hand that holds something."""
    return any_cued(piece.text.split(), sides)
