"""Whom one trained with: "bench with my uncle 3x8 80" tells of nobody else's sets.

company = "with" PERSON ( lift | number | separator | end )        and not "with my uncle doing 100x5"
"""

from __future__ import annotations

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
        if pieces[at].kind is K.OTHERS and pieces[at - 1].kind is K.WITH and after in BEHIND_COMPANY:
            out[at - 1] = pieces[at - 1]._replace(kind=K.FILLER)
            out[at] = pieces[at]._replace(kind=K.FILLER)
    return out
