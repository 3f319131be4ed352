"""Others who are told of by what they were doing: "young lads were all doing 4x10 on the hack squat. I did 5x5".

others = WORD+ ( "was" | "were" ) [ word ] ( "doing" | LIFT-ING ) ... NUMBER    WORD: heads the clause, and no "I", "we"
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece

WERE, DOING, US = frozenset(("were", "was")), frozenset(("atit",)), frozenset(("me", "we"))
MAY_BE_PEOPLE = frozenset((K.PLAIN, K.FAR))
BESIDE_PEOPLE = MAY_BE_PEOPLE | {K.FILLER, K.NOTE, K.UNRELATED, K.NOT_DATE, K.VARIANT}
BETWEEN = frozenset((K.FILLER, K.BOTH, K.ONLY))
CLAUSE_ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.COLON))
A_HABIT = "ing"
REACH = 6
"""Pieces between the word and its number, or back to the head of the clause. Common practice, no source."""


def with_others_doing(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with the word that tells what others were at made their own."""
    out = list(pieces)
    for at, piece in enumerate(pieces):
        if piece.kind is K.FILLER and is_cued(piece.text, WERE) and _are_at_it(pieces, at) and _are_people(pieces, at):
            out[at] = piece._replace(kind=K.OTHERS)
    return out


def _are_at_it(pieces: Sequence[Piece], at: int) -> bool:
    """Whether "doing", or a lift told as a habit, stands behind, and a number behind that."""
    behind = at + 1
    while behind < len(pieces) and pieces[behind].kind in BETWEEN and not is_cued(pieces[behind].text, DOING):
        behind += 1
    if behind == len(pieces):
        return False
    lift = pieces[behind].kind is K.NAME and pieces[behind].text.endswith(A_HABIT)
    if not lift and not is_cued(pieces[behind].text, DOING):
        return False
    for piece in pieces[behind + 1 : behind + 1 + REACH]:
        if piece.kind in CLAUSE_ENDS:
            return False
        if piece.kind in COUNTED:
            return True
    return False


def _are_people(pieces: Sequence[Piece], at: int) -> bool:
    """Whether words in front may name somebody, and neither a lift, a day nor oneself stands among them."""
    start = at
    while start and at - start <= REACH and pieces[start - 1].kind not in CLAUSE_ENDS:
        start -= 1
    ahead = pieces[start:at]
    told = all(piece.kind in BESIDE_PEOPLE and not is_cued(piece.text, US) for piece in ahead)
    return told and any(piece.kind in MAY_BE_PEOPLE for piece in ahead)
