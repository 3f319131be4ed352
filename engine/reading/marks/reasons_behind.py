"""Why the sets were as they were, told right behind them with another load: a remark.

remark = whole sets ( INSTEAD-OF | BECAUSE ... ) NUMBER ...       bench 3x8 80 instead of 85       80 since 85 felt bad
"""

from __future__ import annotations

from engine.reading.marks.done_instead import with_done_instead
from engine.reading.words.ahead import aside
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, kinds_in_order

LEAST_OF_A_WHOLE = 3
"""Sets, reps and a load."""
ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.CLOSE, K.THEN, K.QUESTION))
AS = "as"
"""Because, among much else; the words that say nothing else are a cue."""
LOADS = frozenset((Role.BARE, Role.LOAD, Role.PLURAL))
TOLD_ALREADY = frozenset((K.TIMES, K.NAME, K.AT, K.LAST, K.FIRST, K.ORDINAL, K.SETS, K.REPS, K.AND, K.THEN))


def with_reasons(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with such a number as a remark."""
    because = phrasebook().cues["because"]
    kinds = kinds_in_order(pieces)
    if K.NOT in kinds and (done := with_done_instead(pieces)) is not pieces:
        return done
    for at in _behind_a_whole(kinds):
        piece = pieces[at]
        if piece.kind is not K.NOT and piece.text != AS and spoken(piece.text) not in because:
            continue
        end = at + 1
        while end < len(pieces) and pieces[end].kind not in ENDS:
            end += 1
        if _tells_another(pieces[at:end]):
            return [*pieces[:at], aside(piece), *pieces[end:]]
    return pieces


def _behind_a_whole(kinds: list[K]) -> range:
    """The places ahead of which sets, reps and a load stand, with their lift or of the one in hand, and no more."""
    told = {K.NAME: 0, K.TIMES: 0, K.NUMBER: 0}
    first = 0
    for at, kind in enumerate(kinds):
        if kind not in told:
            continue
        told[kind] += 1
        named = kind is K.NAME and told[K.NAME] == 1
        if told in (WHOLE, UNNAMED) or (first and named):
            first = at + 1
        elif first or told[kind] > WHOLE[kind]:
            return range(first, min(at + 1, len(kinds) - 1)) if first else range(0)
    return range(first, len(kinds) - 1) if first else range(0)


WHOLE = {K.NAME: 1, K.TIMES: 1, K.NUMBER: LEAST_OF_A_WHOLE}
UNNAMED = {**WHOLE, K.NAME: 0}


def _tells_another(remark: list[Piece]) -> bool:
    """Whether a load stands there alone, in place of the one told, or with words about it."""
    numbers = [piece for piece in remark if piece.kind is K.NUMBER]
    if len(numbers) != 1 or numbers[0].role not in LOADS or not TOLD_ALREADY.isdisjoint([p.kind for p in remark]):
        return False
    return remark[0].kind is K.NOT or any(piece.kind in (K.NOTE, K.PLAIN, K.PAIN, K.SORE) for piece in remark[1:])
