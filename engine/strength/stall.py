"""Whether a lift rises, stands still or falls, and how sure that is.

Judged by the change over the last six weeks that the filter of current strength finds, with its uncertainty: the
filter carries the level of six weeks ago along as one more component, so that whatever it does not know of both ends
alike (how the lifter calls effort, how repetitions bend) does not blur the difference.
What counts as standing still, and six weeks, are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum
from math import sqrt

from engine.strength.current import first_belief, forward, recent_sessions, with_session
from engine.strength.kalman import Belief, Step, moved, spread
from engine.strength.likelihood import chance_above
from engine.strength.session_evidence import LEVEL
from engine.values.exercise import Exercise
from engine.values.load import Load
from engine.values.sets import SetRecord

LOOK_BACK_DAYS = 42
A_GAIN = 0.0125
"""Less than this share of the maximum in six weeks is no gain to speak of."""
A_LOSS = -0.005
SURE = 0.80
FEWEST_SESSIONS, MOST_SESSIONS = 5, 40
USUAL_SESSIONS = 4
"""How many sessions of usual scatter stand against what this lifter's sessions scatter: a steady one is surer."""
MOST_SURPRISING = 9.0


class Direction(Enum):
    RISING = "rising"
    STALLED = "stalled"
    FALLING = "falling"
    UNSURE = "not sure yet"


@dataclass(frozen=True, slots=True)
class Trend:
    """Where a lift has gone.

    Units: `change` and `sd` are shares of the maximum, over `days`.
    Shape: `rising`, `stalled` and `falling` are the chances of any gain, of no gain to speak of, and of a loss; the
    second holds the third. `sure` is the chance of `direction`; for UNSURE the largest of them. `sessions` fell in the
    time judged.
    """

    direction: Direction
    sure: float
    change: float
    sd: float
    days: int
    sessions: int
    rising: float
    stalled: float
    falling: float


def trend(
    records: Sequence[SetRecord], exercise: Exercise, today: date, body_weight: Load | None = None
) -> Trend | None:
    """Where a lift has gone in six weeks, or since it began; None under five sessions.

    Shape: `records` in the order of the log; those of other exercises and of days after `today` are passed over.
    """
    sessions = recent_sessions(records, exercise, today, body_weight, MOST_SESSIONS)
    start = today - timedelta(days=LOOK_BACK_DAYS)
    within = [session for session in sessions if session.on > start]
    if len(sessions) < FEWEST_SESSIONS or len(within) < FEWEST_SESSIONS - 1:
        return None
    since = max(start, sessions[0].on)
    belief, last = first_belief(sessions[0].seen), sessions[0].on
    marked, squares = False, 0.0
    for session in sessions:
        if session.on > since and not marked:
            belief, last, marked = _with_mark(forward(belief, (since - last).days)), since, True
        belief, surprise = with_session(forward(belief, (session.on - last).days), session.seen)
        squares += min(surprise**2, MOST_SURPRISING)
        last = session.on
    scatter = sqrt((USUAL_SESSIONS + squares) / (USUAL_SESSIONS + len(sessions)))
    return _judged(belief, (last - since).days, len(within), scatter)


def _with_mark(belief: Belief) -> Belief:
    """The belief with the present level carried along as its last component."""
    wider = Belief((*belief.mean, 0.0), (*((*row, 0.0) for row in belief.cov), (0.0,) * (len(belief.mean) + 1)))
    return moved(wider, (Step(len(belief.mean), LEVEL, 1.0),), ())


def _judged(belief: Belief, days: int, sessions: int, scatter: float) -> Trend:
    change = belief.mean[LEVEL] - belief.mean[-1]
    loading = [0.0] * len(belief.mean)
    loading[LEVEL], loading[-1] = 1.0, -1.0
    sd = scatter * sqrt(max(0.0, spread(belief, loading)))
    rising = chance_above(0.0, change, sd)
    stalled = 1 - chance_above(A_GAIN * days / LOOK_BACK_DAYS, change, sd)
    falling = 1 - chance_above(A_LOSS * days / LOOK_BACK_DAYS, change, sd)
    for direction, chance in ((Direction.FALLING, falling), (Direction.RISING, rising), (Direction.STALLED, stalled)):
        if chance >= SURE:
            return Trend(direction, chance, change, sd, days, sessions, rising, stalled, falling)
    return Trend(Direction.UNSURE, max(rising, stalled), change, sd, days, sessions, rising, stalled, falling)
