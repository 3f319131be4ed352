"""Whether a lift's best set of a week is more or less than that of the week it was trained in before.

Like is compared with like: at the same repetitions by load, at the same load by repetitions. Where both differ, by the
maximum each points to, and only where the seven equations leave no doubt which is more. A set that made all it was
asked shows no loss, however little that was: a deload, a swap and another rep range ask less.
"""

from __future__ import annotations

from decimal import Decimal
from enum import Enum

from engine.strength.mass import load_told
from engine.strength.set_estimate import SetEstimate, ended_at_failure, estimate, reps_to_failure
from engine.values.exercise import Exercise
from engine.values.load import Load
from engine.values.sets import SetDone

NONE = Decimal(0)


class Against(Enum):
    MORE = "more"
    SAME = "same"
    LESS = "less"


def against(
    now: SetDone,
    before: SetDone,
    exercise: Exercise | None,
    body_weight: Load | None = None,
    *,
    made: bool = False,
    in_turn: bool = False,
) -> Against:
    """How a set stands against an earlier one of the same lift.

    `made`: it made what it was asked; `in_turn`: and that was the plan's own step of this lift, so that a heavier load
    for fewer repetitions is more.
    """
    steps = _steps(now, before, exercise)
    if all(step >= 0 for step in steps):
        return Against.MORE if any(steps) else Against.SAME
    if all(step <= 0 for step in steps):
        return Against.SAME if made or _told_as_much(now, before) else Against.LESS
    if in_turn and steps[0] > 0:
        return Against.MORE
    return _by_maximum(now, before, exercise, body_weight, made=made)


def _steps(now: SetDone, before: SetDone, exercise: Exercise | None) -> tuple[Decimal, ...]:
    """More or less of each that counts: load, seconds, metres, repetitions."""
    return (
        _mass(now, exercise) - _mass(before, exercise),
        (now.seconds or NONE) - (before.seconds or NONE),
        (now.metres or NONE) - (before.metres or NONE),
        Decimal(now.reps - before.reps),
    )


def _mass(done: SetDone, exercise: Exercise | None) -> Decimal:
    load = done.load if exercise is None else load_told(done, exercise)
    return NONE if load is None else load.kilograms()


def _told_as_much(now: SetDone, before: SetDone) -> bool:
    """Whether at the same load as many repetitions were there, some of them left in reserve as told."""
    if now.load != before.load or now.effort is None or ended_at_failure(now):
        return False
    return reps_to_failure(now) >= reps_to_failure(before)


def _by_maximum(
    now: SetDone, before: SetDone, exercise: Exercise | None, body_weight: Load | None, *, made: bool
) -> Against:
    if exercise is None:
        return Against.SAME
    one, other = estimate(now, exercise, body_weight), estimate(before, exercise, body_weight)
    if not isinstance(one, SetEstimate) or not isinstance(other, SetEstimate):
        return Against.SAME
    if other.high.kilograms() < one.low.kilograms():
        return Against.MORE
    return Against.LESS if not made and one.high.kilograms() < other.low.kilograms() else Against.SAME
