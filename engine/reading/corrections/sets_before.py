"""Sets told of by the one that ends them: "everything before 100 was warm-up", "all up to 80 were warm-ups"."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.corrections.sets_having import having
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.sets import SetRecord

BEFORE, UP_TO = frozenset(("setsbefore",)), frozenset(("upto", "setsupto"))


def sets_before(pieces: Sequence[Piece], group: Sequence[SetRecord]) -> tuple[Piece, list[SetRecord]] | None:
    """The number that ends the sets, and those ahead of it, or up to it; None where no such number stands."""
    found = (_ended_here(pieces[at:], group) for at in range(1, len(pieces)))
    return next((one for one in found if one is not None), None)


def _ended_here(pieces: Sequence[Piece], group: Sequence[SetRecord]) -> tuple[Piece, list[SetRecord]] | None:
    word, behind = pieces[0], [piece for piece in pieces[1:3] if piece.kind is not K.FILLER][:1]
    before, up_to = is_cued(word.text, BEFORE), is_cued(word.text, UP_TO)
    if not (before or up_to) or not behind or behind[0].kind is not K.NUMBER:
        return None
    found = having(behind[0], group)
    if not found:
        return None
    end = group.index(found[0]) if before else group.index(found[-1]) + 1
    return behind[0], list(group[:end])
