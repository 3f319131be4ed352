"""How many implements were held, told in front of what each weighs: "with the two 24s", "both 16kg kettlebells".

implements = [ "with" | "the" ]... "two" LOAD      LOAD: a number with its unit, or a plural: "24s"
The load is that of each; a plural in front of which "two" stands counts no seconds.
"""

from __future__ import annotations

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of

HELD = 2
LOADED = frozenset((Role.PLURAL, Role.LOAD))
BEFORE_A_COUNT = frozenset((K.SETS, K.TIMES, K.NUMBER, K.FOR, K.ORDINAL, K.DASH, K.SLASH, K.PLUS))


def with_implements(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with a count of implements made a filler word, and the plural behind it a load."""
    out: list[Piece] | None = None
    for at in places_of(K.NUMBER, kinds_in_order(pieces)):
        if pieces[at].value == HELD and _counts_implements(pieces, at):
            out = list(pieces) if out is None else out
            out[at] = pieces[at]._replace(kind=K.FILLER)
            out[at + 1] = pieces[at + 1]._replace(role=Role.LOAD if pieces[at + 1].unit else Role.PLURAL)
    return pieces if out is None else out


def _counts_implements(pieces: list[Piece], at: int) -> bool:
    count = pieces[at]
    load = pieces[at + 1] if at + 1 < len(pieces) else count
    if load.kind is not K.NUMBER or load.role not in LOADED or count.role is not Role.BARE:
        return False
    joined = at + 2 < len(pieces) and pieces[at + 2].kind is K.TIMES and load.role is Role.PLURAL
    return not joined and (at == 0 or pieces[at - 1].kind not in BEFORE_A_COUNT)
