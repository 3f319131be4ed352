"""The estimate of current strength and simpler rivals, judged on invented athletes whose strength is known."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from math import log, sqrt
from statistics import fmean

from engine.strength.current import current_strength
from engine.strength.one_rep_max import multiples
from engine.strength.set_estimate import SetEstimate, estimate
from engine.strength.working import working_strength
from engine.values.sets import SetRecord
from tests.engine.strength.invented_athletes import Habits, athlete, true_load
from tests.engine.volume.invented import BENCH

CALLED = Decimal(2)
SETTLING = 6
"""Sessions before an athlete is judged: nobody trusts the first week."""

GROUPS: Mapping[str, Habits] = {
    "usual": Habits(),
    "calls well": Habits(call_bias=(-0.17, 0.4), call_noise=0.8),
    "calls badly": Habits(call_bias=(0.95, 0.9), call_noise=1.4),
    "half untold": Habits(told=0.5),
    "never tells": Habits(told=0.0),
    "bad days": Habits(bad_days=0.20, day_sd=0.03),
    "lay-offs": Habits(lay_offs=2),
    "easy days": Habits(told=0.5, easy_days=0.2),
    "heavy singles": Habits(reps=(1, 2, 3, 5), reserve=(1.5, 1.0)),
    "high reps": Habits(reps=(8, 10, 12)),
    "beginner": Habits(gain_a_week=(0.012, 0.008)),
}


@dataclass(frozen=True)
class Judged:
    """Errors are shares of the true maximum: mean absolute and root mean square."""

    estimates: int
    error: float
    rms: float
    bias: float
    last_set: float
    last_set_rms: float
    last_set_called: float
    last_set_called_rms: float
    covered: float
    width: float

    @property
    def better_by(self) -> float:
        """The share by which the error is below the better of the two last-set values."""
        return 1 - self.error / min(self.last_set, self.last_set_called)

    @property
    def better_by_rms(self) -> float:
        return 1 - self.rms / min(self.last_set_rms, self.last_set_called_rms)


@dataclass(frozen=True)
class JudgedLoads:
    """How far loads for a target lie from the athlete's true one: mean absolute errors of the logarithm.

    `working` from the strength that loads are asked from, `learning` from the filter, `last_session` from the best set
    of the last session by the mean of the seven equations.
    """

    loads: int
    working: float
    learning: float
    last_session: float


def judge_loads(groups: Sequence[Habits], athletes: int, first_seed: int, every: int = 1) -> JudgedLoads:
    """The errors of the load for the athlete's middle number of repetitions at two called in reserve, a day ahead."""
    working: list[float] = []
    learning: list[float] = []
    last: list[float] = []
    seeds = iter(range(first_seed, first_seed + athletes * len(groups)))
    for habits in groups:
        reps = sorted(habits.reps)[len(habits.reps) // 2]
        for seed in [next(seeds) for _ in range(athletes)]:
            one = athlete(seed, habits, BENCH.name)
            for on, truth in one.truth[SETTLING::every]:
                known = [record for record in one.records if record.on < on]
                right = true_load(seed, habits, truth, reps, CALLED)
                steady, learned = working_strength(known, BENCH, on), current_strength(known, BENCH, on)
                assert steady is not None
                assert learned is not None
                asked = steady.maximum_for(reps, CALLED).amount / multiples(reps + CALLED).mean
                working.append(_off(asked, right))
                learning.append(_off(learned.load_for(reps, CALLED).amount, right))
                last.append(_off(_best_of_last(known) / multiples(reps + CALLED).mean, right))
    return JudgedLoads(len(working), _mean_size(working), _mean_size(learning), _mean_size(last))


def _off(load: Decimal, right: float) -> float:
    return log(float(load) / right)


def _best_of_last(records: Sequence[SetRecord]) -> Decimal:
    """The best set of the last session by the mean of the seven equations, a missed single as half a repetition."""
    found = [estimate(record.done, BENCH) for record in records if record.on == records[-1].on]
    loads = [record.done.load.amount for record in records if record.on == records[-1].on and record.done.load]
    return max((one.load.amount for one in found if isinstance(one, SetEstimate)), default=min(loads))


def last_set_epley(records: Sequence[SetRecord], *, called: bool) -> float:
    """Epley's value of the last set, as printed, singles as they are; `called`: with repetitions in reserve added."""
    done = records[-1].done
    assert done.load is not None
    reps = float(done.reps)
    if called and done.effort is not None:
        reps += float(done.effort.rir)
    return float(done.load.kilograms()) * (1.0 if reps == 1 else 1 + reps / 30)


def judge(groups: Sequence[Habits], athletes: int, first_seed: int, every: int = 1) -> Judged:
    """The errors over `athletes` invented athletes of each group, judged at every so many sessions."""
    ours: list[float] = []
    plain: list[float] = []
    called: list[float] = []
    inside: list[bool] = []
    widths: list[float] = []
    seeds = iter(range(first_seed, first_seed + athletes * len(groups)))
    drawn = [athlete(next(seeds), habits, BENCH.name) for habits in groups for _ in range(athletes)]
    for one in drawn:
        for on, truth in one.truth[SETTLING::every]:
            known = [record for record in one.records if record.on <= on]
            found = current_strength(known, BENCH, on)
            assert found is not None
            low, mean, high = (float(load.kilograms()) for load in (found.low, found.one_rep_max, found.high))
            ours.append(mean / truth - 1)
            plain.append(last_set_epley(known, called=False) / truth - 1)
            called.append(last_set_epley(known, called=True) / truth - 1)
            inside.append(low <= truth <= high)
            widths.append((high - low) / mean)
    return Judged(
        len(ours), _mean_size(ours), _rms(ours), fmean(ours), _mean_size(plain), _rms(plain),
        _mean_size(called), _rms(called), fmean(inside), fmean(widths),
    )  # fmt: skip


def _mean_size(errors: Sequence[float]) -> float:
    return fmean(abs(error) for error in errors)


def _rms(errors: Sequence[float]) -> float:
    return sqrt(fmean(error * error for error in errors))
