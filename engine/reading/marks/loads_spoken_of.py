"""A load that a message only speaks of, ahead of its sets: "100 was too heavy, did 80x5", "85 felt easy. bench 3x5 85".

spoken of = [ name ] LOAD ( WAS | FELT | MOVED ) remark END      ahead of all other numbers; sets with an "x" behind it
of a day  = sets "," LOAD [ "on" ] WEEKDAY | sets "," WEEKDAY LOAD       heavier than those: a plan
failed    = LOAD "fail"                                        alone, near the last load of the lift in hand: a try
"""

from __future__ import annotations

from engine.reading.values import Context
from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_of

TELLING = frozenset(("was", "felt", "moved"))
REMARK = frozenset((K.NOTE, K.FILLER))
REMARKING = frozenset((K.NOTE, K.NOT_DATE))
ENDS = frozenset((K.COMMA, K.STOP, K.LINE, K.DASH, K.THEN))
NEAR = 2
"""So many times the last load, or a part of it, is no load that anybody tries next. Common practice, no source."""


def with_load_spoken_of(pieces: list[Piece], kinds: set[K]) -> list[Piece]:
    """The pieces, which were of these kinds, with such a load made part of the remark."""
    if K.WEEKDAY in kinds:
        pieces = _without_loads_of_days(pieces)
    if K.TIMES not in kinds or kinds.isdisjoint(REMARKING):
        return pieces
    at = int(pieces[0].kind is K.NAME)
    end = next((place for place, piece in enumerate(pieces) if piece.kind in ENDS), 0)
    if end < at + LEAST_OF_A_REMARK or not _is_a_load(pieces[at]) or not is_cued(pieces[at + 1].text, TELLING):
        return pieces
    remark = {piece.kind for piece in pieces[at + 1 : end]}
    if K.NOTE not in remark or not remark <= REMARK:
        return pieces
    return [*pieces[:at], aside(pieces[at]), *pieces[at + 1 :]]


def _without_loads_of_days(pieces: list[Piece]) -> list[Piece]:
    """ "bench 60 8 8 8, 62.5 on monday": without reps it is no set, whenever that monday is."""
    for at in reversed(places_of(K.WEEKDAY, kinds_in_order(pieces))):
        start, end = at, at + 1
        while start and pieces[start - 1].kind in OF_A_PLAN:
            start -= 1
        while end < len(pieces) and pieces[end].kind in OF_A_PLAN:
            end += 1
        before, after = kind_at(pieces, start - 1), kind_at(pieces, end)
        if before in PARTS_A_PLAN and after in ENDS_A_PLAN and _is_heavier(pieces[start:end], pieces[:start]):
            pieces = [*pieces[:start], aside(pieces[start]), *pieces[end:]]
    return pieces


def _is_heavier(told: list[Piece], ahead: list[Piece]) -> bool:
    """Whether one load is told, heavier than that of the sets in front of it, and nothing else."""
    loads = [piece for piece in told if piece.kind is K.NUMBER]
    before = [piece.value for piece in ahead if piece.kind is K.NUMBER]
    if len(loads) != 1 or not _is_a_load(loads[0]) or len(before) < LEAST_OF_SETS:
        return False
    return MOST_LOADED_REPS < max(before) < loads[0].value


OF_A_PLAN = frozenset((K.NUMBER, K.FILLER, K.WITH, K.FOR, K.AT, K.KG, K.LB, K.OF))
PARTS_A_PLAN = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN, K.LINE, K.THEN))
ENDS_A_PLAN = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.THEN))
LEAST_OF_SETS = 2
LEAST_OF_A_REMARK = 2


def _is_a_load(piece: Piece) -> bool:
    bare = piece.role is Role.BARE and piece.value > MOST_LOADED_REPS
    return piece.kind is K.NUMBER and (bare or piece.role is Role.LOAD)


def with_failed_single(pieces: list[Piece], context: Context) -> list[Piece]:
    """ "105 fail" behind squats at 100: a load that was tried, and no reps to failure."""
    if context.doing is None or len(pieces) != len(FAILED) or [piece.kind for piece in pieces] != FAILED:
        return pieces
    last = context.last.get(context.doing)
    if last is None or not last.amount or not _is_a_load(pieces[0]):
        return pieces
    near = last.amount < NEAR * pieces[0].value and pieces[0].value < NEAR * last.amount
    return [pieces[0], pieces[1]._replace(kind=K.MISS)] if near else pieces


FAILED = [K.NUMBER, K.FAILURE]
