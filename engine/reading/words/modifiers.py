"""Words that may make another exercise of the name beside them: "larsen bench", "squat zigzag 80x5", "neck extension".

modifier = an unknown word | a variant | a part of the body | half, a part of the way
It stands right in front of a name, or between the name and its numbers: as one word, behind a little word that says
where ("deadlift off blocks", "sentadilla al cajón"), or in brackets. A name behind such a little word makes another
lift of the name in front of it: "calves on the leg press".
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece

COUNTS = frozenset((K.NUMBER, K.COUNT, K.BAR))
MODIFYING = frozenset((K.PLAIN, K.VARIANT, K.JOINT, K.MUSCLE, K.PARTIAL, K.HALF))
IN_FRONT = MODIFYING | {K.BAND}
MOST_PLACED = 4
"""How many words a place may be told in: "off the low blocks"."""
SET_UP = frozenset((K.SETTING, K.NOTE))
"""A box or a block is a setting of a machine elsewhere; in front of a lift, or behind a place, it makes another lift
of it.
"""
LETTERS_OF_LABELS = frozenset("abcdegh")
LITTLE_KINDS = frozenset((K.FILLER, K.PLAIN, K.WITH, K.FOR, K.OF, K.NOT_DATE, K.ASSISTED, K.AND, K.EXCEPT, K.REST))
PRONOUNS = frozenset(("me", "we"))
"""Behind these an unknown word is a verb: "i smashed squats 5x5 100"."""


def modifier_of(pieces: Sequence[Piece], at: int, cut: Piece | None) -> str:
    """The word beside the name at `at` that may make another exercise of it; empty where none does.

    Shape: `pieces` are those of one clause, `cut` is the separator in front of it.
    """
    before = pieces[at - 1] if at else None
    if before is not None and _tells(before, pieces, at, cut) and _may_modify(before, pieces, at, cut):
        return "" if at > 1 and is_cued(pieces[at - 2].text, PRONOUNS) else before.text
    at += 1 + (at + 1 < len(pieces) and pieces[at + 1].kind is K.DASH and pieces[at + 1].glued)
    after = pieces[at] if at < len(pieces) else None
    if after is None:
        return ""
    second = pieces[at + 1].kind if at + 1 < len(pieces) else None
    if after.kind in MODIFYING and second in COUNTS and len(after.text) > 1:
        return after.text
    return _placed(pieces, at) if after.kind is K.OPEN or is_placing(after) else ""


def _tells(before: Piece, pieces: Sequence[Piece], at: int, cut: Piece | None) -> bool:
    """Whether the word is one that may name something; a letter in front of a line is its label: "B bench"."""
    if len(before.text) > 1:
        return True
    starts = at == 1 and (cut is None or cut.kind is K.LINE)
    return before.text.isalpha() and not (starts and before.text in LETTERS_OF_LABELS)


def is_placing(piece: Piece) -> bool:
    """Whether it is a little word that says where: "on", "al", "an der". What is done with something is a remark."""
    return piece.kind in LITTLE_KINDS and spoken(piece.text) in phrasebook().cues["place"]


def _placed(pieces: Sequence[Piece], at: int) -> str:
    """The place or the manner told between a name and its numbers: "off blocks", "al cajón", "(rings)"."""
    bracketed = pieces[at].kind is K.OPEN
    told: list[Piece] = []
    for place in range(at, min(len(pieces), at + MOST_PLACED + bracketed)):
        piece = pieces[place]
        if piece.kind in COUNTS or (piece.kind is K.CLOSE and place + 1 < len(pieces)):
            ends = piece.kind is not K.CLOSE or pieces[place + 1].kind in (*COUNTS, K.COLON)
            return " ".join(one.text for one in told) if ends else ""
        if piece.kind in MODIFYING or (place > at and "box" in CUES_OF[piece.text]):
            told.append(piece)
        elif not (is_placing(piece) or (piece.kind is K.OPEN and place == at)):
            return ""
    return ""


def _may_modify(before: Piece, pieces: Sequence[Piece], at: int, cut: Piece | None) -> bool:
    """Whether the word in front may make another lift of the name; a muscle only of a bare movement: "calf fly"."""
    if before.kind is K.MUSCLE and " " in pieces[at].text:
        return False
    if before.kind in SET_UP and "box" in CUES_OF[before.text]:
        return True
    return before.kind in IN_FRONT and not _is_heading(pieces, at - 1, cut)


def _is_heading(pieces: Sequence[Piece], at: int, cut: Piece | None) -> bool:
    """ "legs squat 3x5 100": what a line is about, in front of its first lift; "neck extension" is a lift."""
    starts = at == 0 and (cut is None or cut.kind is K.LINE)
    return starts and "bodyday" in CUES_OF[pieces[at].text]
