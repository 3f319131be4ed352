"""Sets that are counted and named with a word between that tells what they were like: "3 heavy singles at 140".

described = NUMBER WORD+ COUNT       NUMBER: bare, up to 10, and no reps of a pair; "3 singles, heavy" says as much
"""

from __future__ import annotations

from engine.reading.words.ahead import aside
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_SETS, Piece, Role

SAID_OF_A_COUNT = frozenset((K.NOTE, K.PLAIN))
JOINING = frozenset((K.TIMES, K.AT, K.SLASH, K.DASH, K.FOR))
"""In front of a number these make it the reps of a set."""
MOST_WORDS = 2


def with_counts_joined(pieces: list[Piece]) -> list[Piece]:
    """The pieces with each such word put behind the name of the sets."""
    out = list(pieces)
    for at, piece in enumerate(pieces):
        if piece.kind is not K.COUNT:
            continue
        start = at
        while start and pieces[start - 1].kind in SAID_OF_A_COUNT:
            start -= 1
        if 0 < at - start <= MOST_WORDS and start and _counts(pieces, start - 1):
            out[start : at + 1] = [piece, *map(aside, pieces[start:at])]
    return out


def _counts(pieces: list[Piece], at: int) -> bool:
    number = pieces[at]
    alone = not at or pieces[at - 1].kind not in JOINING
    return number.kind is K.NUMBER and number.role is Role.BARE and 1 < number.value <= MOST_SETS and alone
