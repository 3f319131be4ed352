"""Weekly sets for each muscle: what was done or is planned, against the targets of the plan.

Only hard sets count, warm-ups never. A direct set counts 1 for each prime mover; fractional counting adds half for
each secondary mover.
A set of a one-sided exercise told once stands for both sides and is one set; a set told for one side is half a set,
so that left and right told apart make one set, and extra work for one side counts half.
Tonnage counts every set but warm-ups, easy ones and drops too, for prime movers only.

Source: counting 1 and 0.5: Pelland et al. 2024 (preprint, 67 studies); hard sets only: Baz-Valle et al. 2022,
J Hum Kinet 81:199-210. Halves for one side: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import date
from decimal import Decimal
from typing import assert_never

from engine.strength.mass import volume_load
from engine.values.exercise import Exercise
from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load
from engine.values.muscles import Muscle
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Slot, Target, TrainingDay, VolumeTarget
from engine.values.sets import HARD_SET_RIR, SetDone, SetRecord
from engine.volume.muscle_week import NONE, DayWork, MuscleWeek, RepBand

ONE = Decimal(1)
HALF = Decimal("0.5")
SECONDARY = Decimal("0.5")
"""What a set is worth to a secondary mover. Source: Pelland et al. 2024."""


def tally(
    records: Iterable[SetRecord],
    exercises: Mapping[ExerciseName, Exercise],
    targets: Mapping[Muscle, VolumeTarget] | None = None,
    body_weight: Load | None = None,
) -> Mapping[Muscle, MuscleWeek]:
    """Each muscle's week, in the order of Muscle: those that were worked or have a target.

    Shape: `records` are the sets of the week asked for, in any order. Sets of exercises that `exercises` does not
    know are not counted: `uncounted` names them.
    """
    return tally_work(_work_done(records, exercises, body_weight), exercises, targets)


def tally_each(
    records: Iterable[tuple[AthleteId, SetRecord]],
    exercises: Mapping[ExerciseName, Exercise],
    targets: Mapping[AthleteId, Mapping[Muscle, VolumeTarget]] | None = None,
    body_weights: Mapping[AthleteId, Load] | None = None,
) -> Mapping[AthleteId, Mapping[Muscle, MuscleWeek]]:
    """The weeks of several athletes at once: those with a set or with targets."""
    targets, body_weights = targets or {}, body_weights or {}
    by_athlete: dict[AthleteId, list[SetRecord]] = {athlete: [] for athlete in targets}
    for athlete, record in records:
        by_athlete.setdefault(athlete, []).append(record)
    return {
        athlete: tally(week, exercises, targets.get(athlete), body_weights.get(athlete))
        for athlete, week in by_athlete.items()
    }


def tally_plan(
    days: Sequence[TrainingDay],
    exercises: Mapping[ExerciseName, Exercise],
    targets: Mapping[Muscle, VolumeTarget] | None = None,
    sets_of: Callable[[Slot], int] = lambda slot: slot.sets,
) -> Mapping[Muscle, MuscleWeek]:
    """Each muscle's planned week.

    Shape: `days` are the training days of one week; `sets_of` tells the sets of a slot in that week, for waves and
    deloads. A slot planned at more than 4 reps in reserve is not hard. Planned weeks have no tonnage.
    """
    work = (_work_planned(number, slot, sets_of(slot)) for number, day in enumerate(days) for slot in day.slots)
    return tally_work(work, exercises, targets)


def tally_work(
    work: Iterable[DayWork],
    exercises: Mapping[ExerciseName, Exercise],
    targets: Mapping[Muscle, VolumeTarget] | None = None,
) -> Mapping[Muscle, MuscleWeek]:
    """Each muscle's week from work already summed by exercise and day: what the other tallies end in."""
    targets = targets or {}
    sums: dict[Muscle, _Sum] = {}
    for part in work:
        exercise = exercises.get(part.exercise)
        if exercise is None:
            continue
        for muscle in exercise.prime:
            sums.setdefault(muscle, _Sum()).add(part, prime=True)
        for muscle in exercise.secondary:
            if muscle not in exercise.prime:
                sums.setdefault(muscle, _Sum()).add(part, prime=False)
    worked = {muscle: total for muscle, total in sums.items() if total.counts}
    return {
        muscle: worked.get(muscle, _Sum()).as_week(targets.get(muscle))
        for muscle in Muscle
        if muscle in worked or muscle in targets
    }


