"""An effort told as what a set felt like: "felt like an 8"; and not "felt like 8 reps".

felt  = FELT ( "like" | "a" ) ... NUMBER       NUMBER: bare, up to 10
rated = ( "about an" | "call it an" ) NUMBER   behind sets with an "x", from 6 up, at the end of its clause
"""

from __future__ import annotations

from functools import lru_cache

from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of
from engine.values.effort import TOP_OF_SCALE, Effort

MOST_BETWEEN = 3
REACH = 4
LEAST_RATED = 6
"""Below this an effort is told as reps that were left. Common practice, no source."""
CLAUSE_ENDS = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.NOTE, K.DASH, K.OPEN))
SIGNS = frozenset((K.TIMES, K.COMMA, K.NUMBER, K.AT, K.SLASH, K.LINE))
GOING_ON = frozenset((K.TIMES, K.OUT_OF, K.SLASH, K.REPS, K.SETS, K.MORE, K.KG, K.LB, K.RESERVE, K.RESERVE_LEFT))


def with_felt(pieces: list[Piece]) -> list[Piece]:
    """The pieces with the number of what a set felt like made its effort."""
    for at, piece in enumerate(pieces):
        if piece.kind is not K.NOTE or "felt" not in CUES_OF[piece.text.split()[0]]:
            continue
        number = at + 1
        while number < len(pieces) and pieces[number].kind in (K.NOT_DATE, K.FILLER) and number - at <= MOST_BETWEEN:
            number += 1
        behind = pieces[number + 1].kind if number + 1 < len(pieces) else None
        if number == at + 1 or number >= len(pieces) or not is_effort(pieces[number]) or behind in GOING_ON:
            continue
        effort = pieces[number]._replace(kind=K.EFFORT, efforts=(Effort.from_rpe(pieces[number].value),))
        return [*pieces[:number], effort, *pieces[number + 1 :]]
    return pieces


def with_rated(pieces: list[Piece]) -> list[Piece]:
    """The same for "100x5, call it an 8": nobody counts repetitions with an article and a word for roughly."""
    kinds = kinds_in_order(pieces)
    if K.TIMES not in kinds:
        return pieces
    counted, last_words = kinds.index(K.TIMES), _last_words()
    for at in places_of(K.NUMBER, kinds):
        if at < counted or kinds[at - 1] in SIGNS:
            continue
        piece, before = pieces[at], pieces[at - 1]
        if spoken(before.text.rpartition(" ")[2]) not in last_words or piece.value < LEAST_RATED:
            continue
        behind = kinds[at + 1] if at + 1 < len(kinds) else None
        if behind in CLAUSE_ENDS and is_effort(piece) and _is_rated(pieces[at - REACH : at]):
            effort = piece._replace(kind=K.EFFORT, efforts=(Effort.from_rpe(piece.value),))
            return [*pieces[:at], effort, *pieces[at + 1 :]]
    return pieces


def _is_rated(ahead: list[Piece]) -> bool:
    said = " ".join([spoken(one) for before in ahead for one in before.text.split()])
    return any(f" {said}".endswith(f" {way}") for way in phrasebook().cues["rated"])


@lru_cache(maxsize=1)
def _last_words() -> frozenset[str]:
    return frozenset([way.split()[-1] for way in phrasebook().cues["rated"]])


def is_effort(number: Piece) -> bool:
    """Whether a bare number may be an effort of ten."""
    return number.kind is K.NUMBER and number.role is Role.BARE and 1 <= number.value <= TOP_OF_SCALE
