"""Looking ahead among the pieces of a message, and setting a number aside as part of a note."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

LINKS = frozenset((K.COLON, K.OF, K.FILLER, K.EQUALS, K.WITH, K.FOR))
HOLDS_A_NUMBER = 1


def past_links(pieces: list[Piece], at: int) -> int:
    """The place behind the links from here on."""
    while at < len(pieces) and pieces[at].kind in LINKS:
        at += 1
    return at


def is_amount(pieces: list[Piece], at: int) -> bool:
    """Whether a number stands there."""
    return at < len(pieces) and pieces[at].kind is K.NUMBER


def kind_at(pieces: Sequence[Piece], at: int) -> K | None:
    """The kind of the piece there, or None ahead of the first and behind the last."""
    return pieces[at].kind if 0 <= at < len(pieces) else None


def aside(piece: Piece) -> Piece:
    """A note that holds its own number, so that the next one is not taken for part of it."""
    return piece._replace(kind=K.NOTE, told=HOLDS_A_NUMBER)
