"""Whom one trained with, "bench with my uncle 3x8 80", and which lift one is done with: no load stands behind it.

lift    = "with" LIFT ...                         and no numbers ahead: "done with pull ups 8 8 7"
company = "with" [ word ]... PERSON ( lift | number | separator | end )        and not "with my uncle doing 100x5"
"""

from __future__ import annotations

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import COUNTED, Piece, kinds_in_order

BEHIND_COMPANY = frozenset(
    (None, K.NAME, K.NUMBER, K.COMMA, K.COLON, K.AND, K.LINE, K.STOP, K.DASH, K.OPEN, K.CLOSE, K.THEN, K.TODAY,
     K.YESTERDAY, K.WEEKDAY)
)  # fmt: skip


def with_company(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with company as filler words."""
    out = list(pieces)
    for at in range(1, len(pieces)):
        after = pieces[at + 1].kind if at + 1 < len(pieces) else None
        start = at - 1
        while pieces[at].kind is K.OTHERS and at - start <= MOST_WORDS and start and _is_said_of(pieces[start]):
            start -= 1
        if pieces[at].kind is K.OTHERS and pieces[start].kind is K.WITH and after in BEHIND_COMPANY:
            out[start : at + 1] = [piece._replace(kind=K.FILLER) for piece in pieces[start : at + 1]]
    return out


def with_lifts_done_with(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with the "with" ahead of the first lift and all numbers as a filler word."""
    kinds = kinds_in_order(pieces)
    at = kinds.index(K.NAME) - 1 if K.NAME in kinds else -1
    if at < 0 or kinds[at] is not K.WITH or not COUNTED.isdisjoint(kinds[:at]):
        return pieces
    return [*pieces[:at], pieces[at]._replace(kind=K.FILLER), *pieces[at + 1 :]]


def _is_said_of(word: Piece) -> bool:
    return word.kind in OF_COMPANY or "my" in CUES_OF[word.text]


OF_COMPANY = frozenset((K.FILLER, K.PLAIN, K.NOTE))
MOST_WORDS = 3
""" "my little brother", "my older sister". Common practice, no source."""
