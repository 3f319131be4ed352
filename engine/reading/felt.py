"""An effort told as what a set felt like: "felt like an 8"; and not "felt like 8 reps".

felt = FELT ( "like" | "a" ) ... NUMBER       NUMBER: bare, up to 10
"""

from __future__ import annotations

from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role
from engine.values.effort import TOP_OF_SCALE, Effort

FELT = frozenset(("felt", "feels", "feeling"))
MOST_BETWEEN = 3
GOING_ON = frozenset((K.TIMES, K.OUT_OF, K.SLASH, K.REPS, K.SETS, K.MORE, K.KG, K.LB, K.RESERVE, K.RESERVE_LEFT))


def with_felt(pieces: list[Piece]) -> list[Piece]:
    """The pieces with the number of what a set felt like made its effort."""
    for at, piece in enumerate(pieces):
        if piece.kind is not K.NOTE or piece.text.split()[0] not in FELT:
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


def is_effort(number: Piece) -> bool:
    """Whether a bare number may be an effort of ten."""
    return number.kind is K.NUMBER and number.role is Role.BARE and 1 <= number.value <= TOP_OF_SCALE
