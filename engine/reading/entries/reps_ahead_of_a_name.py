"""A number between whole sets and the name of another lift: "squat 100x5 10 push ups", "plank 60s 8 dips".

Behind a pair that tells its load, a time, a distance or reps, one bare number more may be the reps of the name behind
it: of a lift of the body it is, and of another it is asked about. Common practice, no source.
"""

from __future__ import annotations

from engine.catalogue.catalogue import catalogue
from engine.reading.words.clauses import Clause
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role
from engine.values.exercise import Loading, Measure

WHOLE = frozenset((Role.SECONDS, Role.METRES, Role.REPS))
MOST_REPS = 100
LEAST_BETWEEN = 2


def may_count_the_next(clause: Clause, at: int) -> bool:
    """Whether the number right in front of the name there may be of that lift."""
    pieces = clause.pieces
    if not LEAST_BETWEEN < at < len(pieces) or pieces[at].kind is not K.NAME:
        return False
    number, before = pieces[at - 1], pieces[at - 2]
    if number.kind is not K.NUMBER or number.role not in (Role.BARE, Role.REPS) or before.kind is not K.NUMBER:
        return False
    few = number.value % 1 == 0 and 0 < number.value <= MOST_REPS
    return few and (before.role in WHOLE or _ends_a_pair(pieces[: at - 1]) or _is_held(pieces[at - 3], before))


def counts_a_lift_of_the_body(clause: Clause, at: int) -> bool:
    """Whether it is the reps of that lift, which is one of the body alone and has no numbers behind it."""
    if not clause.counts or clause.counts[-1] != at - 1:
        return False
    lifts = [catalogue().get(name) for name in clause.pieces[at].names]
    body = bool(lifts) and all(one is not None and one.loading is Loading.BODY for one in lifts)
    return body and may_count_the_next(clause, at)


def _ends_a_pair(pieces: list[Piece]) -> bool:
    """ "100x5": a load and its reps."""
    kinds = [piece.kind for piece in pieces[-3:]]
    return kinds == [K.NUMBER, K.TIMES, K.NUMBER] and pieces[-3].value > MOST_LOADED_REPS >= pieces[-1].value


def _is_held(name: Piece, number: Piece) -> bool:
    """ "plank 60s": seconds, and no dumbbells."""
    held = [catalogue().get(one) for one in name.names] if name.kind is K.NAME else []
    return number.role is Role.PLURAL and any(one is not None and one.measure is Measure.TIME for one in held)
