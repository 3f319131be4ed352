"""Whom one trained with: "bench with my uncle 3x8 80" tells of nobody else's sets.

company = "with" [ word ]... PERSON ( lift | number | separator | end )        and not "with my uncle doing 100x5"
"""

from __future__ import annotations

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

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


def _is_said_of(word: Piece) -> bool:
    return word.kind in OF_COMPANY or "my" in CUES_OF[word.text]


OF_COMPANY = frozenset((K.FILLER, K.PLAIN, K.NOTE))
MOST_WORDS = 3
""" "my little brother", "my older sister". Common practice, no source."""
