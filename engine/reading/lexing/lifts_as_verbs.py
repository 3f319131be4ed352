"""Lifts and verbs that are one word: "rowed 60 for 3x10" tells of a lift; "rowed 2000 m", "log bench 3x5" of none."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.days.day_starts import DATE_KINDS
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


def without_verb(pieces: list[Piece]) -> list[Piece]:
    """ "log bench 3x5 80", "log yesterday bench 3x5 80" ask to write it down; the log of the strongman is a lift of its
    own: "log 3x5 80".
    """
    at = next(place for place, piece in enumerate(pieces) if piece.kind is K.NAME)
    behind = at + 1
    while behind < len(pieces) and pieces[behind].kind in BEHIND_A_VERB:
        behind += 1
    is_verb = behind < len(pieces) and pieces[behind].kind is K.NAME
    return [*pieces[:at], pieces[at]._replace(kind=K.FILLER, names=()), *pieces[at + 1 :]] if is_verb else pieces


LOG = "log"
BEHIND_A_VERB = DATE_KINDS | {K.FILLER, K.COLON, K.LAST}
