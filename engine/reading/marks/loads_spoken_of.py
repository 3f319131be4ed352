"""A load that a message only speaks of, ahead of its sets: "100 was too heavy, did 80x5", "85 felt easy. bench 3x5 85".

spoken of = [ name ] LOAD ( WAS | FELT | MOVED ) remark END      ahead of all other numbers; sets with an "x" behind it
of a day  = sets "," LOAD [ "on" ] WEEKDAY | sets "," WEEKDAY LOAD       heavier than those: a plan
heading   = name RAMP LOAD [ "x" REPS ] sets                     "up to 95: 75x3 85x3 95x3": the last of the sets behind
both      = LOAD ... the same LOAD in the other unit         "140 kg, that's 308 pounds, for 4": told once more
failed    = LOAD "fail"                                        alone, near the last load of the lift in hand: a try
"""

from __future__ import annotations

from bisect import bisect_left
from decimal import Decimal
from itertools import accumulate, pairwise

from engine.reading.values import Context
from engine.reading.words.ahead import aside, kind_at
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_of
from engine.values.load import KG_PER_LB, Unit

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
    if K.TIMES not in kinds:
        return pieces
    if kinds.isdisjoint(REMARKING):
        return _without_top_ahead(pieces)
    at = int(pieces[0].kind is K.NAME)
    end = next((place for place, piece in enumerate(pieces) if piece.kind in ENDS), 0)
    if end < at + LEAST_OF_A_REMARK or not _is_a_load(pieces[at]) or not is_cued(pieces[at + 1].text, TELLING):
        return _without_top_ahead(pieces)
    remark = {piece.kind for piece in pieces[at + 1 : end]}
    if K.NOTE not in remark or not remark <= REMARK:
        return pieces
    return [*pieces[:at], aside(pieces[at]), *pieces[at + 1 :]]


def without_loads_told_twice(pieces: list[Piece]) -> list[Piece]:
    """The pieces, with a load that tells in the other unit what one before it did as part of a remark."""
    united = [at for at in places_of(K.NUMBER, kinds_in_order(pieces)) if pieces[at].unit is not None]
    if len({pieces[at].unit for at in united}) < BOTH:
        return pieces
    for first, second in reversed(list(pairwise(united))):
        between = kinds_in_order(pieces[first + 1 : second])
        if not _weigh_the_same(pieces[first], pieces[second]) or not APART.isdisjoint(between):
            continue
        if K.NUMBER in between and kind_at(pieces, second + 1) not in ENDS_OF_A_REMARK:
            continue  # "80 kg for 5, 176 lb for 8"
        start = first + 1 + (max(places_of(K.NUMBER, between), default=-1) + 1)
        commas = kind_at(pieces, start) is K.COMMA and kind_at(pieces, second + 1) is K.COMMA
        closing = commas or (K.OPEN in between and kind_at(pieces, second + 1) is K.CLOSE)
        worded = not SIGNS_ALONE.issuperset(between)
        told = [aside(pieces[second])._replace(start=pieces[start].start)] if worded else []
        pieces = [*pieces[:start], *told, *pieces[second + 1 + closing :]]
    return pieces


def _weigh_the_same(first: Piece, second: Piece) -> bool:
    if first.unit is second.unit or Role.LOAD is not first.role or Role.LOAD is not second.role:
        return False
    kilos = [one.value if one.unit is Unit.KG else one.value * KG_PER_LB for one in (first, second)]
    return abs(kilos[0] - kilos[1]) <= kilos[0] * ROUNDED


BOTH, ROUNDED = 2, Decimal("0.02")
"""A load told in the other unit is rounded, to the plates or the pound. Common practice, no source."""
APART = frozenset((K.NAME, K.LINE, K.THEN))
SIGNS_ALONE = frozenset((K.OPEN, K.SLASH, K.EQUALS))
ENDS_OF_A_REMARK = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE))


