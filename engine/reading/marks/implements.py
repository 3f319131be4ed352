"""How many implements were held, told in front of what each weighs: "with the two 24s", "both 16kg kettlebells".

implements = [ "with" | "the" ]... "two" LOAD      LOAD: a number with its unit, or a plural: "24s"
           | [ "with" ] "two" DUMBBELLS [ "of" ] LOAD                   lunges 3x10 with 2 dumbbells of 14
The load is that of each; a plural in front of which "two" stands counts no seconds.
"""

from __future__ import annotations

from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_in, places_of

HELD = 2
LOADED = frozenset((Role.PLURAL, Role.LOAD))
BEFORE_A_COUNT = frozenset((K.SETS, K.TIMES, K.NUMBER, K.FOR, K.ORDINAL, K.DASH, K.SLASH, K.PLUS))


def with_implements(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with a count of implements made a filler word, and the plural behind it a load."""
    out: list[Piece] | None = None
    kinds = kinds_in_order(pieces)
    for at in reversed(places_in(IN_HANDS, kinds)):
        pieces = _with_load_in_front(pieces, at)
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


def _with_load_in_front(pieces: list[Piece], at: int) -> list[Piece]:
    """The pieces with what the two dumbbells there weigh in front of them: "2 dumbbells of 14" are "two 14s"."""
    behind = at + 1 + (at + 1 < len(pieces) and pieces[at + 1].kind in LINKS)
    load = pieces[behind] if behind < len(pieces) else None
    count = pieces[at - 1] if at else None
    if load is None or load.kind is not K.NUMBER or count is None or count.kind is not K.NUMBER:
        return pieces
    joined = behind + 1 < len(pieces) and pieces[behind + 1].kind in JOINED
    led = at > 1 and pieces[at - 2].kind in LEADING
    if count.value != HELD or load.role not in (Role.BARE, Role.LOAD) or joined or not led:
        return pieces
    plural = load._replace(role=Role.LOAD if load.unit else Role.PLURAL)
    return [*pieces[:at], plural, pieces[at], *pieces[behind + 1 :]]


IN_HANDS = frozenset((K.DUMBBELL, K.KETTLEBELL))
LINKS = frozenset((K.OF, K.WITH, K.FILLER, K.AT, K.FOR, K.EACH))
JOINED = frozenset((K.TIMES, K.REPS, K.SETS, K.SLASH))
LEADING = frozenset((K.WITH, K.FILLER, K.SECONDS, K.COMMA))
