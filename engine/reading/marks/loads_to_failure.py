"""A load that was lifted as often as it went, and how often that was: "30 till failure, got 14", "80 amrap: 12".

told = LOAD [ "for" ] ( FAILURE | MAX ) [ "," | ":" ] [ GOT ] REPS     a colon, a word for what was got, or "reps"
The load is written so, or is 20 or more and more than the reps. Common practice, no source. Behind a list of reps
nothing is put together: "8 8 7 to failure: 12 10 8".
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.words.ahead import kind_at
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_in

AS_OFTEN = frozenset((K.FAILURE, K.MAX))
AHEAD = frozenset((K.NAME, K.COMMA, K.THEN, K.DROP, K.AND, K.ARROW, K.LINE, K.STOP, K.WITH, K.COLON, K.AT))
BEHIND = frozenset((K.NUMBER, K.TIMES, K.SLASH, K.KG, K.LB, K.FOR, K.PLUS, K.DASH, K.AT))
PARTING = frozenset((K.COMMA, K.COLON, K.DASH))
LEAST_LOAD = Decimal(20)


def with_loads_to_failure(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with each such load and its reps made a pair."""
    out: list[Piece] = []
    done = 0
    for at in places_in(AS_OFTEN, kinds_in_order(pieces)):
        reps = _place_of_reps(pieces, at) if at > done else 0
        load = at - 1 - (kind_at(pieces, at - 1) is K.FOR)  # "60 for max reps, got 15"
        if reps and load >= done and _is_load(pieces, load, pieces[reps]):
            times = pieces[at]._replace(kind=K.TIMES, text="x")
            out += [*pieces[done : load + 1], times, pieces[reps]._replace(failure=pieces[at].kind is K.FAILURE)]
            done = reps + 1
    return [*out, *pieces[done:]] if done else pieces


def _place_of_reps(pieces: Sequence[Piece], at: int) -> int:
    """The place of the reps that are told behind the word; 0 where none are."""
    place, told = at + 1, False
    while kind_at(pieces, place) in PARTING or kind_at(pieces, place) is K.GOT:
        told = told or pieces[place].kind in (K.GOT, K.COLON)
        place += 1
    if kind_at(pieces, place) is not K.NUMBER or kind_at(pieces, place + 1) in BEHIND or _lists_more(pieces, place):
        return 0
    reps = pieces[place]
    told = told or reps.role is Role.REPS
    return place if told and reps.role in (Role.BARE, Role.REPS) and reps.value % 1 == 0 else 0


def _lists_more(pieces: Sequence[Piece], at: int) -> bool:
    """ "40kg to failure: 20, 17, 14": all to failure; in "40 to failure: 20, 30x15" a load."""
    if kind_at(pieces, at + 1) not in (K.COMMA, K.AND) or kind_at(pieces, at + 2) is not K.NUMBER:
        return False
    more = pieces[at + 2]
    reps = more.role in (Role.BARE, Role.REPS) and more.value <= MOST_LOADED_REPS
    return reps and kind_at(pieces, at + 3) not in AS_OFTEN | PAIRED


PAIRED = frozenset((K.TIMES, K.FOR))


def _is_load(pieces: Sequence[Piece], at: int, reps: Piece) -> bool:
    number = pieces[at]
    if number.kind is not K.NUMBER or (at and pieces[at - 1].kind not in AHEAD):
        return False
    if number.role is Role.LOAD:
        return True
    return (
        number.role is Role.BARE
        and number.value >= LEAST_LOAD
        and reps.value < number.value
        and reps.value <= MOST_LOADED_REPS
    )
