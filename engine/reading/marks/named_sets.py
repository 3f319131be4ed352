"""Sets counted by a word for their place in the session: "2 back offs of 5", "3 top sets of 3", "2 back off triples".

named = NUMBER BACK-OFFS | NUMBER BACK-OFF REPS-NAME
The word goes in front of its number, which then counts sets as "2 sets" does. A number that belongs to what stands in
front of it counts none: "100x5 back offs 80x8".
"""

from __future__ import annotations

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of

MOST_SETS = 10
"""So many sets may be counted by such a word. Common practice, no source."""
SEVERAL = 2
"""What a word for such sets tells where it names several of them."""
STARTS = frozenset(
    (None, K.NAME, K.COMMA, K.THEN, K.AND, K.PLUS, K.LINE, K.STOP, K.COLON, K.OPEN, K.FILLER, K.NOTE, K.FOR, K.GOT,
     K.ARROW, K.DASH, K.WORKING)
)  # fmt: skip


def with_named_sets(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words in front of the numbers that count them."""
    out: list[Piece] | None = None
    for at in places_of(K.FILLER, kinds_in_order(pieces)):
        if pieces[at].told and _counts(pieces, at - 1, pieces[at], kind_at(pieces, at + 1)):
            out = list(pieces) if out is None else out
            several = pieces[at].told == SEVERAL
            count = pieces[at - 1]
            out[at - 1], out[at] = pieces[at], count._replace(role=Role.SETS) if several else count
    return pieces if out is None else out


def _counts(pieces: list[Piece], at: int, word: Piece, behind: K | None) -> bool:
    count = pieces[at] if at >= 0 else word
    if count.kind is not K.NUMBER or count.role is not Role.BARE:
        return False
    if not 1 <= count.value <= MOST_SETS or count.value % 1:
        return False
    glued = count.glued and kind_at(pieces, at - 1) is K.COMMA  # "100x5,5 back offs 80x8"
    return (word.told == SEVERAL or behind is K.COUNT) and not glued and (at == 0 or pieces[at - 1].kind in STARTS)
