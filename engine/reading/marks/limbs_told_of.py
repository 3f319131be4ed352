"""A limb that a remark tells of, right behind the last number of a lift with one bar: "squat 100x5 leg went dead".

limb = NUMBER LIMB word*        no number, lift or sign behind it in its clause; "row 60x8 arm" is still asked about
A lift done with each arm or leg keeps the word: "dumbbell curl 12x10 arm".
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.marks.counting_talk import ENDS, OF_SETS
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order, places_of
from engine.values.exercise import Loading, Pattern

LIMB = frozenset(("limb", "handword"))
BEGINS_A_REMARK = frozenset((K.FILLER, K.NOTE, K.PLAIN, K.PAIN, K.SORE, K.NOT, K.STORY, K.RESERVE_LEFT, K.DENIED))
ENDS_OR_SETS = ENDS | OF_SETS


def with_limbs_told_of(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces, with such a limb made a part of the remark."""
    kinds = kinds_in_order(pieces)
    out = pieces
    for at in places_of(K.EACH, kinds):
        told = at and kinds[at - 1] is K.NUMBER and not pieces[at - 1].spelled and is_cued(pieces[at].text, LIMB)
        if not told or not _is_remarked(kinds, at + 1) or not _is_one_bar(pieces, at, catalogue):
            continue
        out = list(pieces) if out is pieces else out
        out[at] = pieces[at]._replace(kind=K.NOTE)
    return out


def _is_remarked(kinds: list[K], at: int) -> bool:
    """Whether words stand here, and nothing of sets to the end of their clause."""
    if at == len(kinds) or kinds[at] not in BEGINS_A_REMARK:
        return False
    told = next((kinds[place] for place in range(at, len(kinds)) if kinds[place] in ENDS_OR_SETS), None)
    return told is None or told in ENDS


def _is_one_bar(pieces: list[Piece], at: int, catalogue: Catalogue) -> bool:
    """Whether the lift named last is done with one bar in both hands, and on both legs."""
    name = next((pieces[place] for place in range(at, -1, -1) if pieces[place].kind is K.NAME), None)
    lifts = [catalogue.exercises[one] for one in name.names] if name is not None else []
    return any(one.loading is Loading.BAR and one.pattern is not Pattern.LUNGE for one in lifts)
