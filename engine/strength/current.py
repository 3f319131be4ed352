"""Current strength in one lift from all recent sets, with its uncertainty.

A small state-space filter over sessions: the level and its drift, how this lifter's repetitions bend from the published
equations, the lifter's own bias in calling repetitions in reserve and the reserve kept when nothing is called.
A session that falls far outside what was expected (a bad day, a slip of the thumb) pulls less the farther out it is.
A silent set (no effort told, not to failure) is a lower bound: below what was expected it pulls little, since easy work
looks just like lost strength; above, it counts, since no one lifts more than he can.
Time away: nothing is lost for two weeks, then about 0.15 % a day, and as much again is not known.

Source: local linear trend filter: Harvey 1989, Forecasting, Structural Time Series Models and the Kalman Filter.
Loss: -1.7 % bench at 2 weeks (Hortobágyi et al. 1993, Med Sci Sports Exerc 25:929), little to 4 weeks (Mujika & Padilla
2001, Med Sci Sports Exerc 33:1297), -8.9 % at 5 weeks in kayakers (García-Pallarés et al. 2010), none at 6 weeks in
recreational lifters (Kraemer et al. 2002): the rate lies between them. Other constants: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from math import exp, sqrt

from engine.strength.kalman import Belief, Step, corrected, corrected_in_part, innovation, moved, spread
from engine.strength.mass import as_told, load_told
from engine.strength.rep_curve import log_multiple
from engine.strength.session_evidence import (
    CALL,
    CURVE,
    DRIFT,
    LEVEL,
    RESERVE,
    SHIFT,
    Seen,
    called_share,
    observe,
    seen_sets,
)
from engine.values.exercise import Exercise
from engine.values.ids import SetId
from engine.values.load import Load
from engine.values.sets import SetRecord

RECENT_SESSIONS = 20
RECENT_DAYS = 365
INTERVAL_90 = 1.645
"""Standard deviations either side that hold 90 % of a normal distribution."""

FIRST_SD = 0.30
DRIFT_MEAN, DRIFT_SD, DRIFT_HALF_LIFE = 0.0002, 0.0012, 60.0
WANDER_SD = 0.0022
CURVE_SD = 0.13
SHIFT_SD = 0.021
"""The seven equations scatter about their mean with an SD of 1.8 to 2.9 % from 2 to 10 repetitions (computed)."""
CALL_MEAN, CALL_SD = 0.6, 0.8
RESERVE_MEAN, RESERVE_SD = 2.0, 1.2
CURVE_WANDER_SD, HABIT_SD = 0.004, 0.04
"""What changes in a day of how repetitions bend, and of calling and keeping in reserve: both are habits."""
KEPT_DAYS = 14
LOST_A_DAY, MOST_LOST = 0.0015, 0.15
FAR_ABOVE, FAR_BELOW, FAR_BELOW_SILENT = 2.5, 1.25, 0.75


@dataclass(frozen=True, slots=True)
class CurrentStrength:
    """What a lifter could lift once on an average day.

    Units: loads as the lift was last told (per hand for a pair; added load for body-weight work); `change_a_week` and
    `change_sd` are shares of the maximum a week; `call_bias` in repetitions left beyond those called.
    Shape: `low` and `high` bound 90 %. `sessions` are those it rests on, `evidence` their sets, oldest first.
    """

    on: date
    one_rep_max: Load
    low: Load
    high: Load
    change_a_week: float
    change_sd: float
    call_bias: float
    sessions: int
    evidence: tuple[SetId, ...]
    belief: Belief
    exercise: Exercise
    body_weight: Load | None

    def load_for(self, reps: int, left: Decimal = Decimal(0)) -> Load:
        """The load for so many repetitions that this lifter would call `left` in reserve, unrounded by equipment."""
        mean, _ = self._log_load_for(reps, float(left))
        return _told(mean, self.one_rep_max, self.exercise, self.body_weight)

    def interval_for(self, reps: int, left: Decimal = Decimal(0)) -> tuple[Load, Load]:
        """The loads that bound `load_for` with 90 % on an average day."""
        mean, sd = self._log_load_for(reps, float(left))
        low, high = (
            _told(mean + side * INTERVAL_90 * sd, self.one_rep_max, self.exercise, self.body_weight) for side in (-1, 1)
        )
        return low, high

    def _log_load_for(self, reps: int, left: float) -> tuple[float, float]:
        mean = self.belief.mean
        called = called_share(left) if left else 0.0
        to_failure = max(1.0, reps + left + called * mean[CALL])
        gain, slope = log_multiple(to_failure)
        several = min(1.0, to_failure - 1)
        bend = 1 + mean[CURVE]
        loading = [0.0] * len(mean)
        loading[LEVEL], loading[CURVE], loading[SHIFT], loading[CALL] = 1.0, -gain, -several, -bend * slope * called
        return mean[LEVEL] - several * mean[SHIFT] - bend * gain, sqrt(spread(self.belief, loading))


@dataclass(frozen=True, slots=True)
class Followed:
    """What the filter believes after one session."""

    on: date
    belief: Belief


def current_strength(
    records: Sequence[SetRecord], exercise: Exercise, today: date, body_weight: Load | None = None
) -> CurrentStrength | None:
    """Current strength in one exercise; None where no set says anything of it.

    Shape: `records` in the order of the log; those of other exercises and of days after `today` are passed over.
    """
    sessions = recent_sessions(records, exercise, today, body_weight)
    if not sessions:
        return None
    followed = follow(sessions)
    belief = forward(followed[-1].belief, (today - followed[-1].on).days)
    like = next(
        told for record in reversed(sessions[-1].records) if (told := load_told(record.done, exercise)) is not None
    )
    sd = sqrt(belief.cov[LEVEL][LEVEL])
    load, low, high = (
        _told(belief.mean[LEVEL] + side * INTERVAL_90 * sd, like, exercise, body_weight) for side in (0, -1, 1)
    )
    return CurrentStrength(
        on=today,
        one_rep_max=load,
        low=low,
        high=high,
        change_a_week=7 * belief.mean[DRIFT],
        change_sd=7 * sqrt(belief.cov[DRIFT][DRIFT]),
        call_bias=belief.mean[CALL],
        sessions=len(sessions),
        evidence=tuple(record.id for session in sessions for record in session.records),
        belief=belief,
        exercise=exercise,
        body_weight=body_weight,
    )


@dataclass(frozen=True, slots=True)
class SessionSets:
    """One session's records of a lift, and those of its sets that say something."""

    on: date
    records: tuple[SetRecord, ...]
    seen: tuple[Seen, ...]


