"""The progression rule of a slot, from what its line says; `defaults.py` states what holds where it says nothing."""

from __future__ import annotations

from decimal import Decimal

from engine.plan.defaults import BACK_OFF_SHARE, MISSES, RESET_SHARE
from engine.plan.parts import (
    AtTop,
    BackOffs,
    ByEffort,
    Longer,
    Misses,
    Part,
    RepGain,
    SetsUpTo,
    Still,
    TotalGain,
    TotalReps,
    Wave,
    WhenMade,
)
from engine.plan.report import Bag
from engine.plan.slot_load import Loads, default_step, load_of
from engine.values.exercise import Exercise, Measure
from engine.values.load import Load
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Target
from engine.values.schemes import (
    DoubleProgression,
    EffortTarget,
    Hold,
    LoadStep,
    PercentageWave,
    RepGoal,
    RepTotal,
    Scheme,
    SetWave,
    TimeOrDistance,
    TopSetBackOff,
)

GROWTH = (SetsUpTo, RepGain, Wave, ByEffort, BackOffs, Longer, Still)


class SchemeReader:
    """Reads one slot's rule. `sets` and `target` are what the line says besides."""

    def __init__(self, bag: Bag, exercise: Exercise, loads: Loads, sets: int, target: Target) -> None:
        self.bag, self.exercise, self.loads, self.sets, self.target = bag, exercise, loads, sets, target
        self.report = bag.report

    def read(self) -> tuple[Scheme, Target] | None:
        """The rule, and the target, which a rep gain with a bound may widen to a range; None where it cannot be."""
        total = self.bag.one("progression", TotalReps)
        if total:
            return self._rep_total(*total)
        named = [placed for placed in self.bag.placed if isinstance(placed.part, GROWTH)]
        if len(named) > 1:
            read = self.report.text[named[1].at :].split(",")[0]
            self.report.error(named[1].at, read, "one progression on a line", "leave out one of the two")
            return None
        return self._named(named[0].part, named[0].at) if named else self._from_conditions()

    def _named(self, growth: Part, at: int) -> tuple[Scheme, Target] | None:
        match growth:
            case SetsUpTo():
                return self._set_wave(growth, at)
            case RepGain():
                return self._rep_gain(growth, at)
            case Wave():
                return self._wave(growth, at)
            case ByEffort():
                return EffortTarget(growth.effort), self.target
            case BackOffs():
                kept = growth.share or BACK_OFF_SHARE
                return TopSetBackOff(self._step(at), growth.count, kept, growth.reps), self.target
            case Longer():
                return self._longer(growth, at)
            case _:
                return Hold(), self.target

    def _wave(self, growth: Wave, at: int) -> tuple[Scheme, Target] | None:
        maximum = load_of(growth.maximum, self.exercise, self.loads.unit, at, self.report)
        return (PercentageWave(maximum, growth.shares, self._step(at)), self.target) if maximum else None

    def _step(self, at: int) -> Load:
        if self.loads.step is not None:
            return self.loads.step
        step = default_step(self.exercise, self.loads)
        self.report.note(at, "", f"a step; none is written, so it is +{step}", f"then +{step}")
        return step

    def _set_wave(self, growth: SetsUpTo, at: int) -> tuple[Scheme, Target] | None:
        if growth.most <= self.sets or growth.first not in (None, self.sets):
            example = f"add a set each week up to {self.sets + 2}, then +2.5 kg"
            self.report.error(
                at, f"up to {growth.most} sets", f"more sets than the {self.sets} it begins with", example
            )
            return None
        return SetWave(growth.most, self._step(at)), self.target

    def _rep_gain(self, growth: RepGain, at: int) -> tuple[Scheme, Target] | None:
        low = self.target.low if isinstance(self.target, RepRange) else getattr(self.target, "count", 0)
        if isinstance(self.target, Seconds | Metres):
            self.report.error(at, "+1 rep", "more seconds or metres", "+5 s up to 60 s")
            return None
        if growth.most is None and (self.loads.step is None or isinstance(self.target, RepRange)):
            return (
                (DoubleProgression(self.loads.step), self.target)
                if self.loads.step
                else (RepGoal(growth.gain), self.target)
            )
        high = growth.most
        if high is None or not 1 <= low < high or (isinstance(self.target, RepRange) and self.target.high != high):
            self.report.error(
                at, "+1 rep", "one rule: reps up to a bound and then load, or reps alone", "3x8-12, then +2.5 kg"
            )
            return None
        return DoubleProgression(self._step(at)), RepRange(int(low), high)

    def _rep_total(self, growth: TotalReps, at: int) -> tuple[Scheme, Target] | None:
        if isinstance(self.target, Seconds | Metres) or growth.total < self.sets:
            self.report.error(
                at, f"{growth.total} reps in all", "at least one rep for each set", "30 reps in all, then +5 kg"
            )
            return None
        gains = [placed.part.gain for placed in self.bag.placed if isinstance(placed.part, TotalGain | RepGain)]
        return RepTotal(growth.total, self.loads.step, gains[0] if gains else 1), self.target

    def _longer(self, growth: Longer, at: int) -> tuple[Scheme, Target] | None:
        kind = Seconds if growth.timed else Metres
        sign = "s" if growth.timed else "m"
        bound = growth.bound
        if not isinstance(self.target, kind) or bound is None or bound <= self.target.count or growth.gain <= 0:
            start = self.target.count if isinstance(self.target, kind) else Decimal(30)
            example = f"3x{start} {sign}, +5 {sign} up to {start + 15} {sign}"
            self.report.error(at, f"+{growth.gain} {sign}", f"a start in {sign} and a bound above it", example)
            return None
        return TimeOrDistance(growth.gain, bound, self.loads.step), self.target

    def _from_conditions(self) -> tuple[Scheme, Target] | None:
        """The rule where the line holds no more than a step and when it is taken, or nothing."""
        top, misses = self._top(), self.bag.one("rule for misses", Misses)
        if top and not isinstance(self.target, RepRange):
            self.report.error(top[1], "the top of the range", "a rep range", "3x8-12, then +2.5 kg")
            return None
        if self.loads.step is None and not (top or misses or self.bag.has(WhenMade, AtTop)):
            return self._nothing_said()
        if isinstance(self.target, MaxReps):
            expected = "what goes up on sets of maximum reps"
            self.report.error(0, f"+{self.loads.step}", expected, "+1 rep each set, or 30 reps in all, then +2.5 kg")
            return None
        if top or (isinstance(self.target, RepRange) and not misses and not self.bag.has(WhenMade)):
            return DoubleProgression(self._step(0)), self.target
        return self._load_step(misses[0] if misses else None), self.target

    def _top(self) -> tuple[AtTop, int] | None:
        """The condition that ends a range; on sets of one number of reps, all of them at that number is no range."""
        top = self.bag.one("condition", AtTop)
        if top is None or top[0].reps is None or top[0].reps == getattr(self.target, "high", None):
            return top
        if isinstance(self.target, Reps) and top[0].reps == self.target.count:
            return None
        self.report.error(top[1], f"{top[0].reps} reps", "the top of the rep range", "3x8-12, then +2.5 kg")
        return None

    def _load_step(self, misses: Misses | None) -> LoadStep:
        if misses is None:
            return LoadStep(self._step(0), MISSES, RESET_SHARE)
        return LoadStep(self._step(0), misses.count, RESET_SHARE if misses.share is None else misses.share)

    def _nothing_said(self) -> tuple[Scheme, Target]:
        scheme = self._usual()
        self.report.note(
            0, self.exercise.name, f"a progression; none is written, so it is “{_in_words(scheme)}”", _in_words(scheme)
        )
        return scheme, self.target

    def _usual(self) -> Scheme:
        if isinstance(self.target, Seconds | Metres) or self.exercise.measure is not Measure.REPS:
            return Hold()
        if isinstance(self.target, MaxReps) or self.loads.load is None:
            return RepGoal()
        step = default_step(self.exercise, self.loads)
        return DoubleProgression(step) if isinstance(self.target, RepRange) else LoadStep(step, MISSES, RESET_SHARE)


def _in_words(scheme: Scheme) -> str:
    match scheme:
        case Hold():
            return "no progression"
        case RepGoal():
            return "+1 rep each set"
        case DoubleProgression():
            return f"then +{scheme.step}"
        case LoadStep():
            return f"+{scheme.step} when all reps are made"
        case _:
            raise AssertionError(f"not a rule for a line that says nothing: {scheme}")
