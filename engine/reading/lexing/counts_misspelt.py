"""Words behind a number met with a slip of the thumb: "3 stes of 5", "8 rpes", "60 kiols"."""

from __future__ import annotations

from functools import lru_cache
from itertools import zip_longest

from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.meant_words import MeantWords
from engine.reading.words.pieces import UNIT_ROLES, Piece, Role

COUNTING = frozenset((K.SETS, K.REPS, K.KG, K.LB))
SHORTEST_MENDED = 4
EFFORTS_OR_REPS = "rpes"
"""Behind a number and ahead of none, a slip of "reps"."""


@lru_cache(maxsize=1)
def _counting() -> MeantWords:
    return MeantWords(COUNTING, SHORTEST_MENDED)


def with_counts_mended(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each unknown word behind a number that is one slip from "sets", "reps" or a unit read as that."""
    out: list[Piece] = []
    mended = False
    for piece, ahead in zip_longest(pieces, pieces[1:]):
        number = out[-1] if out else None
        behind = number is not None and number.kind is K.NUMBER and number.role is Role.BARE
        unclear = piece.kind is K.PLAIN or (
            piece.text == EFFORTS_OR_REPS and (ahead is None or ahead.kind is not K.NUMBER)
        )
        kind = _meant(plain_word(piece.text)) if behind and unclear else None
        if kind is None or number is None:
            out.append(piece)
            continue
        role, unit = UNIT_ROLES[kind]
        out[-1] = number._replace(role=role, unit=unit, end=piece.end)
        mended = True
    return out if mended else pieces


def _meant(word: str) -> K | None:
    kinds = {meaning.kind for meaning in _counting().meant(word)}
    return kinds.pop() if len(kinds) == 1 else None
