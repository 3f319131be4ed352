"""A number beside sets that may be all the reps that were possible: "80x5 had 8 in me", "3x5 80 hätte 8 geschafft".

It is larger than the reps of the set in front of it, and no more than anybody does with a load.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

LEADING = frozenset((K.FILLER, K.PLAIN, K.RESERVE_LEFT, K.COMMA, K.STOP, K.DASH, K.OPEN, K.AND, K.NOT_DATE, K.MORE))
MOST_WORDS = 4
"""Words and signs between the set and the number. Common practice, no source."""
OF_A_SET = frozenset((K.NUMBER, K.KG, K.LB))
REACH_OF_A_SET = 4
LONGEST_AHEAD = MOST_WORDS + REACH_OF_A_SET + 2
"""More of the pieces ahead is not looked at; the number itself is counted with them."""
OF_REPS = frozenset((Role.BARE, Role.REPS))


def is_all(ahead: Sequence[Piece], number: Piece) -> bool:
    """The same, and no word ahead of the number says that they were so many more: "100x3 noch 5"."""
    behind = ahead[-MOST_WORDS:]
    more = any(piece.kind in SAYING_MORE or is_cued(piece.text, STILL) for piece in behind)
    return not more and may_be_all(ahead, number)


SAYING_MORE = frozenset((K.MORE, K.ANOTHER, K.EXTRA))
STILL = frozenset(("still",))


def may_be_all(ahead: Sequence[Piece], number: Piece) -> bool:
    """Whether the number, behind those pieces, may count all the reps that the set among them could have had."""
    if number.kind is not K.NUMBER or number.role not in OF_REPS or number.value > MOST_LOADED_REPS:
        return False
    end = len(ahead)
    while end and len(ahead) - end < MOST_WORDS and ahead[end - 1].kind in LEADING:
        end -= 1
    if not end or ahead[end - 1].kind not in OF_A_SET:
        return False
    for at in range(end - 1, max(0, end - 1 - REACH_OF_A_SET), -1):
        if ahead[at - 1].kind is K.TIMES and ahead[at].kind is K.NUMBER:
            return ahead[at].value < number.value
    return False