def _without_loads_of_days(pieces: list[Piece]) -> list[Piece]:
    """ "bench 60 8 8 8, 62.5 on monday": without reps it is no set, whenever that monday is."""
    kinds = kinds_in_order(pieces)
    numbers = places_of(K.NUMBER, kinds)
    heaviest = list(accumulate((pieces[at].value for at in numbers), max))
    for at in reversed(places_of(K.WEEKDAY, kinds)):
        start, end = at, at + 1
        while start and pieces[start - 1].kind in OF_A_PLAN:
            start -= 1
        while end < len(pieces) and pieces[end].kind in OF_A_PLAN:
            end += 1
        planned = kind_at(pieces, start - 1) in PARTS_A_PLAN and kind_at(pieces, end) in ENDS_A_PLAN
        if planned and _is_heavier(pieces[start:end], _ahead_of(start, numbers, heaviest)):
            pieces = [*pieces[:start], aside(pieces[start]), *pieces[end:]]
    return pieces


def _ahead_of(start: int, numbers: list[int], heaviest: list[Decimal]) -> list[Decimal]:
    """The last few of the heaviest so far, as they stood ahead of a place."""
    end = bisect_left(numbers, start)
    return heaviest[max(0, end - LEAST_OF_SETS) : end]


def _is_heavier(told: list[Piece], heaviest: list[Decimal]) -> bool:
    """Whether one load is told, heavier than that of the sets in front of it, and nothing else."""
    loads = [piece for piece in told if piece.kind is K.NUMBER]
    if len(loads) != 1 or not _is_a_load(loads[0]):
        return False
    return len(heaviest) == LEAST_OF_SETS and MOST_LOADED_REPS < heaviest[-1] < loads[0].value


OF_A_PLAN = frozenset((K.NUMBER, K.FILLER, K.WITH, K.FOR, K.AT, K.KG, K.LB, K.OF))
PARTS_A_PLAN = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN, K.LINE, K.THEN))
ENDS_A_PLAN = frozenset((None, K.COMMA, K.STOP, K.LINE, K.CLOSE, K.THEN))
LEAST_OF_SETS = 2
LEAST_OF_A_REMARK = 2


def _without_top_ahead(pieces: list[Piece]) -> list[Piece]:
    """The pieces without the load that heads a ramp, where the last set of the lift tells it once more."""
    at = next((at for at, piece in enumerate(pieces[:LONGEST_HEAD]) if piece.kind is K.NUMBER), 0)
    ahead = [piece for piece in pieces[1:at] if piece.kind is not K.COLON]
    if not ahead or pieces[0].kind is not K.NAME or not _is_a_load(pieces[at]):
        return pieces
    if not any(is_cued(piece.text, RAMP) for piece in ahead) or any(
        piece.kind not in AHEAD_OF_A_TOP for piece in ahead
    ):
        return pieces
    end, told_reps = _reps_of_the_top(pieces, at + 1)
    told_reps += [piece.told for piece in ahead if piece.kind is K.COUNT]
    behind = [piece for piece in pieces[end:] if piece.kind not in PARTING]
    loads = [one.value for one, x in pairwise(behind) if one.kind is K.NUMBER and x.kind is K.TIMES]
    alone = {piece.kind for piece in behind} == {K.NUMBER, K.TIMES} and len(loads) > 1
    again = alone and max(loads) == loads[-1] == pieces[at].value
    return [pieces[0], *behind] if again and all(reps == behind[-1].value for reps in told_reps) else pieces


def _reps_of_the_top(pieces: list[Piece], at: int) -> tuple[int, list[int]]:
    """The place behind the top set told ahead, and its reps if it tells them: "x1", "for 1", "for a single"."""
    if at + 1 < len(pieces) and pieces[at].kind in (K.TIMES, K.FOR):
        reps = at + 1 + (pieces[at + 1].kind is K.FILLER)
        if reps < len(pieces) and pieces[reps].kind in (K.NUMBER, K.COUNT):
            return reps + 1, [int(pieces[reps].value) or pieces[reps].told]
    return at, []


RAMP = frozenset(("ramp",))
AHEAD_OF_A_TOP = frozenset((K.FILLER, K.NOT_DATE, K.NOTE, K.COUNT, K.PLAIN, K.WORKING, K.AT, K.WITH, K.COMMA))
LONGEST_HEAD = 9
PARTING = frozenset((K.COLON, K.COMMA, K.DASH, K.STOP))


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
