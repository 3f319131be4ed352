"""A count of sets told ahead of its lift: "3 sets of squats 100x5 100x5 100x4", "3 séries de squat 100x5 100x5 100x4".

counted = NUMBER "sets" "of" [ words ] NAME LIST     the list tells each of them; one set alone is the same so often
What stands behind "then", or behind words or a count of its own, is told apart from the one set that was counted: "3
sets of squats 100x5, then 110x3". Without "of", a count behind that makes the sum may be told apart or a part of it: "3
sets squats 100x5 2 sets of 90x5" is asked. So is "100x5 and 2 at 90x5": two sets, or two reps.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import (
    MOST_LOADED_REPS,
    MOST_SETS,
    ROLE,
    Piece,
    Role,
    kinds_in_order,
    places_in,
    places_of,
)

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


def with_counts_in_doubt(pieces: list[Piece], told: set[K]) -> list[Piece]:
    """The pieces, which are of these kinds, with what makes them a question where a count of sets is in doubt."""
    if K.TIMES not in told or K.NAME not in told:
        return pieces
    for at in places_in(AT, kinds_in_order(pieces)) if not told.isdisjoint(AT) else ():
        if at and _counts_at(pieces, at):
            pair = pieces[at - 1 : at + 4]
            counted = [pair[0]._replace(role=Role.SETS), *pair[1:], pair[1]._replace(kind=K.UNCLEAR)]
            return [*pieces[: at - 1], *counted, *pieces[at + 4 :]]
    counts = places_of(Role.SETS, list(map(ROLE, pieces)))
    for first, second in pairwise(counts):
        if _may_be_the_sum(pieces, first, second):
            return [*pieces, pieces[-1]._replace(kind=K.UNCLEAR)]
    return pieces


def counts_at_a_set(pieces: Sequence[Piece]) -> bool:
    """Whether "2 @ 105x5" stands behind other sets."""
    return any(at > 1 and _counts_at(pieces, at) for at in places_of(K.AT, kinds_in_order(pieces)))


def _counts_at(pieces: Sequence[Piece], at: int) -> bool:
    """ "2 at 90x5": a small number ahead of a load and its reps."""
    number = pieces[at - 1]
    if [*kinds_in_order(pieces[at + 1 : at + 4])] != [K.NUMBER, K.TIMES, K.NUMBER]:
        return False
    load, reps = pieces[at + 1], pieces[at + 3]
    plain = number.kind is K.NUMBER and number.role is Role.BARE and 1 < number.value <= MOST_SETS
    told = load.unit is not None or load.value > MOST_LOADED_REPS
    ahead, behind = kind_at(pieces, at - 2), kind_at(pieces, at + 4)
    return plain and told and number.value < reps.value and ahead in HEADING and behind is not K.TIMES


def _may_be_the_sum(pieces: Sequence[Piece], first: int, second: int) -> bool:
    """ "3 sets squats 100x5 2 sets of 90x5": one set told, and so many behind that it makes as many as were counted."""
    between = kinds_in_order(pieces[first + 1 : second])
    behind = kinds_in_order(pieces[second + 1 :])
    if between.count(K.TIMES) != 1 or between.count(K.NAME) != 1 or K.NAME in behind or K.TIMES not in behind:
        return False
    apart = {K.COLON, K.THEN, K.LINE}.isdisjoint(between) and (K.OF in between) is (behind[0] in AT)
    return apart and pieces[first].value == 1 + pieces[second].value


AT = frozenset((K.AT, K.WITH))
HEADING = frozenset((K.NAME, K.AND, K.COMMA, K.PLUS, K.THEN, K.LINE))
