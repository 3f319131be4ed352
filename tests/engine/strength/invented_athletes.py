"""Invented athletes whose strength is known, so that an estimate of it can be judged.

Nothing here is taken from the filter: curves are single published equations bent for each athlete, never the mean of
seven; true strength moves in phases, not by a linear drift; noise has bad days that no normal distribution has.
All of it is invented; where a size is published the line says so.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from functools import cache
from math import exp, log
from random import Random

from engine.strength.one_rep_max import Equation, raw_multiple
from engine.values.effort import Effort
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Load, Unit
from engine.values.sets import SetDone, SetRecord

STEP = 2.5
FIRST_DAY = date(2025, 1, 6)


@dataclass(frozen=True)
class Habits:
    """How a group of invented athletes trains and talks; each athlete is drawn around it.

    `call_bias`: repetitions left beyond those called, mean and SD between athletes. Published pooled mean 0.95
    (Halperin et al. 2022); -0.17 +/- 1.00 near failure in trained lifters (Refalo et al. 2023).
    """

    told: float = 0.8
    call_bias: tuple[float, float] = (0.6, 0.6)
    call_noise: float = 1.0
    day_sd: float = 0.02
    bad_days: float = 0.08
    curve_sd: float = 0.12
    reps: tuple[int, ...] = (3, 5, 5, 8, 10)
    reserve: tuple[float, float] = (2.0, 1.2)
    easy_days: float = 0.0
    lay_offs: int = 0
    gain_a_week: tuple[float, float] = (0.003, 0.004)
    sessions: int = 50


@dataclass
class Athlete:
    """One invented athlete's log of one lift, with the true maximum on each session's day."""

    records: list[SetRecord] = field(default_factory=list)
    truth: list[tuple[date, float]] = field(default_factory=list)


def athlete(seed: int, habits: Habits, lift: ExerciseName) -> Athlete:
    """One athlete, the same for the same seed."""
    chance = Random(seed)
    person = _Person(chance, habits)
    made = Athlete()
    days = _training_days(chance, habits)
    level = log(chance.uniform(50, 180))
    last = days[0]
    rate, phase = _phase(chance, habits)
    for on in days:
        gap = (on - last).days
        level += _lost(chance, gap) if gap > 14 else rate * gap / 7
        phase -= 1
        if phase <= 0:
            rate, phase = _phase(chance, habits)
        made.truth.append((on, exp(level)))
        for one in person.session(level, lift):
            place = len(made.records) + 1
            at = datetime(on.year, on.month, on.day, 18, tzinfo=UTC)
            made.records.append(SetRecord(SetId(place), one, on, at, place))
        last = on
    return made


def true_load(seed: int, habits: Habits, maximum: float, reps: int, called: Decimal) -> float:
    """The load at which the athlete of this seed, strong by so much, does the repetitions and calls so many left."""
    person = _Person(Random(seed), habits)
    left = float(called) + person.bias * min(1.0, 0.5 + float(called) / 2)
    return maximum / exp(person._log_multiple(reps + left))


class _Person:
    def __init__(self, chance: Random, habits: Habits) -> None:
        self.chance, self.habits = chance, habits
        self.equation = chance.choice(list(Equation))
        self.curve = _curve(self.equation)
        self.bend = chance.gauss(0, habits.curve_sd)
        self.bias = chance.gauss(*habits.call_bias)
        self.reserve = max(0.3, chance.gauss(*habits.reserve))
        self.told = min(1.0, max(0.0, chance.gauss(habits.told, 0.15))) if 0 < habits.told < 1 else habits.told
        self.fatigue = chance.uniform(0.003, 0.025)
        self.sets = chance.choice((3, 3, 4, 5))

    def session(self, level: float, lift: ExerciseName) -> list[SetDone]:
        """Straight sets at one load, chosen by feel; a set ends at its repetitions or where no more go."""
        chance, habits = self.chance, self.habits
        today = level + chance.gauss(0, habits.day_sd)
        if chance.random() < habits.bad_days:
            today -= chance.uniform(0.03, 0.12)
        reps = chance.choice(habits.reps)
        wanted = reps + max(0.0, chance.gauss(self.reserve, 1.0))
        if chance.random() < habits.easy_days:
            wanted += 4
        believed = level + chance.gauss(0, 0.02)
        load = STEP * round(exp(believed - self._log_multiple(wanted)) / STEP)
        done: list[SetDone] = []
        for number in range(self.sets):
            possible = self._possible(today - self.fatigue * number, max(STEP, load))
            done.append(self._told(lift, load, reps, possible))
            if done[-1].missed:
                break
        return done

    def _told(self, lift: ExerciseName, load: float, reps: int, possible: int) -> SetDone:
        chance = self.chance
        mass = Load(Decimal(str(max(STEP, load))), Unit.KG)
        if possible < reps:
            return SetDone(lift, possible, mass, missed=True)
        if chance.random() >= self.told:
            return SetDone(lift, reps, mass)
        left = possible - reps
        called = left - self.bias * min(1.0, 0.5 + left / 2) + chance.gauss(0, self.habits.call_noise + 0.2 * left)
        rounded = min(6.0, max(0.0, round(called * 2) / 2))
        return SetDone(lift, reps, mass, Effort(Decimal(str(rounded))))

    def _possible(self, today: float, load: float) -> int:
        """Whole repetitions this person has in him at a load today.

        The equations were fitted to whole repetitions completed, so on average they hold at these: hence rounded, not
        cut. Noise on retest 0.7 to 1.1 repetitions (Mitter et al. 2022).
        """
        room = today - log(load)
        if room < 0:
            return 0
        reps = 1 + bisect_right(self.curve, room / (1 + self.bend)) / 10
        return round(max(1.0, reps + self.chance.gauss(0, 0.4 + 0.04 * reps) if reps > 1.5 else reps))

    def _log_multiple(self, reps: float) -> float:
        """This person's curve at a tenth of a repetition."""
        tenth = round(10 * (min(reps, 30.0) - 1))
        return (1 + self.bend) * (self.curve[tenth - 1] if tenth > 0 else 0.0)


@cache
def _curve(equation: Equation) -> tuple[float, ...]:
    """One equation's logarithm at 1.1, 1.2, ... 30 repetitions; from the single, the maximum itself, a line to two."""

    def at(reps: float) -> float:
        return log(float(raw_multiple(equation, Decimal(str(round(reps, 1))))))

    two = at(2)
    return tuple(two * tenth / 10 if tenth < 10 else at(1 + tenth / 10) for tenth in range(1, 291))


def _training_days(chance: Random, habits: Habits) -> list[date]:
    pauses = set(chance.sample(range(10, habits.sessions - 5), habits.lay_offs))
    days, on = [], FIRST_DAY
    for number in range(habits.sessions):
        days.append(on)
        on += timedelta(days=chance.randint(21, 60) if number in pauses else chance.choice((2, 3, 4, 7)))
    return days


def _phase(chance: Random, habits: Habits) -> tuple[float, int]:
    """A stretch of sessions with one rate of gain; a quarter of them stand still."""
    rate = 0.0 if chance.random() < 0.25 else chance.gauss(*habits.gain_a_week)
    return rate, chance.randint(6, 18)


def _lost(chance: Random, gap: int) -> float:
    """What a lay-off takes: nothing to about 0.3 % a day past two weeks, as the published studies scatter."""
    return -chance.uniform(0, 0.003) * (gap - 14)
