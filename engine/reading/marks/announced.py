"""How many sets follow, told without the word: "three done, 80x8 80x8 80x7", "did 3: 80x8, 80x8, 80x7".

announced = ( NUMBER "done" | "did" NUMBER ) ( "," | ":" | "-" ) pairs      as many as the number says
"""

from __future__ import annotations

from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of

BEHIND_IT = frozenset((K.COMMA, K.COLON, K.DASH, K.STOP))
FEWEST, MOST = 2, 12
NEAR = 3


def with_announced(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with a number that announces as many pairs made one of sets."""
    did = phrasebook().cues["didso"]
    if did.isdisjoint([spoken(pieces[at].text) for at in places_of(K.FILLER, kinds_in_order(pieces))]):
        return pieces
    for at, piece in enumerate(pieces):
        if piece.kind is not K.NUMBER or piece.role is not Role.BARE or not FEWEST <= piece.value <= MOST:
            continue
        said = _is_said(pieces, at - 1, did) or _is_said(pieces, at + 1, did)
        end = at + 1
        while end < min(len(pieces), at + NEAR) and pieces[end].kind is K.FILLER:
            end += 1
        if said and end < len(pieces) and pieces[end].kind in BEHIND_IT and _pairs_from(pieces, end + 1) == piece.value:
            return [*pieces[:at], piece._replace(role=Role.SETS), *pieces[at + 1 :]]
    return pieces


def _is_said(pieces: list[Piece], at: int, did: frozenset[str]) -> bool:
    return 0 <= at < len(pieces) and pieces[at].kind is K.FILLER and spoken(pieces[at].text) in did


def _pairs_from(pieces: list[Piece], at: int) -> int:
    """How many pairs stand here, up to the line's end or the next lift."""
    pairs = 0
    while at < len(pieces) and pieces[at].kind not in (K.LINE, K.NAME):
        pairs += pieces[at].kind is K.TIMES
        at += 1
    return pairs
