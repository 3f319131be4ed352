"""A plan checked before anyone lifts it: each finding with its line and what to do.

errors     unknown exercises, numbers that cannot be
warnings   weekly sets outside the targets, sessions too close for a muscle, sets to failure that want a spotter,
           equipment that is not there, sessions that are too long
notes      a rep-range mix on one side, a long block without a deload, steps of more than a tenth

Warnings and notes never block. Thresholds without a source beside them are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, field
from decimal import Decimal

from engine.catalogue.catalogue import Catalogue
from engine.plan.finish import EVERY_WEEK, SlotPlace
from engine.plan.limits import impossible
from engine.plan.session_time import planned_sets
from engine.plan.week_view import DayPlace, block_cautions, day_minutes, mean_volume, week_volume
from engine.values.exercise import Equipment, FailureGuard, Loading
from engine.values.load import Load, plain
from engine.values.muscles import Muscle
from engine.values.plan import Block, MaxReps, Plan, Slot, TrainingDay, VolumeTarget, WeekKind
from engine.values.problem import Problem, Severity
from engine.volume.muscle_week import MuscleWeek, RepBand, Standing

LONG_SESSION_MINUTES = 90
"""Programmes of more than an hour a session lose more people: older ACSM advice. 90 leaves room for warm-ups."""

LONGEST_WITHOUT_DELOAD = 8
"""Athletes deload every 5.6 (SD 2.3) weeks: Rogerson, Bell et al. 2024, Sports Med Open. One SD above."""

STEEPEST_STEP = Decimal("0.10")
"""Steps of 2 to 10 per cent: ACSM 2009, Med Sci Sports Exerc 41:687-708."""

MANY_SETS = Decimal(8)
ONE_SIDED = frozenset({RepBand.HEAVY, RepBand.LIGHT, RepBand.VERY_LIGHT})
"""From so many weekly sets on, all of them in one of these rep bands is worth a note."""


@dataclass(frozen=True, slots=True)
class PlanCheck:
    """What a plan is checked against.

    `lines` tells the line of a slot; `equipment` None: all of it is there; `minutes` is the longest a session may take.
    """

    plan: Plan
    catalogue: Catalogue
    lines: Mapping[SlotPlace, int] = field(default_factory=dict)
    equipment: Collection[Equipment] | None = None
    minutes: int = LONG_SESSION_MINUTES

    def line(self, block: int, kind: int, day: int, slot: int = 0) -> int:
        return self.lines.get((block, kind, day, slot), 0)


def check_plan(
    plan: Plan,
    catalogue: Catalogue,
    *,
    lines: Mapping[SlotPlace, int] | None = None,
    equipment: Collection[Equipment] | None = None,
    minutes: int = LONG_SESSION_MINUTES,
) -> tuple[Problem, ...]:
    """The findings on a plan, errors first, then by line.

    Shape: `lines` are those of a parsed plan (`dict(parsed.slot_lines)`); without them a finding has line 0.
    """
    check = PlanCheck(plan, catalogue, lines or {}, equipment, minutes)
    found = (finding for at, block in enumerate(plan.blocks) for finding in _block(check, at, block))
    order = list(Severity)
    unique = dict.fromkeys(found)
    return tuple(sorted(unique, key=lambda problem: (order.index(problem.severity), problem.line)))


def _block(check: PlanCheck, at: int, block: Block) -> Iterator[Problem]:
    mean = mean_volume(block, check.catalogue.exercises)
    for kind_at, kind in enumerate(block.kinds):
        for day_at, day in enumerate(kind.days):
            yield from _day(check, (at, kind_at, day_at), day)
        yield from _volume(check, at, kind_at, mean)
    yield from _spacing(check, at, block)
    if block.weeks > LONGEST_WITHOUT_DELOAD and not block.deload_weeks:
        read = f"{block.label}: {block.weeks} weeks without a deload"
        yield _note(0, read, "a lighter week every four to eight", f"deload week {LONGEST_WITHOUT_DELOAD}")


def _day(check: PlanCheck, place: tuple[int, int, int], day: TrainingDay) -> Iterator[Problem]:
    for slot_at, slot in enumerate(day.slots):
        yield from _slot(check, check.line(*place, slot_at), slot)
    minutes = day_minutes(day, check.catalogue.exercises)
    if minutes > check.minutes:
        read, expected = f"{day.label}: about {minutes} minutes", f"up to {check.minutes}"
        yield _warning(check.line(*place), read, expected, "pair two lifts (A1, A2), or take sets off")


def _slot(check: PlanCheck, line: int, slot: Slot) -> Iterator[Problem]:
    exercise = check.catalogue.get(slot.exercise)
    if exercise is None:
        yield Problem(line, slot.exercise, "an exercise I know", "another name, or add the exercise first")
        return
    if reason := impossible(slot):
        yield Problem(line, reason.read, reason.expected, reason.try_instead)
    if isinstance(slot.target, MaxReps) and exercise.guard is FailureGuard.SPOTTER_OR_SAFETIES:
        read = f"{slot.exercise} to maximum reps"
        yield _warning(line, read, "a spotter or safety pins", f"cue: spotter or pins, or {slot.exercise} 3x5")
    if check.equipment is not None and exercise.equipment not in check.equipment:
        yield _warning(
            line, slot.exercise, f"equipment that is there, not {exercise.equipment.value}", _instead(check, slot)
        )
    yield from _step(line, slot, exercise.loading)


def _instead(check: PlanCheck, slot: Slot) -> str:
    exercise = check.catalogue.exercises[slot.exercise]
    known = (check.catalogue.get(name) for name in (*slot.swaps, *exercise.swaps))
    can_be_done = (other.name for other in known if other and other.equipment in (check.equipment or ()))
    return next(can_be_done, "another exercise")


def _step(line: int, slot: Slot, loading: Loading) -> Iterator[Problem]:
    step = getattr(slot.scheme, "step", None)
    load = slot.load
    if not isinstance(step, Load) or not isinstance(load, Load) or load.amount <= 0 or loading is not Loading.BAR:
        return
    share = step.amount / load.amount
    if step.unit is load.unit and share > STEEPEST_STEP:
        smaller = load.amount * STEEPEST_STEP / 2
        read = f"+{step} on {load} is {plain((share * 100).quantize(Decimal(1)))} %"
        yield _note(
            line, read, "steps of 2 to 10 %", f"then +{plain(smaller.quantize(Decimal('0.5')))} {step.unit.value}"
        )


def _volume(check: PlanCheck, at: int, kind_at: int, mean: Mapping[Muscle, Decimal]) -> Iterator[Problem]:
    block = check.plan.blocks[at]
    kind = block.kinds[kind_at]
    for muscle, week in week_volume(kind, check.catalogue.exercises, check.plan.targets).items():
        line = _line_of_muscle(check, at, kind_at, muscle)
        if week.target is not None and week.standing is not Standing.WITHIN:
            average = mean.get(muscle, Decimal(0))
            evened = len(block.kinds) > 1 and week.target.low <= average <= week.target.high
            yield _off_target(line, kind, muscle, week, week.target, evened=evened)
        if len(week.reps) == 1 and week.fractional >= MANY_SETS and ONE_SIDED.issuperset(week.reps):
            band = next(iter(week.reps)).value
            read = f"{muscle.value}: all {plain(week.fractional)} weekly sets at {band} reps"
            yield _note(line, read, "some work in another rep range", "one exercise at 6-12 or 12-20 reps")


def _off_target(
    line: int, kind: WeekKind, muscle: Muscle, week: MuscleWeek, target: VolumeTarget, *, evened: bool
) -> Problem:
    aim = f"your target is {plain(target.low)}-{plain(target.high)}"
    read = f"{muscle.value}: {counted_sets(week.fractional)} {_in_week(kind)}"
    if evened:
        return _note(line, read, f"{aim}, and over the weeks in turn it is met", "leave it, or move sets between them")
    return _warning(line, read, aim, f"{'more' if week.standing is Standing.BELOW else 'less'} {muscle.value}")


def counted_sets(sets: Decimal) -> str:
    """1 set, 4.5 sets."""
    return f"{plain(sets)} set{'s' * (sets != 1)}"


def _in_week(kind: WeekKind) -> str:
    return "a week" if kind.label == EVERY_WEEK else f"in week {kind.label}"


def _line_of_muscle(check: PlanCheck, block: int, kind: int, muscle: Muscle) -> int:
    """The line that works the muscle most; 0 where none does."""
    best, line = 0, 0
    for day_at, day in enumerate(check.plan.blocks[block].kinds[kind].days):
        for slot_at, slot in enumerate(day.slots):
            exercise = check.catalogue.get(slot.exercise)
            if exercise and muscle in exercise.prime and planned_sets(slot) > best:
                best, line = planned_sets(slot), check.line(block, kind, day_at, slot_at)
    return line


def _spacing(check: PlanCheck, at: int, block: Block) -> Iterator[Problem]:
    for found in block_cautions(block, check.catalogue.exercises):
        caution = found.caution
        line = _line_of_exercise(check, at, found.later, caution.after)
        days = f"{_told(block, found.earlier)}, then {_told(block, found.later)}"
        yield _warning(line, f"{days}: {caution.reason}", f"{caution.enough:.0f} hours between", caution.remedy)


def _told(block: Block, place: DayPlace) -> str:
    return block.kinds[place.kind].days[place.day].label


def _line_of_exercise(check: PlanCheck, block: int, place: DayPlace, name: str) -> int:
    slots = check.plan.blocks[block].kinds[place.kind].days[place.day].slots
    at = next((at for at, slot in enumerate(slots) if slot.exercise == name), 0)
    return check.line(block, place.kind, place.day, at)


def _warning(line: int, read: str, expected: str, try_instead: str) -> Problem:
    return Problem(line, read, expected, try_instead, Severity.WARNING)


def _note(line: int, read: str, expected: str, try_instead: str) -> Problem:
    return Problem(line, read, expected, try_instead, Severity.NOTE)
