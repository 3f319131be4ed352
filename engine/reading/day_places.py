"""Where a day told in words stands: behind a bullet, behind opening words, behind the sets, at the end of a clause.

opening = words [ "," ] day ( ":" | "," | name | number | line end )     logging this late, fri: bench 4x5 82.5
behind  = sets day ( "," | "." | ";" | "-" | "(" | ")" | remark )         bench 3x5 80 yesterday - felt good
"""

from __future__ import annotations

from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role

SAID = frozenset((K.NUMBER, K.NAME, K.DATE, K.BAR, K.COUNT))
COUNTED = frozenset(
    (K.NUMBER, K.COUNT, K.KG, K.LB, K.EFFORT, K.FAILURE, K.BODY, K.CLOSE, K.REPS, K.EACH, K.NAME, K.PLATE)
)
BEHIND_AN_OPENING = frozenset((K.COLON, K.NAME, K.LINE, K.DASH))
CLOSING = frozenset((K.STOP, K.OPEN, K.CLOSE))
REMARKS = frozenset((K.NOTE, K.PAIN, K.JOINT, K.SORE, K.DENIED, K.MUSCLE))
MOST_WORDS_OF_AN_OPENING = 8


def is_bullet(pieces: list[Piece], at: int) -> bool:
    """ "1. monday: ...", "* monday: ...": the label of a line, in front of its day."""
    if pieces[at].kind is K.TIMES:
        return at == 0 or pieces[at - 1].kind is K.LINE
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    pointed = after is not None and after.kind in (K.STOP, K.CLOSE) and after.glued
    return (pieces[at].kind is K.NUMBER and pointed) or (pieces[at].kind is K.CLOSE and pieces[at].glued)


def ends_here(pieces: list[Piece], at: int) -> bool:
    """Whether a clause ends here, but for filler words."""
    while at < len(pieces) and pieces[at].kind in (K.STOP, K.CLOSE, K.FILLER, K.TODAY):
        at += 1
    return at >= len(pieces) or pieces[at].kind in (K.LINE, K.COMMA)


def follows_an_opening(pieces: list[Piece], at: int) -> bool:
    """ "logging this late, fri: bench 4x5 82.5": only words stand before it, and it heads what follows."""
    behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
    before = at - 1 - (at > 1 and pieces[at - 1].kind is K.FILLER)
    parted = pieces[before].kind in (K.COMMA, K.COLON, K.STOP, K.DASH, K.OPEN)
    heads = behind is K.COLON or (parted and (behind in BEHIND_AN_OPENING or behind in (K.NUMBER, K.COMMA)))
    ahead = pieces[max(0, at - MOST_WORDS_OF_AN_OPENING) : at]
    return heads and at <= MOST_WORDS_OF_AN_OPENING and SAID.isdisjoint([piece.kind for piece in ahead])


def closes_the_sets(pieces: list[Piece], at: int) -> bool:
    """ "bench 3x5 80 yesterday - felt good", "3x5 80 (fri) tired": a day behind the sets, and a remark."""
    after = pieces[at + 1] if at + 1 < len(pieces) else None
    before = at - 1 - (at > 1 and pieces[at - 1].kind is K.FILLER)
    if after is None or not at:
        return False
    parted = pieces[before].kind in (K.COMMA, K.OPEN, K.STOP, K.DASH)
    counted = pieces[before - parted].kind in COUNTED if before >= parted else False
    if not counted:
        return False
    ends = after.kind in CLOSING or (after.kind is K.DASH and not after.glued)
    remarked = not parted and after.kind in REMARKS
    return (ends and _no_more_sets(pieces, at + 2)) or remarked


def _no_more_sets(pieces: list[Piece], at: int) -> bool:
    """Whether no number of the same lift follows: "80x5 (fri) 85x5" tells two days, or a day and a set."""
    behind = [piece.kind for piece in pieces[at : at + 2]]
    return behind[:1] != [K.TIMES] and (behind[:1] != [K.NUMBER] or pieces[at].role in APART or behind[1:] == [K.PLAIN])


APART = frozenset((Role.SECONDS, Role.NOT_A_SET))
