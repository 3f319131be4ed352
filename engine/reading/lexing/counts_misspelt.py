"""Words behind a number met with a slip of the thumb: "3 stes of 5", "8 rpes", "60 kiols", "4 doubels"."""

from __future__ import annotations

from functools import lru_cache
from itertools import zip_longest

from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.meant_words import MeantWords
from engine.reading.words.pieces import UNIT_ROLES, Piece, Role

COUNTING = frozenset((K.SETS, K.REPS, K.KG, K.LB))
SHORTEST_MENDED, SHORTEST_NAME = 4, 6
"""Letters. Common practice, no source."""
EFFORTS_OR_REPS = "rpes"
"""Behind a number and ahead of none, a slip of "reps"."""


@lru_cache(maxsize=1)
def _counting() -> MeantWords:
    return MeantWords(COUNTING, SHORTEST_MENDED)


@lru_cache(maxsize=1)
def _naming_reps() -> MeantWords:
    return MeantWords((K.COUNT,), SHORTEST_NAME)


def with_counts_mended(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each unknown word behind a number read as the one it is a slip of: "sets", a unit, "triples"."""
    out: list[Piece] = []
    mended = False
    for piece, ahead in zip_longest(pieces, pieces[1:]):
        number = out[-1] if out else None
        behind = number is not None and number.kind is K.NUMBER and number.role is Role.BARE
        unclear = piece.kind is K.PLAIN or (
            piece.text == EFFORTS_OR_REPS and (ahead is None or ahead.kind is not K.NUMBER)
        )
        word = plain_word(piece.text) if behind and unclear else ""
        kind = _meant(word) if word else None
        if kind is None or number is None:
            reps = _reps_named(word) if word else 0
            out.append(piece._replace(kind=K.COUNT, told=reps) if reps else piece)
            mended = mended or bool(reps)
            continue
        role, unit = UNIT_ROLES[kind]
        out[-1] = number._replace(role=role, unit=unit, end=piece.end)
        mended = True
    return out if mended else pieces


def _meant(word: str) -> K | None:
    kinds = {meaning.kind for meaning in _counting().meant(word)}
    return kinds.pop() if len(kinds) == 1 else None


def _reps_named(word: str) -> int:
    """How many reps the word is the name of, "triples"; 0 where it is none. "Nights" is no slip of "eights"."""
    told = {meaning.value for meaning in _naming_reps().meant(word, first_letter_stands=True)}
    return (told.pop() or 0) if len(told) == 1 else 0
