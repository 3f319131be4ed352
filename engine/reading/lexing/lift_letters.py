"""Letters for lifts that mean an implement, too: "KB 3x4 120, BD 3x5 85, KH 2x3 145" names squat, bench and deadlift.

letters = ( "KB" | "KH" ) numbers     at the head of a clause, beside letters that can only name a lift: "BD"
Its clause names no lift, and tells a load that no dumbbell has: "BD 3x5 85, KH 3x10 30" may go on with dumbbells.
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece

IMPLEMENTS = frozenset((K.KETTLEBELL, K.DUMBBELL))
HEADS = frozenset((None, K.LINE, K.COMMA, K.STOP, K.THEN, K.AND, K.PLUS, K.SLASH))
LETTERS = "liftletters"


def with_lift_letters(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with each such implement made the lift that its letters name."""
    if not any(piece.kind is K.NAME and LETTERS in CUES_OF[piece.text] for piece in pieces):
        return pieces
    return [_as_lift(pieces, at, catalogue) for at in range(len(pieces))]


def _as_lift(pieces: list[Piece], at: int, catalogue: Catalogue) -> Piece:
    piece = pieces[at]
    if piece.kind not in IMPLEMENTS or LETTERS not in CUES_OF[piece.text]:
        return piece
    if kind_at(pieces, at - 1) not in HEADS or kind_at(pieces, at + 1) not in (K.NUMBER, K.COLON):
        return piece
    if not _is_heavy(pieces, at + 1):
        return piece
    owners = [catalogue.owners(f"{piece.text} {said}") for said in phrasebook().cues["aslift"]]
    names = next(filter(None, owners), ())
    return piece._replace(kind=K.NAME, names=names) if names else piece


def _is_heavy(pieces: list[Piece], at: int) -> bool:
    """Whether the clause from there on tells a load above any dumbbell, and no lift of its own."""
    heavy = False
    while kind_at(pieces, at) not in HEADS:
        piece = pieces[at]
        if piece.kind is K.NAME:
            return False
        heavy = heavy or (piece.kind is K.NUMBER and piece.value > HEAVIEST_DUMBBELL)
        at += 1
    return heavy


HEAVIEST_DUMBBELL = 60
"""Kilos. Common practice, no source."""
