"""A lift told as what somebody did: "rowed 60 for 3x10"; "rowed 2000 m in 8 min" tells no sets."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

ROWED, ROW, REACH_OF_A_PAIR = "rowed", "row", 3


def with_rows(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with such a word made the name of its lift where sets stand behind it."""
    out: list[Piece] | None = None
    for at, piece in enumerate(pieces):
        if piece.text == ROWED and _tells_sets([one.kind for one in pieces[at + 1 : at + 1 + REACH_OF_A_PAIR]]):
            out = list(pieces) if out is None else out
            out[at] = piece._replace(kind=K.NAME, names=catalogue.owners(ROW), text=ROW)
    return pieces if out is None else out


def _tells_sets(behind: list[K]) -> bool:
    return behind[:1] == [K.NUMBER] and (behind[1:2] == [K.TIMES] or behind[1:3] == [K.FOR, K.NUMBER])
