"""Times that stand between the sets of a lift counted in reps, with no word: "160x12, 90s, 160x12, 90s, 160x10".

rest = set [ sign ] TIME [ sign ] set     set = load x reps, or reps of a list that commas part: "8, 90s, 8, 90s, 7"
     | lift sets "x" reps load "," TIME end      "bench 3x5 80, 90s"; of dumbbells "3x5 20, 30s" may tell a load
A lift that is held or carried has its times for sets. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.catalogue.catalogue import catalogue
from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, ROLE, Piece, Role, places_in
from engine.values.exercise import Loading, Measure

TIMED = frozenset((Role.SECONDS, Role.PLURAL))
SIGNS = frozenset((K.COMMA, K.SLASH, K.DASH, K.LINE, K.THEN, K.OPEN, K.CLOSE, K.STOP))
PAIRED = frozenset((K.TIMES, K.FOR))
SHORTEST, LONGEST = Decimal(30), Decimal(900)
"""Seconds of a rest that is told so; a shorter one may be a set. Common practice, no source."""
STEP = 5


def with_rests_between(pieces: list[Piece]) -> list[Piece]:
    """The pieces without the times between two sets, and the sign in front of each."""
    places = places_in(TIMED, list(map(ROLE, pieces)))
    if not places or not _is_counted(pieces):
        return pieces
    named = any(piece.kind is K.NAME for piece in pieces)
    rests = [
        at
        for at in places
        if _lasts_as_a_rest(pieces[at])
        and (_stands_between_sets(pieces, at, named) or (named and _stands_behind_a_set(pieces, at)))
    ]
    if not rests:
        return pieces
    gone = set(rests)
    for at in rests:
        if kind_at(pieces, at - 1) in SIGNS and kind_at(pieces, at + 1) in {None, *SIGNS}:
            gone |= {at - 1, at + 1} if pieces[at - 1].kind is K.OPEN else {at - 1}
    return [piece for at, piece in enumerate(pieces) if at not in gone]


def _is_counted(pieces: Sequence[Piece]) -> bool:
    """Whether no lift is named whose sets are times or ways."""
    lifts = [catalogue().get(name) for piece in pieces if piece.kind is K.NAME for name in piece.names]
    return all(one is not None and one.measure is Measure.REPS for one in lifts)


def _lasts_as_a_rest(piece: Piece) -> bool:
    return piece.kind is K.NUMBER and SHORTEST <= piece.value <= LONGEST and piece.value % STEP == 0


def _stands_behind_a_set(pieces: Sequence[Piece], at: int) -> bool:
    """ "bench 3x5 80, 90s" at the end of a line: sets, reps and a load, then a time."""
    listed = kind_at(pieces, at + 1) is K.COMMA and kind_at(pieces, at + 2) is not K.NUMBER
    if kind_at(pieces, at - 1) is not K.COMMA or not (listed or kind_at(pieces, at + 1) in ENDS):
        return False
    last = at - 2 - (kind_at(pieces, at - 2) in UNITS)
    whole = [piece.kind for piece in pieces[max(0, last - 4) : last + 1]]
    whole = [kind for kind in whole if kind not in LOADING]
    return whole[-4:] == A_WHOLE and not (pieces[at].role is Role.PLURAL and _is_of_the_hand(pieces[:at]))


def _is_of_the_hand(pieces: Sequence[Piece]) -> bool:
    """Whether the lift in hand is done with what comes in tens: "30s" are dumbbells, too."""
    named = next((piece for piece in reversed(pieces) if piece.kind is K.NAME), None)
    lifts = [catalogue().get(name) for name in named.names] if named is not None else []
    return any(one is not None and one.loading in (Loading.PER_HAND, Loading.IMPLEMENT) for one in lifts)


ENDS = frozenset((None, K.LINE, K.STOP))
UNITS = frozenset((K.KG, K.LB))
LOADING = frozenset((K.AT, K.WITH, K.NAME))
A_WHOLE = [K.NUMBER, K.TIMES, K.NUMBER, K.NUMBER]


def _stands_between_sets(pieces: Sequence[Piece], at: int, named: bool) -> bool:
    last, following = at - 1, at + 1
    last -= kind_at(pieces, last) in SIGNS
    following += kind_at(pieces, following) in SIGNS
    if kind_at(pieces, last) is not K.NUMBER or kind_at(pieces, following) is not K.NUMBER:
        return False
    ahead, behind = kind_at(pieces, last - 1) in PAIRED, kind_at(pieces, following + 1) in PAIRED
    if ahead and behind:
        return True
    parted = named and kind_at(pieces, at - 1) is K.COMMA and kind_at(pieces, at + 1) is K.COMMA
    few = [pieces[last], pieces[following]]
    return parted and (ahead or not behind) and all(_are_reps(one) for one in few)


def _are_reps(piece: Piece) -> bool:
    return piece.role in (Role.BARE, Role.REPS) and 0 < piece.value <= MOST_LOADED_REPS and piece.value % 1 == 0
