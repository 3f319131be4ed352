"""A grip that is the short name of one lift, said of another: "pulldown 60 3x10, then 50 3x12 close grip"."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

GRIP = "grip"


def with_grips(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with each grip behind the numbers of a lift of another pattern than its own made a remark."""
    out: list[Piece] = []
    before: Piece | None = None
    for at, piece in enumerate(pieces):
        if piece.kind is K.NAME and before is not None and _is_a_grip(piece) and _goes_on(pieces, at, before):
            patterns = {catalogue.exercises[name].pattern for name in before.names if name in catalogue.exercises}
            own = {catalogue.exercises[name].pattern for name in piece.names if name in catalogue.exercises}
            if patterns.isdisjoint(own):
                out.append(piece._replace(kind=K.NOTE, names=()))
                continue
        before = piece if piece.kind is K.NAME else before
        out.append(piece)
    return out


def _goes_on(pieces: list[Piece], at: int, before: Piece) -> bool:
    """Whether the grip stands right behind numbers, or the lift before it was told with a grip of its own."""
    told = is_cued(before.text.split()[0], GRIPS) and pieces[at - 1].kind in PARTING
    return at > 0 and (pieces[at - 1].kind is K.NUMBER or told)


PARTING = frozenset((K.COMMA, K.THEN, K.AND, K.LINE, K.STOP, K.SLASH))
GRIPS = frozenset(("gripnarrow", "gripwide"))


def _is_a_grip(piece: Piece) -> bool:
    words = piece.text.split()
    return len(words) == 2 and words[-1] == GRIP
