"""What one of the sets of a group came to, told in a sentence: "3x8 60 but the third was 6", "la tercera fueron 6".

told = ["but"] ( ORDINAL | LAST ) [ word ] WAS [ word ] NUMBER END       as "third set only 6"
     | ORDINAL WAS EFFORT                                         of that one alone, and of no other
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.marks.reps_retold import with_reps_retold
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_in

ONE_OF_THEM = frozenset((K.ORDINAL, K.LAST))
WAS, BUT = frozenset(("was", "were")), frozenset(("but",))
LITTLE = frozenset((K.FILLER, K.SETS, K.ONLY))
EFFORTS = frozenset((K.RPE, K.RIR, K.AT, K.FAILURE))
ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.REPS, K.NOTE, K.QUESTION))
COUNTS = frozenset((Role.BARE, Role.REPS))
REACH = 3


def with_results_of_one(pieces: list[Piece], told: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with the verb of such a sentence made the word that heads a result, and
    "but" a separator; and with reps that are told again (`reps_retold.py`).
    """
    pieces = with_reps_retold(pieces, told)
    if told.isdisjoint(ONE_OF_THEM):
        return pieces
    out = list(pieces)
    kinds = kinds_in_order(pieces)
    dropped: set[int] = set()
    number = kinds.index(K.NUMBER) if K.NUMBER in kinds else len(kinds)
    for at in places_in(ONE_OF_THEM, kinds):
        verb = _verb(pieces, at)
        if not verb or at <= number:
            continue
        behind = _past(pieces, verb + 1)
        if kinds[at] is K.ORDINAL and kind_at(pieces, behind) in EFFORTS:
            dropped.add(verb)
        elif _is_a_result(pieces, behind):
            out[verb] = pieces[verb]._replace(kind=K.ONLY)
            turn = _turn(pieces, at)
            if turn:
                out[turn] = pieces[turn]._replace(kind=K.COMMA, text=",")
    return [piece for at, piece in enumerate(out) if at not in dropped] if dropped else out


def _verb(pieces: Sequence[Piece], at: int) -> int:
    """The place of "was" behind the word there; 0 where none stands."""
    for behind in range(at + 1, min(at + 1 + REACH, len(pieces))):
        if is_cued(pieces[behind].text, WAS) and pieces[behind].kind is not K.NUMBER:
            return behind
        if pieces[behind].kind not in LITTLE:
            return 0
    return 0


def _past(pieces: Sequence[Piece], at: int) -> int:
    """The place behind little words."""
    while at < len(pieces) and pieces[at].kind in LITTLE:
        at += 1
    return at


def _is_a_result(pieces: Sequence[Piece], at: int) -> bool:
    number = pieces[at] if at < len(pieces) else None
    if number is None or number.kind is not K.NUMBER or number.role not in COUNTS:
        return False
    return number.value <= MOST_LOADED_REPS and kind_at(pieces, at + 1) in ENDS


def _turn(pieces: Sequence[Piece], at: int) -> int:
    """The place of a "but" in front of the word there; 0 where none stands."""
    before = at - 1
    while before > 0 and pieces[before].kind is K.FILLER and not is_cued(pieces[before].text, BUT):
        before -= 1
    return before if before > 0 and is_cued(pieces[before].text, BUT) else 0
