"""What a change of the plan would bring, before and after, without saving: sets for each muscle, spacing, minutes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from decimal import Decimal

from engine.catalogue.catalogue import Catalogue
from engine.plan.changes import SlotAt, new_slot, slot_at, slot_with_exercise, slot_with_sets, with_slots
from engine.plan.finish import DAY_NAMES
from engine.plan.limits import MOST_SETS
from engine.plan.week_view import DayPlace, PlanCaution, block_cautions, day_minutes, mean_volume, week_volume
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.muscles import Muscle
from engine.values.plan import Block, Plan, Slot, TrainingDay, VolumeTarget, Weekday, WeekKind
from engine.values.problem import Problem


@dataclass(frozen=True, slots=True)
class BlockView:
    """One block at a glance.

    Units: `volume` in fractional sets a week, the mean over the week kinds, `weekly` the same in each of them;
    `minutes` for each training day.
    """

    volume: Mapping[Muscle, Decimal]
    cautions: tuple[PlanCaution, ...]
    minutes: Mapping[DayPlace, int]
    weekly: tuple[Mapping[Muscle, Decimal], ...]

    def weeks_of(self, muscle: Muscle) -> tuple[Decimal, ...]:
        """The muscle's sets in each week kind."""
        return tuple(week.get(muscle, Decimal(0)) for week in self.weekly)


@dataclass(frozen=True, slots=True)
class WhatIf:
    """A changed plan that is not saved, and one block of it before and after."""

    plan: Plan
    block: int
    before: BlockView
    after: BlockView

    @property
    def muscles_changed(self) -> tuple[tuple[Muscle, Decimal, Decimal], ...]:
        """Each muscle whose weekly sets change, with the sets before and after, in the order of Muscle."""
        zero = Decimal(0)
        pairs = (
            (muscle, self.before.volume.get(muscle, zero), self.after.volume.get(muscle, zero)) for muscle in Muscle
        )
        return tuple(pair for pair in pairs if pair[1] != pair[2])

    @property
    def cautions_added(self) -> tuple[PlanCaution, ...]:
        """The cautions that the change brings."""
        had = set(map(_key, self.before.cautions))
        return tuple(caution for caution in self.after.cautions if _key(caution) not in had)

    @property
    def cautions_gone(self) -> tuple[PlanCaution, ...]:
        """The cautions that the change takes away."""
        left = set(map(_key, self.after.cautions))
        return tuple(caution for caution in self.before.cautions if _key(caution) not in left)

    @property
    def minutes_changed(self) -> tuple[tuple[DayPlace, int, int], ...]:
        """Each training day whose length changes, with the minutes before and after."""
        days = self.before.minutes
        return tuple((at, days[at], now) for at, now in self.after.minutes.items() if at in days and days[at] != now)

    def off_target(self, targets: Mapping[Muscle, VolumeTarget]) -> tuple[Muscle, ...]:
        """The muscles that the change takes out of their target range."""
        return tuple(
            muscle
            for muscle, before, after in self.muscles_changed
            if muscle in targets and _within(before, targets[muscle]) and not _within(after, targets[muscle])
        )


def compared(before: Plan, after: Plan, block: int, catalogue: Catalogue) -> WhatIf:
    """One block before and after a change."""
    return WhatIf(after, block, _view(before.blocks[block], catalogue), _view(after.blocks[block], catalogue))


def if_swapped(
    plan: Plan, block: int, old: ExerciseName, new: ExerciseName, catalogue: Catalogue, unit: Unit
) -> WhatIf | Problem:
    """What swapping one exercise for another throughout a block would bring.

    Errors: a Problem where the block does not hold the old exercise, the catalogue not the new, or one is counted
    in reps and the other in time.
    """
    places = places_of(plan, block, old)
    exercise = catalogue.get(new)
    if not places:
        return Problem(0, old, f"an exercise of {plan.blocks[block].label}", "swap one that the plan holds")
    if exercise is None:
        return Problem(0, new, "an exercise I know", "another name, or add the exercise first")
    swapped = {}
    for place in places:
        slot = slot_at(plan, place)
        told = slot.load.unit if isinstance(slot.load, Load) else unit
        swapped[place] = slot_with_exercise(slot, exercise, told)
    if None in swapped.values():
        return Problem(0, new, f"an exercise that is counted like {old}", "one that takes reps, or time, as it does")
    return compared(plan, with_slots(plan, swapped), block, catalogue)


