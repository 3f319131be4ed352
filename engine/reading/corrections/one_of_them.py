"""One of several sets, and nobody can say which: "one of them was 7", "eine davon war 7", "one was 7"."""

from __future__ import annotations

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import run_of_it
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import first_word

AN = frozenset(("an",))
SEVERAL = 2


def is_of_one_of_them(told: Told) -> bool:
    """Whether a new number is told of one of the sets that stand, where several do."""
    verb = next((at for at, piece in enumerate(told.pieces) if is_be(piece)), 0)
    ahead = told.pieces[:verb]
    if (
        not ahead
        or {piece.kind for piece in ahead} - {K.FILLER, K.SETS, K.OF}
        or len(run_of_it(told.context)) < SEVERAL
    ):
        return False
    return is_cued(first_word(ahead[0]), AN)
