"""Which of the two a bare number puts right that may be reps or a load: "first was 24" behind 26 kg for 10.

Thresholds are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.parts import part_told
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.load import Basis
from engine.values.sets import SetDone

FAR_FROM_REPS, NEAR_THE_LOAD = Decimal(2), Decimal("1.35")
"""Twice the reps that stand or half of them, and within a third of the load: the load."""
OFF_THE_REPS, AT_THE_LOAD = Decimal("1.5"), Decimal("1.15")
"""Half as many reps again, and all but the load: either."""


def is_rather_the_load(told: Told, number: Piece, done: SetDone) -> bool:
    """Whether so many reps are hardly meant, and the number is near the load that stands."""
    return _is_off(told, number, done, FAR_FROM_REPS, NEAR_THE_LOAD)


def is_either(told: Told, number: Piece, done: SetDone) -> bool:
    """Whether the number is well off the reps and all but the load that stands; behind "sorry" it is reps."""
    return not told.slipped and _is_off(told, number, done, OFF_THE_REPS, AT_THE_LOAD)


def may_be_load_or_reps(told: Told) -> bool:
    """Whether the one number of the message may be either, so that nothing is changed."""
    numbers = told.numbers()
    group = part_told(told.pieces, told.context).reached(told.context) if len(numbers) == 1 else []
    return bool(group) and is_either(told, numbers[0], group[-1].done)


def is_far_below_the_load(clause: Sequence[Piece], number: Piece, done: SetDone) -> bool:
    """ "last with 4" behind a hundred kilos: hardly its load."""
    at = clause.index(number)
    linked = at > 0 and clause[at - 1].kind in (K.WITH, K.AT) and number.role is Role.BARE
    load = done.load
    return linked and load is not None and load.basis is not Basis.BODY and load.amount > FAR_BELOW * number.value


FAR_BELOW = 4


def _is_off(told: Told, number: Piece, done: SetDone, from_reps: Decimal, from_load: Decimal) -> bool:
    if number.role is not Role.BARE or not told.kinds().isdisjoint(SAYS_REPS) or done.load is None:
        return False
    if number.value < 1 or done.reps < 1 or done.seconds is not None or done.metres is not None or not done.load.amount:
        return False
    as_reps, as_load = number.value / done.reps, number.value / abs(done.load.amount)
    return max(as_reps, 1 / as_reps) >= from_reps and max(as_load, 1 / as_load) <= from_load


SAYS_REPS = frozenset((K.REPS, K.FOR, K.GOT, K.ONLY, K.TIMES, K.NOT))
