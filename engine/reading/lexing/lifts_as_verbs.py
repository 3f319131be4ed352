"""Lifts and verbs that are one word: "rowed 60 for 3x10" tells of a lift; "rowed 2000 m", "log bench 3x5" of none."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

ROWED, ROW, IN, REACH_OF_A_PAIR = "rowed", "row", "in", 3
GOING_ON = ([K.TIMES], [K.NUMBER], [K.COUNT], [K.SLASH])


def with_rows(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with such a word made the name of its lift where sets stand behind it."""
    out: list[Piece] | None = None
    for at, piece in enumerate(pieces):
        if piece.kind is not K.UNRELATED or not (piece.text == ROWED or _is_in_row(piece)):
            continue
        if _tells_sets([one.kind for one in pieces[at + 1 : at + 1 + REACH_OF_A_PAIR]]):
            out = list(pieces) if out is None else out
            start = piece.start if piece.text == ROWED else piece.end - len(ROW)
            out[at] = piece._replace(kind=K.NAME, names=catalogue.owners(ROW), text=ROW, start=start)
        elif _tells_a_spot(pieces[at + 1 : at + 1 + REACH_OF_A_SPOT]):
            out = list(pieces) if out is None else out
            out[at + 2] = pieces[at + 2]._replace(kind=K.FILLER)
    return pieces if out is None else out


def _is_in_row(piece: Piece) -> bool:
    """ "parked in row 3" is a place; "a record in row 60x8" is the lift."""
    return piece.text == IN and piece.end - piece.start == len(IN) + 1 + len(ROW)


def _tells_a_spot(behind: list[Piece]) -> bool:
    """ "in row 3, spot 45": the place goes on behind the comma."""
    kinds = [one.kind for one in behind]
    return kinds[:2] == [K.NUMBER, K.COMMA] and kinds[3:] == [K.NUMBER] and is_cued(behind[2].text, SPOT)


REACH_OF_A_SPOT, SPOT = 4, frozenset(("spotword",))


def _tells_sets(behind: list[K]) -> bool:
    if behind[:1] != [K.NUMBER]:
        return False
    return behind[1:2] in GOING_ON or behind[1:3] in ([K.FOR, K.NUMBER], [K.AT, K.NUMBER], [K.WITH, K.NUMBER])


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