def if_sets_added(
    plan: Plan, block: int, name: ExerciseName, more: int, catalogue: Catalogue, unit: Unit = Unit.KG
) -> WhatIf | Problem:
    """What adding sets to each slot of an exercise in a block would bring; `more` below 0 takes them off.

    An exercise that the block lacks comes in as a slot of its own, on the day where spacing and then time suffer least.
    Errors: a Problem where there is nothing to take off, or the catalogue does not hold the exercise.
    """
    places = places_of(plan, block, name)
    exercise = catalogue.get(name)
    if not places and (more < 0 or exercise is None):
        return Problem(0, name, f"an exercise of {plan.blocks[block].label}", "name one that the plan holds")
    if not 1 <= abs(more) <= MOST_SETS:
        return Problem(0, f"{more:+d} sets", f"1 to {MOST_SETS} sets", f"2 sets of {name}")
    if not places and exercise is not None:
        return _put_in(plan, block, new_slot(exercise, more, unit), catalogue)
    changed = {place: slot_with_sets(slot_at(plan, place), more) for place in places}
    return compared(plan, with_slots(plan, changed), block, catalogue)


def _put_in(plan: Plan, block: int, slot: Slot, catalogue: Catalogue) -> WhatIf:
    """The slot at the end of one day, in every week kind that has that day."""
    kinds = plan.blocks[block].kinds
    found = [
        compared(plan, with_slots(plan, dict.fromkeys(ends, slot)), block, catalogue)
        for at in range(max(len(kind.days) for kind in kinds))
        if (ends := [_end(block, kind_at, at, kind) for kind_at, kind in enumerate(kinds) if at < len(kind.days)])
    ]
    return min(found, key=lambda one: (len(one.cautions_added), max(one.after.minutes.values(), default=0)))


def _end(block: int, kind_at: int, day_at: int, kind: WeekKind) -> SlotAt:
    return SlotAt(block, kind_at, day_at, len(kind.days[day_at].slots))


def if_dropped(plan: Plan, block: int, name: ExerciseName, catalogue: Catalogue) -> WhatIf | Problem:
    """What leaving an exercise out of a block would bring.

    Errors: a Problem where the block does not hold the exercise.
    """
    places = places_of(plan, block, name)
    if not places:
        return Problem(0, name, f"an exercise of {plan.blocks[block].label}", "name one that the plan holds")
    return compared(plan, with_slots(plan, dict.fromkeys(places)), block, catalogue)


def if_moved(plan: Plan, block: int, old: Weekday, new: Weekday, catalogue: Catalogue) -> WhatIf | Problem:
    """What training the sessions of one weekday on another would bring, in every week of a block.

    Errors: a Problem where the block has no session on the old day, or has one on the new day already.
    """
    kinds = plan.blocks[block].kinds
    if not any(day.weekday is old for kind in kinds for day in kind.days):
        trained = {day.weekday for kind in kinds for day in kind.days if day.weekday is not None}
        known = ", ".join(day.name.lower() for day in sorted(trained, key=lambda one: one.value))
        return Problem(0, old.name.lower(), f"a day with a session: {known or 'none has a weekday'}", "another day")
    taken = [
        kind
        for kind in kinds
        if any(day.weekday is old for day in kind.days) and any(day.weekday is new for day in kind.days)
    ]
    if taken:
        return Problem(0, new.name.lower(), "a day without a session", f"another day than {new.name.lower()}")
    moved = tuple(replace(kind, days=tuple(_on_day(day, old, new) for day in kind.days)) for kind in kinds)
    blocks = list(plan.blocks)
    blocks[block] = replace(blocks[block], kinds=moved)
    return compared(plan, replace(plan, blocks=tuple(blocks)), block, catalogue)


def _on_day(day: TrainingDay, old: Weekday, new: Weekday) -> TrainingDay:
    """The day as it is, or on the new weekday where it was on the old; a label that was the day's name goes too."""
    if day.weekday is not old:
        return day
    return replace(day, weekday=new, label=DAY_NAMES[new] if day.label == DAY_NAMES[old] else day.label)


def places_of(plan: Plan, block: int, name: ExerciseName) -> tuple[SlotAt, ...]:
    """Where a block plans an exercise."""
    return tuple(
        SlotAt(block, kind_at, day_at, slot_at_)
        for kind_at, kind in enumerate(plan.blocks[block].kinds)
        for day_at, day in enumerate(kind.days)
        for slot_at_, slot in enumerate(day.slots)
        if slot.exercise == name
    )


def _view(block: Block, catalogue: Catalogue) -> BlockView:
    exercises = catalogue.exercises
    minutes = {
        DayPlace(kind_at, day_at): day_minutes(day, exercises)
        for kind_at, kind in enumerate(block.kinds)
        for day_at, day in enumerate(kind.days)
    }
    weekly = tuple(
        {muscle: week.fractional for muscle, week in week_volume(kind, exercises).items()} for kind in block.kinds
    )
    return BlockView(mean_volume(block, exercises), block_cautions(block, exercises), minutes, weekly)


def _within(sets: Decimal, target: VolumeTarget) -> bool:
    return target.low <= sets <= target.high


def _key(found: PlanCaution) -> tuple[object, ...]:
    return found.earlier, found.later, found.caution.ground, found.caution.muscles, found.caution.long
