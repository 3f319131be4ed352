"""A count of sets told ahead of its lift: "3 sets of squats 100x5 100x5 100x4", "3 séries de squat 100x5 100x5 100x4".

counted = NUMBER "sets" "of" [ words ] NAME LIST     the list tells each of them; one set alone is the same so often
What stands behind "then", or behind words or a count of its own, is told apart from the one set that was counted: "3
sets of squats 100x5, then 110x3".
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, kinds_in_order, places_of

BETWEEN = frozenset((K.FILLER, K.NOTE))
PARTING = frozenset((K.COMMA, K.THEN, K.STOP, K.LINE, K.AND, K.PLUS, K.DASH))
NEAR = 3
"""Words between "of" and the lift. Common practice, no source."""


def without_of_a_lift(pieces: list[Piece]) -> list[Piece]:
    """The pieces without such an "of", so that it does not join the count to the first number behind the lift."""
    kinds = kinds_in_order(pieces)
    dropped = {at for at in places_of(K.OF, kinds) if at and pieces[at - 1].role is Role.SETS and _counts(pieces, at)}
    return [piece for at, piece in enumerate(pieces) if at not in dropped] if dropped else pieces


def _counts(pieces: Sequence[Piece], at: int) -> bool:
    name = at + 1
    while name <= at + NEAR and kind_at(pieces, name) in BETWEEN:
        name += 1
    if kind_at(pieces, name) is not K.NAME:
        return False
    end = next((place for place in range(name + 1, len(pieces)) if pieces[place].kind is K.NAME), len(pieces))
    told = pieces[name + 1 : end]
    kinds = kinds_in_order(told)
    return kinds.count(K.TIMES) == pieces[at - 1].value or not _tells_others(told, kinds)


def _tells_others(told: Sequence[Piece], kinds: Sequence[K]) -> bool:
    """Whether one set is told first, and others apart from it, or counted."""
    counts = [at for at, piece in enumerate(told) if piece.role is Role.SETS]
    if counts and K.NUMBER in kinds[counts[0] + 1 :]:
        return True  # "100x5 2 sets of 90x5"; right ahead of the next lift it counts the sets of that one
    first = kinds.index(K.NUMBER) if K.NUMBER in kinds else len(kinds)
    parted = next((at for at in range(first, len(kinds)) if kinds[at] in PARTING), len(kinds))
    behind = kinds[parted + 1 :]
    if K.NUMBER not in behind or kinds[:parted].count(K.TIMES) > 1:
        return False
    return K.THEN in kinds[parted : parted + 2] or (behind[0] is not K.NUMBER and K.TIMES in kinds[:parted])
