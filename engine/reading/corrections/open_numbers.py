"""Numbers of a correction that stay open, told roughly or with a perhaps: "it was 90ish", "hmm maybe 7"; and those that
are denied.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.corrections.correcting import Told
from engine.reading.marks.roughly import tells_roughly
from engine.reading.values import Correction
from engine.reading.words.cues import any_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

PERHAPS = frozenset(("perhaps",))


def is_of_an_open_number(found: Correction, told: Told) -> bool:
    """Whether the number that the sets would get may be another one; an effort is always a guess."""
    if tells_roughly(told.pieces):
        return True
    changed = any((one.done.reps, one.done.load) != (new.reps, new.load) for one, new in found.changed)
    return changed and any_cued([piece.text for piece in told.pieces], PERHAPS)


def denies_a_number(pieces: Sequence[Piece], at: int) -> bool:
    """ "62.5 not 60", "not the 60 but"; "62.5 for 6, not bad" denies none."""
    if pieces[at].kind is not K.NOT:
        return False
    for piece in pieces[at + 1 : at + 1 + MOST_BETWEEN]:
        if piece.kind in (K.NUMBER, K.COUNT, K.NAME):
            return True
        if piece.kind in (K.NOTE, K.COMMA, K.STOP):
            return False
    return False


MOST_BETWEEN = 4
"""How many words may stand between "not" and the number it denies."""
