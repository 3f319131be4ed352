"""Sets that are said to count as a warm-up behind those told.

open   = sets ... NUMBER words WARMUP              squat 5x5 100, 2 count as warm up: which of them, or what, is asked
placed = sets ... PLACE [ NUMBER ] words WARMUP    60x5 80x3 100x5, first two count as warm up: "first two warm up"
One of the words says that they count or were so: the cue `countsas` of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, first_place, kinds_in_order, kinds_of, places_of

WORDS = frozenset((K.FILLER, K.PLAIN, K.NOTE, K.OF, K.WITH, K.FOR, K.SETS, K.NOT_DATE, K.GOT, K.WARMUP))
PLACES = frozenset((K.FIRST, K.LAST, K.ORDINAL, K.FROM_LAST, K.MIDDLE))
POINTING = PLACES | {K.NUMBER, K.COUNT}
PARTING = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN, K.LINE, K.AND))
TELLING_SETS = frozenset((K.TIMES, K.FOR))
COUNTS_AS = frozenset(("countsas",))
REACH = 6
"""Words between the count and the warm-up. Common practice, no source."""


def with_sets_called_warm_ups(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such words made ones that change sets in a way that is not read, or left out behind a place."""
    kinds = kinds_in_order(pieces)
    first = first_place(TELLING_SETS, kinds)
    for at in reversed(places_of(K.WARMUP, kinds)):
        words = _words_ahead(pieces, at)
        start = words
        while start > 1 and pieces[start - 1].kind in POINTING:
            start -= 1
        told = start < words and pieces[start - 1].kind in PARTING
        if not told or first >= start:
            continue
        if not PLACES.isdisjoint(kinds_of(pieces[start:words])):
            pieces = [*pieces[:words], *pieces[at:]]
        else:
            altered = pieces[start]._replace(kind=K.ALTERED, end=pieces[at].end)
            pieces = [*pieces[:start], altered, *pieces[at + 1 :]]
    return pieces


def _words_ahead(pieces: Sequence[Piece], at: int) -> int:
    """Where the words begin that lead to the one for a warm-up; 0 where none says that sets count so."""
    start = at
    while start > 1 and at - start < REACH and pieces[start - 1].kind in WORDS:
        start -= 1
    return start if any(is_cued(piece.text, COUNTS_AS) for piece in pieces[start:at]) else 0
