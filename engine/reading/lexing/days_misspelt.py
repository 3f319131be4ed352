"""Names of days met with a slip of the thumb: "yestreday", "mondya", "gesten". Other words are left alone."""

from __future__ import annotations

from functools import lru_cache

from engine.catalogue.catalogue import Catalogue
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import Meaning, plain_word
from engine.reading.words.meant_words import MeantWords
from engine.reading.words.pieces import Piece

DAYS = frozenset((K.YESTERDAY, K.TODAY, K.WEEKDAY, K.DAYS_AGO))
SHORTEST_MENDED = 5


@lru_cache(maxsize=1)
def _days() -> MeantWords:
    return MeantWords(DAYS, SHORTEST_MENDED)


def with_days_mended(pieces: list[Piece], catalogue: Catalogue) -> list[Piece]:
    """The pieces with each unknown word that is one slip away from the name of one day made that day."""
    out: list[Piece] | None = None
    for at, piece in enumerate(pieces):
        if piece.kind is not K.PLAIN or len(piece.text) < SHORTEST_MENDED:
            continue
        day = _meant(plain_word(piece.text), catalogue)
        if day is not None:
            out = list(pieces) if out is None else out
            out[at] = piece._replace(kind=day.kind, told=day.value or 0)
    return pieces if out is None else out


@lru_cache(maxsize=2_048)
def _near(word: str) -> tuple[Meaning, ...]:
    return _days().meant(word)


def _meant(word: str, catalogue: Catalogue) -> Meaning | None:
    near = _near(word)
    return near[0] if len(near) == 1 and word not in catalogue.typos.ordinary else None