def uncounted(records: Iterable[SetRecord], exercises: Mapping[ExerciseName, Exercise]) -> tuple[SetRecord, ...]:
    """The sets of exercises that are not known, which no tally counts."""
    return tuple(record for record in records if record.done.exercise not in exercises)


def rep_band(reps: int) -> RepBand:
    """The band of a number of repetitions."""
    if reps <= 5:
        return RepBand.HEAVY
    if reps <= 12:
        return RepBand.MODERATE
    return RepBand.LIGHT if reps <= 20 else RepBand.VERY_LIGHT


def sets_counted(done: SetDone) -> Decimal:
    """How many hard sets one performed set is: one, half for one side alone, none where it is not hard."""
    if not done.is_hard:
        return NONE
    return ONE if done.side is None else HALF


class _Sum:
    """A running sum for one muscle; lives only inside one tally."""

    __slots__ = ("bands", "days", "direct", "direct_days", "fractional", "tonnage", "unweighed")

    def __init__(self) -> None:
        self.direct = self.fractional = self.tonnage = NONE
        self.days: set[date | int] = set()
        self.direct_days: set[date | int] = set()
        self.bands: dict[RepBand, Decimal] = {}
        self.unweighed = 0

    def add(self, part: DayWork, *, prime: bool) -> None:
        worth = ONE if prime else SECONDARY
        if prime:
            self.direct += part.hard
            self.tonnage += part.tonnage
            self.unweighed += part.unweighed
        if part.hard:
            self.fractional += worth * part.hard
            self.bands[part.band] = self.bands.get(part.band, NONE) + worth * part.hard
            self.days.add(part.day)
            if prime:
                self.direct_days.add(part.day)

    @property
    def counts(self) -> bool:
        return bool(self.fractional or self.tonnage or self.unweighed)

    def as_week(self, target: VolumeTarget | None) -> MuscleWeek:
        return MuscleWeek(
            direct=self.direct,
            fractional=self.fractional,
            days=len(self.days),
            direct_days=len(self.direct_days),
            reps={band: self.bands[band] for band in RepBand if band in self.bands},
            tonnage=self.tonnage,
            unweighed=self.unweighed,
            target=target,
        )


def _work_done(
    records: Iterable[SetRecord], exercises: Mapping[ExerciseName, Exercise], body_weight: Load | None
) -> Iterable[DayWork]:
    """The records summed by exercise, day and rep band, so that muscles are walked once a group, not once a set."""
    parts: dict[tuple[ExerciseName, date, RepBand], list[SetDone]] = {}
    for record in records:
        done = record.done
        if done.counts_as_work and done.exercise in exercises:
            parts.setdefault((done.exercise, record.on, band_of(done)), []).append(done)
    for (name, day, band), sets in parts.items():
        loads = [volume_load(done, exercises[name], body_weight) for done in sets]
        yield DayWork(
            exercise=name,
            day=day,
            hard=sum((sets_counted(done) for done in sets), NONE),
            band=band,
            tonnage=sum((load for load in loads if load is not None), NONE),
            unweighed=sum(load is None and _has_repetitions(done) for load, done in zip(loads, sets, strict=True)),
        )


def band_of(done: SetDone) -> RepBand:
    """The rep band of a performed set."""
    return rep_band(done.reps) if _has_repetitions(done) else RepBand.UNCOUNTED


def band_planned(target: Target) -> RepBand:
    """The rep band of a planned target; a range stands in the band of its middle."""
    match target:
        case Reps(count):
            return rep_band(count)
        case RepRange(low, high):
            return rep_band((low + high) // 2)
        case MaxReps() | Seconds() | Metres():
            return RepBand.UNCOUNTED
        case _:
            assert_never(target)


def _has_repetitions(done: SetDone) -> bool:
    return done.seconds is None and done.metres is None


def _work_planned(day: int, slot: Slot, sets: int) -> DayWork:
    hard = slot.effort is None or slot.effort.rir <= HARD_SET_RIR
    return DayWork(slot.exercise, day, Decimal(sets) if hard else NONE, band_planned(slot.target))
