"""Changes of a plan: sets added to or taken from a slot, one exercise for another, a slot added. Each gives a new plan.

A rule keeps its meaning: a set wave grows by the same sets, a top set gains or loses back-offs. An exercise swapped in
starts at a load to be found, with the usual step of its own loading.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import assert_never

from engine.plan.defaults import MISSES, RESET_SHARE, basis_of, step_of
from engine.plan.session_time import planned_sets
from engine.values.exercise import Exercise, Measure
from engine.values.load import Load, Unit
from engine.values.plan import (
    HALF_A_MINUTE,
    TWENTY_METRES,
    FindIt,
    Metres,
    Plan,
    RepRange,
    Reps,
    Seconds,
    Slot,
    TrainingDay,
)
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


@dataclass(frozen=True, slots=True, order=True)
class SlotAt:
    """Where a slot stands: block, week kind, day, slot, each from 0. A slot past the last of its day is a new one."""

    block: int
    kind: int
    day: int
    slot: int


def slot_at(plan: Plan, place: SlotAt) -> Slot:
    """The slot at a place.

    Errors: IndexError where there is none.
    """
    return plan.blocks[place.block].kinds[place.kind].days[place.day].slots[place.slot]


def with_slots(plan: Plan, slots: Mapping[SlotAt, Slot | None]) -> Plan:
    """The plan with slots replaced; None takes a slot out, and a place past the last slot of a day adds one."""
    blocks = list(plan.blocks)
    for block_at in {place.block for place in slots}:
        kinds = list(blocks[block_at].kinds)
        for kind_at in {place.kind for place in slots if place.block == block_at}:
            days = list(kinds[kind_at].days)
            for day_at in {place.day for place in slots if (place.block, place.kind) == (block_at, kind_at)}:
                here = {
                    at.slot: new
                    for at, new in slots.items()
                    if (at.block, at.kind, at.day) == (block_at, kind_at, day_at)
                }
                days[day_at] = _day_with(days[day_at], here)
            kinds[kind_at] = replace(kinds[kind_at], days=tuple(days))
        blocks[block_at] = replace(blocks[block_at], kinds=tuple(kinds))
    return replace(plan, blocks=tuple(blocks))


def with_name(plan: Plan, name: str) -> Plan:
    """The plan under another name; a lone block that was called like the plan goes with it."""
    lone = len(plan.blocks) == 1 and plan.blocks[0].label == plan.name
    blocks = (replace(plan.blocks[0], label=name),) if lone else plan.blocks
    return replace(plan, name=name, blocks=blocks)


def _day_with(day: TrainingDay, slots: Mapping[int, Slot | None]) -> TrainingDay:
    kept = [slots.get(at, slot) for at, slot in enumerate(day.slots)]
    added = [slots[at] for at in sorted(slots) if at >= len(day.slots)]
    return replace(day, slots=tuple(slot for slot in (*kept, *added) if slot is not None))


def slot_with_sets(slot: Slot, more: int) -> Slot | None:
    """The slot with sets added or, where `more` is negative, taken off; None where none are left."""
    if planned_sets(slot) + more < 1:
        return None
    match slot.scheme:
        case SetWave(most, step):
            return replace(slot, sets=slot.sets + more, scheme=SetWave(most + more, step)) if slot.sets + more else None
        case TopSetBackOff() as scheme:
            backs = scheme.back_offs + more
            if backs > 0:
                return replace(slot, scheme=replace(scheme, back_offs=backs))
            return replace(slot, scheme=LoadStep(scheme.step, MISSES, RESET_SHARE))
        case _:
            return replace(slot, sets=slot.sets + more)


def slot_with_exercise(slot: Slot, new: Exercise, unit: Unit) -> Slot | None:
    """The slot with another exercise in it; None where its target cannot be counted on that exercise."""
    timed = isinstance(slot.target, Seconds | Metres)
    if timed != (new.measure is not Measure.REPS):
        return None
    load = None if new.goes_without_load and not isinstance(slot.load, Load) else FindIt()
    step = step_of(new, unit, basis_of(new))
    scheme = _with_step(slot.scheme, step)
    if isinstance(scheme, LoadStep | DoubleProgression) and load is None:
        scheme = RepGoal()
    swaps = tuple(name for name in (slot.exercise, *slot.swaps) if name != new.name)
    return replace(slot, exercise=new.name, load=load, scheme=scheme, swaps=swaps, cues=(), standard=None)


def _with_step(scheme: Scheme, step: Load) -> Scheme:  # noqa: C901 - one case for each rule
    match scheme:
        case SetWave(most, _):
            return SetWave(most, step)
        case DoubleProgression():
            return DoubleProgression(step)
        case LoadStep(_, misses, share):
            return LoadStep(step, misses, share)
        case RepTotal(total, old, gain):
            return RepTotal(total, None if old is None else step, gain)
        case PercentageWave():
            # A training maximum belongs to its exercise; the swapped-in one has none yet.
            return LoadStep(step, MISSES, RESET_SHARE)
        case TopSetBackOff():
            return replace(scheme, step=step)
        case TimeOrDistance(gain, bound, old):
            return TimeOrDistance(gain, bound, None if old is None else step)
        case RepGoal() | EffortTarget() | Hold():
            return scheme
        case _:
            assert_never(scheme)


def new_slot(exercise: Exercise, sets: int, unit: Unit) -> Slot:
    """A plain slot of an exercise that the plan lacked: 10 to 15 reps, or half a minute, or 20 metres.

    Common practice, no source.
    """
    step = step_of(exercise, unit, basis_of(exercise))
    load = None if exercise.goes_without_load else FindIt()
    match exercise.measure:
        case Measure.REPS:
            scheme: Scheme = RepGoal() if load is None else DoubleProgression(step)
            target = Reps(10) if load is None else RepRange(10, 15)
            return Slot(exercise.name, sets, target, scheme, load)
        case Measure.TIME:
            return Slot(exercise.name, sets, HALF_A_MINUTE, Hold(), load)
        case Measure.DISTANCE:
            return Slot(exercise.name, sets, TWENTY_METRES, Hold(), load)
        case _:
            assert_never(exercise.measure)
