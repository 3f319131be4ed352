"""Sets in a sentence that states something of them, or of somebody who did better: whether they were done is not told.

statement = sets name IS ( feel | unknown word )        30 sec plank is boring        5x5 squat is brutal
          | name sets IS ( feel | unknown word )        squat 5x5 is brutal
counts    = NUMBER word "on" "the" name                 3 fellas on the bench
beaten    = PERSON BEAT ... "," sets                    my sister beat me, 12 push ups
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.kinds import K
from engine.reading.phrasebook import phrasebook, spoken
from engine.reading.pieces import Piece, Role

IS = frozenset(("is", "isn't", "isnt", "ist", "est", "è", "é", "jest", "är", "es", "está", "это"))
"""The present tense: what was done is told in the past. Common practice, no source."""
COUNTED = frozenset((K.NUMBER, K.COUNT))
DONE = frozenset(("pr", "pb", "personal", "new", "good", "solid", "clean", "fresh"))
"""Of sets that were done: "80x8 is a pr"."""
SENTENCE_ENDS = frozenset((K.LINE, K.STOP))
CLAUSE_ENDS = SENTENCE_ENDS | {K.COMMA, K.DASH, K.THEN}
FEW = 3


def is_a_statement(pieces: Sequence[Piece]) -> bool:
    """Whether it is said of sets how they are, and not how they were."""
    for at in range(1, len(pieces) - 1):
        if pieces[at].text not in IS or pieces[at - 1].kind not in (K.NAME, *COUNTED, K.KG, K.LB, K.REPS):
            continue
        start = at
        while start and pieces[start - 1].kind not in CLAUSE_ENDS:
            start -= 1
        if COUNTED.isdisjoint([piece.kind for piece in pieces[start:at]]):
            continue
        behind = [piece for piece in pieces[at + 1 : at + 1 + FEW] if piece.kind is not K.FILLER]
        if behind and behind[0].kind in (K.NOTE, K.PLAIN) and behind[0].text not in DONE:
            return True
    return False


def may_count_others(pieces: Sequence[Piece]) -> bool:
    """ "3 fellas on the bench", "8 tidy ones on bench": the only number counts something that no list knows."""
    numbers = [at for at, piece in enumerate(pieces) if piece.kind in COUNTED and piece.role is not Role.SECONDS]
    if len(numbers) != 1 or pieces[numbers[0]].role is not Role.BARE:
        return False
    behind = [piece.kind for piece in pieces[numbers[0] + 1 : numbers[0] + 1 + REACH]]
    name = behind.index(K.NAME) if K.NAME in behind else 0
    return name > 1 and behind[0] is K.PLAIN and LINKING.issuperset(behind[1:name])


LINKING = frozenset((K.FILLER, K.WITH, K.PLAIN, K.FOR))
REACH = 5


def beaten_by(pieces: Sequence[Piece]) -> Piece | None:
    """Who did better in a clause of its own in front of the sets; None where nobody is told."""
    beats = phrasebook().cues["beats"]
    who: Piece | None = None
    for piece, after in pairwise(pieces):
        if piece.kind in COUNTED or piece.kind in SENTENCE_ENDS:
            return None
        if piece.kind is K.OTHERS:
            who = piece
        elif who is not None and (spoken(piece.text) in beats or f"{spoken(piece.text)} {spoken(after.text)}" in beats):
            return who
    return None
