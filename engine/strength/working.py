"""The strength that loads are asked from: steady, and never lower for a repetition more.

`current.py` says best what a lifter could lift once. It learns how he calls effort and how fast he gains, and whatever
learns so can turn against the plain sense of a log: more repetitions a month ago may make last week look like a
loss. A load is asked from this instead: the same published equations and the same noise, but every session moves the
level by a share that dates and the number of sets fix beforehand. So each set pulls towards what it shows, up or down,
and a repetition more in any set, however old, never asks for less.

Decided: a set far from what was expected pulls no more than one a little less far. A silent set (no effort told, not to
failure), or one told with more in reserve than can be called well, pulls down little: easy work looks just like lost
strength. On invented athletes the load for a target lies as near to the true one as with the learning filter
(`tests/bench/strength_accuracy.py`).

Source: exponential smoothing with the gains of a local level model: Harvey 1989, Forecasting, Structural Time Series
Models and the Kalman Filter. Bounded pull: Huber 1964, Ann Math Stat 35:73-101. The constants not named in `current.py`
or `session_evidence.py`: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from math import exp, log, sqrt
from statistics import fmean

from engine.strength.current import CALL_MEAN, RESERVE_MEAN, latest_days, lost_in
from engine.strength.mass import as_told, load_told, resistance
from engine.strength.one_rep_max import MOST_REPS
from engine.strength.rep_curve import log_multiple
from engine.strength.session_evidence import FATIGUE, MISSED_SHORT, MISSED_SINGLE, MOST_TIRED, called_share
from engine.strength.set_estimate import MOST_RIR, ended_at_failure
from engine.values.exercise import Exercise
from engine.values.load import Load
from engine.values.sets import SetDone, SetKind, SetRecord

FIRST_SD, WANDER_SD, DAY_SD, SET_SD = 0.06, 0.006, 0.010, 0.035
GAIN_A_DAY, GAIN_DAYS = 0.0003, 14
FAR_ABOVE, FAR_BELOW = 3.0, 1.0
SILENT_PULL = 0.1
"""How much of its pull downwards a set keeps that says only what was possible at least."""


@dataclass(frozen=True, slots=True)
class WorkingStrength:
    """The logarithm of the maximum in kilograms that the sets of late vouch for, told like the last of them."""

    level: float
    like: Load
    exercise: Exercise
    body_weight: Load | None

    def maximum_for(self, reps: int, left: Decimal = Decimal(0)) -> Load:
        """The maximum from which the mean of the seven equations leads to the load for so many repetitions.

        Units: as the lift was last told; to a thousandth. `left` in reserve as lifters call it, who leave more.
        """
        called = reps + float(left)
        meant = called + called_share(float(left)) * CALL_MEAN if left else called
        log_mass = self.level - _bend(meant) + log_multiple(called)[0]
        return as_told(Decimal(repr(exp(log_mass))), self.like, self.exercise, self.body_weight)


@dataclass(frozen=True, slots=True)
class _Shown:
    """What one set shows of the maximum, as a logarithm; `at_least`: it may well have been more."""

    level: float
    at_least: bool
    told: Load


def working_strength(
    records: Sequence[SetRecord], exercise: Exercise, today: date, body_weight: Load | None = None
) -> WorkingStrength | None:
    """The strength to ask loads from; None where no set has a load and repetitions.

    Shape: `records` in the order of the log; those of other exercises and of days after `today` are passed over.
    """
    sessions = _sessions(records, exercise, today, body_weight)
    if not sessions:
        return None
    level, variance, last = _first(sessions[0][1]), FIRST_SD**2, sessions[0][0]
    for number, (on, shown) in enumerate(sessions):
        days = (on - last).days
        level += GAIN_A_DAY * min(days, GAIN_DAYS) - lost_in(days)
        variance += WANDER_SD**2 * days + lost_in(days) ** 2
        noise = DAY_SD**2 + SET_SD**2 / len(shown)
        share = variance / (variance + noise)
        if number:
            level = _pulled(level, shown, share, sqrt(variance + noise))
        variance, last = variance * (1 - share), on
    return WorkingStrength(level, sessions[-1][1][-1].told, exercise, body_weight)


def _sessions(
    records: Sequence[SetRecord], exercise: Exercise, today: date, body_weight: Load | None
) -> list[tuple[date, list[_Shown]]]:
    """The latest days with sets that show something, oldest first; whether they do never hangs on repetitions."""
    days = latest_days(records, exercise, today)
    shown = ((on, list(_shown(day, exercise, body_weight))) for on, day in days)
    return [(on, sets) for on, sets in shown if sets]


def _shown(records: Sequence[SetRecord], exercise: Exercise, body_weight: Load | None) -> Iterator[_Shown]:
    tired = 0
    for done in (record.done for record in records):
        told = load_told(done, exercise)
        mass = None if told is None else resistance(told, exercise, body_weight)
        counted = done.kind is SetKind.WORK and done.seconds is None and done.metres is None
        if counted and told is not None and mass is not None and mass > 0:
            left, at_least = _left(done)
            short = MISSED_SHORT if done.missed else 0.0
            level = log(mass) + _bend((done.reps or MISSED_SINGLE) + left) - short + FATIGUE * min(tired, MOST_TIRED)
            yield _Shown(level, at_least, told)
        tired += done.counts_as_work


def _left(done: SetDone) -> tuple[float, bool]:
    """The repetitions left in reserve, and whether there may well have been more."""
    if ended_at_failure(done):
        return 0.0, False
    if done.effort is None:
        return RESERVE_MEAN, True
    called = float(min(done.effort.rir, MOST_RIR))
    return called + called_share(called) * CALL_MEAN, done.effort.rir > MOST_RIR


def _first(shown: Sequence[_Shown]) -> float:
    """Where the level starts: the better half of the first session, so that an unmarked ramp takes little away."""
    best = sorted((one.level for one in shown), reverse=True)
    return fmean(best[: (len(best) + 1) // 2])


def _pulled(level: float, shown: Sequence[_Shown], share: float, sd: float) -> float:
    """The level after a session: its sets one by one, together moving it by `share` of the way.

    Each step leaves the level a rising function both of what it was and of what the set shows.
    """
    each = 1 - (1 - share) ** (1 / len(shown))
    for one in shown:
        off = one.level - level
        pull = each * SILENT_PULL if off < 0 and one.at_least else each
        level += pull * max(-FAR_BELOW * sd, min(FAR_ABOVE * sd, off))
    return level


def _bend(reps: float) -> float:
    return log_multiple(min(reps, float(MOST_REPS)))[0]
