"""Words that may make another exercise of the name beside them: "larsen bench", "squat zigzag 80x5", "neck extension".

modifier = an unknown word | a variant | a part of the body       right in front of a name, or between it and numbers
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.kinds import K
from engine.reading.pieces import Piece

COUNTS = frozenset((K.NUMBER, K.COUNT, K.BAR))
MODIFYING = frozenset((K.PLAIN, K.VARIANT, K.JOINT, K.MUSCLE))
PRONOUNS = frozenset(("i", "we", "ich", "wir", "je", "j'", "yo", "io", "ik", "ja", "eu", "я", "jag"))
"""Behind these an unknown word is a verb: "i smashed squats 5x5 100"."""

TRAINED_TOGETHER = frozenset(("legs", "chest", "back", "shoulders", "arms", "abs"))


def modifier_of(pieces: Sequence[Piece], at: int, cut: Piece | None) -> str:
    """The word that touches the name at `at` and may make another exercise of it; empty where none does.

    Shape: `pieces` are those of one clause, `cut` is the separator in front of it.
    """
    before = pieces[at - 1] if at else None
    if before is not None and len(before.text) > 1 and _may_modify(before, pieces, at, cut):
        return "" if at > 1 and pieces[at - 2].text in PRONOUNS else before.text
    at += 1 + (at + 1 < len(pieces) and pieces[at + 1].kind is K.DASH and pieces[at + 1].glued)
    after = pieces[at] if at < len(pieces) else None
    second = pieces[at + 1].kind if at + 1 < len(pieces) else None
    modifies = after is not None and after.kind in MODIFYING and second in COUNTS and len(after.text) > 1
    return after.text if modifies and after is not None else ""


def _may_modify(before: Piece, pieces: Sequence[Piece], at: int, cut: Piece | None) -> bool:
    """Whether the word in front may make another lift of the name; a muscle only of a bare movement: "calf fly"."""
    if before.kind is K.MUSCLE and " " in pieces[at].text:
        return False
    return before.kind in MODIFYING and not _is_heading(pieces, at - 1, cut)


def _is_heading(pieces: Sequence[Piece], at: int, cut: Piece | None) -> bool:
    """ "legs squat 3x5 100": what a line is about, in front of its first lift; "neck extension" is a lift."""
    starts = at == 0 and (cut is None or cut.kind is K.LINE)
    return starts and pieces[at].text in TRAINED_TOGETHER
