"""What one set says of the maximum, or why it says nothing.

A set told with repetitions in reserve has that many more in it; a set to failure has none. A set whose effort was not
told says only what the lifter can do at least.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import Enum

from engine.strength.mass import as_told, load_told, resistance
from engine.strength.one_rep_max import LINEAR_REPS, MOST_REPS, multiples
from engine.values.exercise import Exercise
from engine.values.load import Load
from engine.values.sets import SetDone, SetKind

MOST_RIR = Decimal(3)
"""A set told with more in reserve is kept but not estimated from.

Common practice, from published error: calls miss by about a repetition at 0 to 5 in reserve and more than two at 7 to
10 (Hackett et al. 2017, J Strength Cond Res 31(8):2162), 2 at RPE 9 against 5 at RPE 5 (Zourdos et al. 2021)."""


class Refused(Enum):
    """Why a set says nothing of the maximum."""

    NOT_WORK = "only work sets are estimated from"
    NO_LOAD = "no load was told"
    NO_BODY_WEIGHT = "the body weight is not known"
    NO_REPS = "no repetition was completed"
    NOT_COUNTED_IN_REPS = "it was timed or carried"
    TOO_EASY = "more than 3 repetitions were left in reserve"
    TOO_MANY_REPS = "no equation holds past 20 repetitions"


@dataclass(frozen=True, slots=True)
class SetEstimate:
    """The maximum that one set points to.

    Units: as the set was told: per hand for a load per hand, added load for body-weight work; to a thousandth.
    Shape: `low` and `high` are the lowest and highest of the seven equations. `at_least`: effort was not told.
    """

    load: Load
    low: Load
    high: Load
    reps_to_failure: Decimal
    at_least: bool
    low_confidence: bool


def estimate(done: SetDone, exercise: Exercise, body_weight: Load | None = None) -> SetEstimate | Refused:
    """The maximum one set points to, or why there is none.

    Source: the mean of seven published equations (`one_rep_max`); repetitions in reserve as in Zourdos et al. 2016,
    J Strength Cond Res 30(1):267-275; low confidence past 10 repetitions: Reynolds et al. 2006.
    """
    refused, told = why_not(done), load_told(done, exercise)
    if refused is not None:
        return refused
    if told is None:
        return Refused.NO_LOAD
    mass = resistance(told, exercise, body_weight)
    if mass is None or mass <= 0:
        return Refused.NO_BODY_WEIGHT if mass is None else Refused.NO_LOAD
    reps = reps_to_failure(done)
    around = multiples(reps)
    load, low, high = (
        as_told(mass * share, told, exercise, body_weight) for share in (around.mean, around.low, around.high)
    )
    return SetEstimate(load, low, high, reps, effort_unknown(done), reps > LINEAR_REPS)


def why_not(done: SetDone) -> Refused | None:
    """Why a set cannot be estimated from, whatever it was loaded with; None where it can."""
    if done.kind is not SetKind.WORK:
        return Refused.NOT_WORK
    if done.seconds is not None or done.metres is not None:
        return Refused.NOT_COUNTED_IN_REPS
    if done.reps == 0:
        return Refused.NO_REPS
    if not ended_at_failure(done) and done.effort is not None and done.effort.rir > MOST_RIR:
        return Refused.TOO_EASY
    return Refused.TOO_MANY_REPS if reps_to_failure(done) > MOST_REPS else None


def reps_to_failure(done: SetDone) -> Decimal:
    """Repetitions done and those told to be in reserve; the repetitions done where it was failure or is not known."""
    if done.effort is None or ended_at_failure(done):
        return Decimal(done.reps)
    return done.reps + done.effort.rir


def ended_at_failure(done: SetDone) -> bool:
    """Whether the set ended because no more would go: told as failure, or a repetition was missed."""
    return done.failure or done.missed


def effort_unknown(done: SetDone) -> bool:
    """Whether nothing tells how much was left in reserve."""
    return done.effort is None and not ended_at_failure(done)
