"""Names of days met with a slip of the thumb: "yestreday", "mondya", "gesten". Other words are left alone."""

from __future__ import annotations

from functools import lru_cache

from engine.catalogue.catalogue import Catalogue
from engine.reading.kinds import K
from engine.reading.lexicon import Meaning, lexicon, plain_word
from engine.reading.pieces import Piece
from engine.reading.slips import Slips, slips_of

DAYS = frozenset((K.YESTERDAY, K.TODAY, K.WEEKDAY, K.DAYS_AGO))
SHORTEST_MENDED = 5
FREE_SLIP_FROM = 6
"""A shorter word is a slip only where its letters changed places or one came twice. Common practice, no source."""


@lru_cache(maxsize=1)
def _days() -> tuple[Slips, dict[str, Meaning]]:
    named = {
        phrase: meaning
        for phrase, meaning in lexicon().phrases.items()
        if meaning.kind in DAYS and " " not in phrase and len(phrase) >= SHORTEST_MENDED
    }
    return slips_of(named), named


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
def _near(word: str) -> tuple[str, ...]:
    """The names of days that a word is one slip away from."""
    slips, named = _days()
    return tuple(known for known in slips.near(word) if known in named and known != word and _is_slip(word, known))


def _meant(word: str, catalogue: Catalogue) -> Meaning | None:
    near = _near(word)
    if not near:
        return None
    named = _days()[1]
    meant = {(named[known].kind, named[known].value) for known in near}
    return named[near[0]] if len(meant) == 1 and word not in catalogue.typos.ordinary else None


def _is_slip(word: str, known: str) -> bool:
    return len(word) >= FREE_SLIP_FROM or sorted(word) == sorted(known)