def recent_sessions(
    records: Sequence[SetRecord],
    exercise: Exercise,
    today: date,
    body_weight: Load | None,
    most: int = RECENT_SESSIONS,
) -> tuple[SessionSets, ...]:
    """The latest sessions that say something of a lift, oldest first: at most `most`, from at most a year."""
    days = latest_days(records, exercise, today, most)
    seen = ((on, day, seen_sets(day, exercise, body_weight)) for on, day in days)
    return tuple(SessionSets(on, day, sets) for on, day, sets in seen if sets)


def latest_days(
    records: Sequence[SetRecord], exercise: Exercise, today: date, most: int = RECENT_SESSIONS
) -> list[tuple[date, tuple[SetRecord, ...]]]:
    """The latest days on which a lift was done, oldest first, with its sets: at most `most`, from at most a year.

    Shape: `records` in the order of the log; those of other exercises and of days after `today` are passed over.
    """
    by_day: dict[date, list[SetRecord]] = {}
    for record in reversed(records):
        if record.done.exercise != exercise.name or not 0 <= (today - record.on).days <= RECENT_DAYS:
            continue
        if record.on not in by_day and len(by_day) == most:
            break
        by_day.setdefault(record.on, []).append(record)
    return [(on, tuple(reversed(by_day[on]))) for on in sorted(by_day)]


def follow(sessions: Sequence[SessionSets]) -> tuple[Followed, ...]:
    """The filter's path over sessions, oldest first.

    Shape: `sessions` is not empty.
    """
    first = first_belief(sessions[0].seen)
    followed: list[Followed] = []
    belief, last = first, sessions[0].on
    for session in sessions:
        belief, _ = with_session(forward(belief, (session.on - last).days), session.seen)
        followed.append(Followed(session.on, belief))
        last = session.on
    return tuple(followed)


def first_belief(seen: Sequence[Seen]) -> Belief:
    """What is believed before the first session, around the level that its sets point to."""
    mean = [0.0, DRIFT_MEAN, 0.0, 0.0, CALL_MEAN, RESERVE_MEAN]
    mean[LEVEL] = observe(seen, tuple(mean), expected=False).distance
    return Belief.apart(mean, [FIRST_SD**2, DRIFT_SD**2, CURVE_SD**2, SHIFT_SD**2, CALL_SD**2, RESERVE_SD**2])


def forward(belief: Belief, days: int) -> Belief:
    """The belief some days later: the drift goes on and fades, time away takes strength and certainty."""
    if days == 0:
        return belief
    kept = 0.5 ** (days / DRIFT_HALF_LIFE)
    drifting = min(days, KEPT_DAYS)
    lost = lost_in(days)
    steps = (Step(LEVEL, DRIFT, float(drifting)), Step(DRIFT, DRIFT, kept - 1))
    habit = HABIT_SD**2 * days
    noise = (WANDER_SD**2 * days + lost**2, DRIFT_SD**2 * (1 - kept**2), CURVE_WANDER_SD**2 * days, 0.0, habit, habit)
    later = moved(belief, steps, noise)
    mean = list(later.mean)
    mean[LEVEL] -= lost
    mean[DRIFT] += (1 - kept) * DRIFT_MEAN
    return Belief(tuple(mean), later.cov)


def lost_in(days: int) -> float:
    """The share of strength that so many days away take."""
    return min(MOST_LOST, LOST_A_DAY * max(0, days - KEPT_DAYS))


def with_session(belief: Belief, seen: Sequence[Seen]) -> tuple[Belief, float]:
    """The belief after a session, and how far that lay from what was expected, in standard deviations.

    A session far from what was expected pulls less the farther out it is.
    """
    observation = observe(seen, belief.mean)
    found = innovation(belief, observation.loading, observation.distance, observation.variance)
    allowed = FAR_ABOVE
    if observation.distance < 0:
        allowed = FAR_BELOW + observation.silent * (FAR_BELOW_SILENT - FAR_BELOW)
    surprise = observation.distance / sqrt(found.variance)
    if abs(surprise) > allowed:
        doubted = observation.variance + found.variance * (abs(surprise) / allowed - 1)
        found = innovation(belief, observation.loading, observation.distance, doubted)
    # More than was expected never makes a lifter weaker, nor less one stronger, however the curve would explain it.
    against = found.gain[LEVEL] < 0
    after = corrected_in_part(belief, observation.loading, found, LEVEL) if against else corrected(belief, found)
    mean = list(after.mean)
    mean[RESERVE] = max(0.0, mean[RESERVE])
    return Belief(tuple(mean), after.cov), surprise


def _told(log_mass: float, like: Load, exercise: Exercise, body_weight: Load | None) -> Load:
    return as_told(Decimal(repr(exp(log_mass))), like, exercise, body_weight)
