"""What one session's sets say of strength, as one observation for the filter.

In logarithms a set reads: load = level - fatigue - shift - (1 + curve) * log multiple(repetitions to failure) + noise,
where repetitions to failure = done + told in reserve + the lifter's own bias in calling them, or, with no effort told,
done + the reserve this lifter keeps when silent.
Sets of one session share one good or bad day, so they are joined, each weighed by its own noise, and the day's noise
is added once.

Noise, published: calls at 1 and 3 in reserve miss by -0.17 +/- 1.00 repetitions (Refalo et al. 2023, J Strength Cond
Res); more are left than called, 0.95 (0.17 to 1.73) pooled (Halperin et al. 2022, Sports Med 52:377-390); misses grow
with the reserve, SD 1.7 at RPE 9 to 2.9 at RPE 5 in long sets (Zourdos et al. 2021); repetitions to failure retest
within 0.7 at 90 % and 1.1 at 70 % (Mitter et al. 2022, PLoS ONE). A maximum retests within a few percent (from memory).
Fatigue of 1 % for each set before, and 2 +/- 1.5 in reserve when silent: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from math import log
from typing import assert_never

from engine.strength.kalman import Vector
from engine.strength.mass import load_told, resistance
from engine.strength.rep_curve import log_multiple, reps_for
from engine.strength.set_estimate import Refused, why_not
from engine.values.exercise import Exercise
from engine.values.load import Load
from engine.values.sets import SetDone, SetRecord

LEVEL, DRIFT, CURVE, SHIFT, CALL, RESERVE = range(6)
"""The components of the state: log of the maximum; its change a day; how this lifter's repetitions bend away from the
mean of the equations; how far sets of several repetitions lie off it against singles; repetitions left beyond those
called; repetitions left when nothing was called."""

DAY_SD, DAY_SHORT = 0.028, 0.008
"""Days scatter, and on the whole fall short of what a good day would show: bad days have no counterpart."""
FATIGUE, FATIGUE_SD, MOST_TIRED = 0.010, 0.010, 5
LOADING_SD = 0.005
FAILED_SD, SILENT_SD = 1.0, 1.5
CALLED_SD, CALLED_SD_FOR_EACH_LEFT = 1.0, 0.25
USUAL_REPS = 5.0
"""The repetitions by which sets are weighed before anything can be expected of them."""
MISSED_SHORT = 0.035
"""How far below an average day a missed set lies, as a share of the load: of all days it is the worse ones that make a
lifter miss. Common practice, no source; the size is what invented athletes show."""
MISSED_SINGLE = 0.5
"""The repetitions that a missed single is taken for: it was a little too heavy. Common practice, no source."""


class Voice(Enum):
    """How a set tells its effort."""

    FAILED = "failed"  # taken to failure on purpose
    MISSED = "missed"  # more was wanted than would go
    CALLED = "called"
    SILENT = "silent"


@dataclass(frozen=True, slots=True)
class Seen:
    """One set as the filter sees it.

    Shape: `left` is the reserve as called, `tired` the number of work sets before it in the session.
    """

    log_mass: float
    reps: float
    left: float
    voice: Voice
    tired: int


@dataclass(frozen=True, slots=True)
class Observation:
    """A session: how far it lies from what was expected, how it loads on the state, its noise, its silent share."""

    distance: float
    loading: Vector
    variance: float
    silent: float


def seen_sets(records: Sequence[SetRecord], exercise: Exercise, body_weight: Load | None) -> tuple[Seen, ...]:
    """The sets of one session that say something, in the order done."""
    seen: list[Seen] = []
    tired = 0
    for record in records:
        one = _seen(record.done, exercise, body_weight, min(tired, MOST_TIRED))
        if one is not None:
            seen.append(one)
        tired += record.done.counts_as_work
    return tuple(seen)


def observe(sets: Sequence[Seen], mean: Vector, *, expected: bool = True) -> Observation:
    """One session's observation around the present mean of the state.

    The load is what was chosen, exactly; the repetitions are what was seen, with noise. So a set bends with the
    repetitions expected at its load, not with those seen: otherwise noise in calling would be learned as a curve.
    Shape: `sets` is not empty. `expected` False: nothing is known yet that could be expected.
    """
    total = distance = silent = 0.0
    loading = [0.0] * len(mean)
    bend = 1 + mean[CURVE]
    for one in sets:
        called, reserve = _loads_on(one)
        reps = one.reps + one.left + called * mean[CALL] + reserve * mean[RESERVE]
        gain, slope = log_multiple(reps)
        room = (mean[LEVEL] - FATIGUE * one.tired - one.log_mass) / bend
        several = min(1.0, max(0.0, (reps_for(room) if expected else reps) - 1))
        room -= several * mean[SHIFT] / bend
        off, foreseen = gain - room, USUAL_REPS
        if expected:
            foreseen = reps_for(room)
            gain, slope = room, log_multiple(foreseen)[1]
            off = slope * (reps - foreseen)
        weight = 1 / _variance(one, foreseen, bend * log_multiple(foreseen)[1])
        total += weight
        silent += weight * reserve
        distance += weight * (bend * off + (MISSED_SHORT if one.voice is Voice.MISSED else 0.0))
        loading[CURVE] -= weight * gain
        loading[SHIFT] -= weight * several
        loading[CALL] -= weight * bend * slope * called
        loading[RESERVE] -= weight * bend * slope * reserve
    loading[LEVEL] = total
    scaled = tuple(one / total for one in loading)
    return Observation(DAY_SHORT + distance / total, scaled, DAY_SD**2 + 1 / total, silent / total)


def _seen(done: SetDone, exercise: Exercise, body_weight: Load | None, tired: int) -> Seen | None:
    refused = why_not(done)
    if refused is not None and not (refused is Refused.NO_REPS and done.missed):
        return None
    told = load_told(done, exercise)
    mass = None if told is None else resistance(told, exercise, body_weight)
    if mass is None or mass <= 0:
        return None
    voice = _voice(done)
    left = float(done.effort.rir) if done.effort is not None and voice is Voice.CALLED else 0.0
    return Seen(log(mass), float(done.reps) or MISSED_SINGLE, left, voice, tired)


def _voice(done: SetDone) -> Voice:
    if done.missed:
        return Voice.MISSED
    if done.failure:
        return Voice.FAILED
    return Voice.SILENT if done.effort is None else Voice.CALLED


def called_share(left: float) -> float:
    """How much of the bias in calling shows where so many are called: half of it at none in reserve, all from one."""
    return min(1.0, 0.5 + left / 2)


def _loads_on(one: Seen) -> tuple[float, float]:
    """How much a set hangs on the bias in calling and on the reserve kept when silent."""
    match one.voice:
        case Voice.FAILED | Voice.MISSED:
            return 0.0, 0.0
        case Voice.CALLED:
            return called_share(one.left), 0.0
        case Voice.SILENT:
            return 0.0, 1.0
        case _:
            assert_never(one.voice)


def _variance(one: Seen, reps: float, slope: float) -> float:
    match one.voice:
        case Voice.FAILED | Voice.MISSED:
            reps_sd = FAILED_SD
        case Voice.CALLED:
            reps_sd = CALLED_SD + CALLED_SD_FOR_EACH_LEFT * max(0.0, one.left - 1)
        case Voice.SILENT:
            reps_sd = SILENT_SD
        case _:
            assert_never(one.voice)
    long_set = 1 + max(0.0, reps - 10) / 10
    return float((slope * reps_sd * long_set) ** 2 + (FATIGUE_SD * one.tired) ** 2 + LOADING_SD**2)
