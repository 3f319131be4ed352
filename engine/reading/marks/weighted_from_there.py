"""Sets that a word says were weighted, behind others of the same lift: "dips 10 10, then weighted 10 6".

weighted = sets ( THEN | "," | "and" ) WEIGHTED NUMBER NUMBER ...
The first number is the weight of the others, or all of them are reps with a weight that is not told: it is asked. The
sets in front are of the body alone.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of

LINKS = frozenset((K.FILLER, K.WITH, K.NOTE))
PARTS = frozenset((K.THEN, K.AND, K.COMMA, K.LINE))
SETS = frozenset((K.NUMBER, K.REPS))
LISTED = frozenset((K.NUMBER, K.COMMA, K.COLON, K.TIMES))


def with_weight_from_there(pieces: list[Piece]) -> list[Piece] | None:
    """The pieces, with the first number behind such a word as the weight added; None where there is none."""
    for at in places_of(K.ADDED, kinds_in_order(pieces)):
        first = _first_number(pieces, at)
        reps = [piece for piece in pieces[first + 1 : _end(pieces, first)] if piece.kind is K.NUMBER] if first else []
        if reps and any(one.value != pieces[first].value for one in reps):
            told = pieces[first]._replace(role=Role.CHANGE)
            return [*pieces[:at], told, *[one for one in pieces[first + 1 :] if one.kind is not K.COLON]]
    return None


def with_weight_in_doubt(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words as ones that no rule reads."""
    out = pieces
    for at in places_of(K.ADDED, kinds_in_order(pieces)):
        if _first_number(pieces, at):
            out = list(pieces) if out is pieces else out
            out[at] = pieces[at]._replace(kind=K.ALTERED)
    return out


def _first_number(pieces: Sequence[Piece], at: int) -> int:
    """The place of the bare number right behind the word, which parts sets from those in front; 0 for none."""
    start = at - 1
    while kind_at(pieces, start) in LINKS:
        start -= 1
    while kind_at(pieces, start) in PARTS:
        start -= 1
    first = at + 1 + (kind_at(pieces, at + 1) is K.COLON)
    behind = start < at - 1 and kind_at(pieces, start) in SETS
    bare = kind_at(pieces, first) is K.NUMBER and pieces[first].role is Role.BARE
    return first if behind and bare and kind_at(pieces, first + 1) in BEHIND_REPS else 0


BEHIND_REPS = frozenset((None, K.NUMBER, K.TIMES, K.COMMA, K.COLON, K.LINE, K.STOP, K.NOTE))


def _end(pieces: Sequence[Piece], first: int) -> int:
    end = first + 1
    while kind_at(pieces, end) in LISTED:
        end += 1
    return end
