"""Equipment that a remark speaks of, where no lift was done with it: "bench 3x8 60, dumbbells were all taken".

taken = EQUIPMENT word* TAKEN       in one clause without a number, behind sets; "taken", "broken", "busy"
"""

from __future__ import annotations

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

SPOKEN_OF = frozenset((K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE, K.KETTLEBELL, K.VARIANT))
ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.OPEN, K.CLOSE, K.COLON, K.THEN, K.NUMBER, K.NAME))
TAKEN = frozenset(("taken",))
REACH = 4
REMARKING = frozenset((K.PLAIN, K.UNRELATED, K.BY, K.OTHERS, K.STORY, K.SETTING))


def without_equipment_taken(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with equipment that was not to be had made a remark."""
    out = list(pieces)
    for at, piece in enumerate(pieces):
        if piece.kind in SPOKEN_OF and _was_taken(pieces, at):
            out[at] = piece._replace(kind=K.NOTE)
    return out


def _was_taken(pieces: list[Piece], at: int) -> bool:
    before = next((one.kind for one in reversed(pieces[:at]) if one.kind in ENDS), None)
    if before is K.NUMBER or before is K.NAME:
        return False  # "4 of 6 machines are broken" counts them
    if at + 1 < len(pieces) and pieces[at + 1].kind is K.SETTING:
        return True  # "the dumbbell rack is a mess"
    for behind in pieces[at + 1 : at + 1 + REACH]:
        if behind.kind in ENDS:
            return False
        if is_cued(behind.text, TAKEN):
            return True
    return False


def is_talked_of(pieces: list[Piece], at: int) -> bool:
    """Whether a remark begins with the equipment at this place, so that it is open what was lifted with it."""
    linked = at > 0 and pieces[at - 1].kind in (K.WITH, K.FILLER, K.AT, K.FOR, K.EACH)
    behind = at + 1
    while behind < len(pieces) and pieces[behind].kind is K.FILLER:
        behind += 1
    return not linked and behind < len(pieces) and pieces[behind].kind in REMARKING
