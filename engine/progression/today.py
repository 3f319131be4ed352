"""Today's session: what each slot of a planned day asks for, with swaps and skips.

What a swapped-in exercise asks stands in `stand_in.py`.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, timedelta

from engine.loading.loadable import Loadable
from engine.progression.assignment import SessionDone
from engine.progression.choices import Choices
from engine.progression.circumstances import Span, hurts, with_circumstances
from engine.progression.exposures import exposures
from engine.progression.prescribe import prescribe
from engine.progression.stand_in import as_stand_in, stand_in_slot
from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.plan import PlannedDay, Slot
from engine.values.prescription import Exposure, Prescription, SetTarget
from engine.values.schemes import SetWave
from engine.values.sets import SetRecord

YEAR = timedelta(days=365)


@dataclass(frozen=True, slots=True)
class Athlete:
    """What today's session needs to know of the one who trains.

    `log` is every standing set, oldest first; `loadable` tells what can be loaded for an exercise; `pain` when each
    exercise hurt, first and last day included; `strength` the maxima that slots by effort follow; `exercises` what is
    known of lifts swapped in.
    Units: loads are asked in `unit`; None: in the plan's.
    """

    log: Sequence[SetRecord]
    loadable: Callable[[ExerciseName], Loadable]
    pain: Mapping[ExerciseName, Sequence[Span]] = field(default_factory=dict)
    strength: Mapping[Slot, Load] = field(default_factory=dict)
    choices: Choices = field(default_factory=Choices)
    unit: Unit | None = None
    exercises: Mapping[ExerciseName, Exercise] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class SlotToday:
    """A slot, what it asks today, and what can be loaded for it.

    A swap shows as a prescription for another exercise than the slot's.
    """

    slot: Slot
    prescription: Prescription
    loadable: Loadable
    skipped: bool = False


def session_for(
    planned: PlannedDay, sessions: Sequence[SessionDone], today: date, athlete: Athlete
) -> tuple[SlotToday, ...]:
    """What each slot of a planned day asks for today, in the plan's order, skipped ones marked."""
    choices, slots = athlete.choices, planned.day.slots
    instead = {slot.exercise: choices.instead_of(slot.exercise, today) for slot in slots}
    names = {name for pair in instead.items() for name in pair if name is not None}
    latest = latest_sets(athlete.log, names, today)
    return tuple(
        SlotToday(
            slot,
            _prescribed(slot, instead[slot.exercise], planned, sessions, today, athlete, latest),
            athlete.loadable(instead[slot.exercise] or slot.exercise),
            choices.skipped(slot.exercise, today),
        )
        for slot in slots
    )


def latest_sets(
    log: Sequence[SetRecord], names: Collection[ExerciseName], before: date
) -> dict[ExerciseName, tuple[SetRecord, ...]]:
    """For each exercise the sets of the last day it was trained before a date, within a year; absent where none.

    Shape: `log` oldest first.
    """
    found: dict[ExerciseName, list[SetRecord]] = {}
    done: set[ExerciseName] = set()
    for at in range(bisect_left(log, before, key=_on) - 1, -1, -1):
        record = log[at]
        name = record.done.exercise
        if before - record.on > YEAR:
            break
        if name not in names or name in done:
            continue
        kept = found.setdefault(name, [])
        if kept and kept[-1].on != record.on:
            done.add(name)
            if len(done) == len(names):
                break
            continue
        kept.append(record)
    return {name: tuple(reversed(kept)) for name, kept in found.items()}


def _prescribed(
    slot: Slot,
    instead: ExerciseName | None,
    planned: PlannedDay,
    sessions: Sequence[SessionDone],
    today: date,
    athlete: Athlete,
    latest: Mapping[ExerciseName, tuple[SetRecord, ...]],
) -> Prescription:
    past = exposures(slot, planned, sessions, today)
    asked = _ask(slot, past, planned, today, athlete, latest)
    if instead is None:
        return asked
    last, known = latest.get(instead, ()), athlete.exercises.get(instead)
    # A wave's sets grow with what is made: the load of the lift swapped in must not hang on how many they are.
    sets = slot.sets if isinstance(slot.scheme, SetWave) else len(_full(slot, past, planned, today, athlete, latest))
    stand_in = stand_in_slot(slot, instead, known, last, sets)
    used = (Exposure(last[-1].on, last),) if last else ()
    swapped = _ask(stand_in, used, planned, today, athlete, latest)
    swapped = replace(swapped, sets=swapped.sets[:1] * len(asked.sets))
    return as_stand_in(swapped, slot, known, last)


def _full(
    slot: Slot,
    past: Sequence[Exposure],
    planned: PlannedDay,
    today: date,
    athlete: Athlete,
    latest: Mapping[ExerciseName, tuple[SetRecord, ...]],
) -> Sequence[SetTarget]:
    """The slot's sets as they are without a deload."""
    return _ask(slot, past, replace(planned, deload=None), today, athlete, latest).sets


def _ask(
    slot: Slot,
    past: Sequence[Exposure],
    planned: PlannedDay,
    today: date,
    athlete: Athlete,
    latest: Mapping[ExerciseName, tuple[SetRecord, ...]],
) -> Prescription:
    last = latest.get(slot.exercise)
    spans = athlete.pain.get(slot.exercise, ())
    return prescribe(
        slot,
        with_circumstances(tuple(past), spans, slot.exercise, athlete.log),
        today=today,
        loadable=athlete.loadable(slot.exercise),
        deload=planned.deload,
        pain=hurts(spans, today),
        strength=athlete.strength.get(slot) if athlete.strength else None,
        last_trained=last[-1].on if last else None,
        unit=athlete.unit,
    )


def _on(record: SetRecord) -> date:
    return record.on
