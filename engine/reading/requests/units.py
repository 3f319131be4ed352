"""The unit that is wished for, in any words that only wish for one: "kgs please", "i want pounds, not kilos".

units = unit and a WISH, and only words AROUND them; the other unit stands behind "not", "than", "of" or "from"
Each part in capitals is a cue of the language files. A unit alone asks for nothing.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.values import Act
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook
from engine.reading.words.pieces import Piece
from engine.reading.words.tokens import Token

UNITS = frozenset((K.KG, K.LB))
AGAINST = frozenset(("not", "no", "than", "of", "from", "over", "dont"))
LONGEST = 10
MOST_UNITS = 2


def units_wished(words: Sequence[tuple[str, Token]], pieces: Sequence[Piece], book: Phrasebook) -> Act | None:
    """The unit wished for; None where none is, or both are."""
    told = [piece for piece in pieces if piece.kind in UNITS]
    if not 0 < len(told) <= MOST_UNITS or len(words) > LONGEST:
        return None
    if any(piece.kind in TOLD for piece in pieces):
        return None
    spans = [(piece.start, piece.end) for piece in told]
    around = [word for word, token in words if not any(start <= token.start < end for start, end in spans)]
    wish, known = book.cues["unitwish"], book.cues["aroundunit"]
    if wish.isdisjoint(around) or not all(word in wish or word in known for word in around):
        return None
    wanted = {piece.kind for piece in told if _word_before(piece, words) not in AGAINST}
    return Act("units", text="kg" if K.KG in wanted else "lb") if len(wanted) == 1 else None


TOLD = frozenset((K.NUMBER, K.COUNT, K.NAME, K.TIMES, K.QUESTION))


def _word_before(piece: Piece, words: Sequence[tuple[str, Token]]) -> str:
    before = [word for word, token in words if token.end <= piece.start]
    return before[-1] if before else ""
