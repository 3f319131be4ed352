"""What went up in a week and what came down: each lift's best set against that of the week it was trained in before."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from decimal import Decimal

from bot.day_sessions import session_at
from bot.memory import Memory
from bot.week_values import Moved
from engine.progression.sessions import SlotToday
from engine.progression.terms import least_reps
from engine.strength.compared import Against, against
from engine.values.ids import AthleteId, ExerciseName
from engine.values.prescription import Held
from engine.values.sets import SetDone, SetRecord
from storage.store import Store

NONE = Decimal(0)


@dataclass(frozen=True, slots=True)
class MovedLifts:
    """The lifts of a week that were trained in a week before."""

    up: list[Moved] = field(default_factory=list)
    same: list[ExerciseName] = field(default_factory=list)
    down: list[Moved] = field(default_factory=list)


def compared_weeks(
    store: Store, memory: Memory, athlete: AthleteId, records: Sequence[SetRecord], before: Sequence[SetRecord]
) -> MovedLifts:
    """Each lift's best set against that of the last calendar week it was trained in, like with like."""
    exercises = memory.catalogue_of(store, athlete).exercises
    earlier, found = _last_bests(before), MovedLifts()
    for exercise, best in _bests(records).items():
        if exercise not in earlier:
            continue
        moved = Moved(exercise, best.done, earlier[exercise].done)
        slots = session_at(store, memory, athlete, best.on).slots
        made = [slot for slot in slots if slot.prescription.exercise == exercise and _made(best.done, slot)]
        weighed = store.body_weights.at(athlete, best.on)
        stands = against(
            moved.now,
            moved.before,
            exercises.get(exercise),
            weighed.load if weighed else None,
            made=bool(made),
            in_turn=any(slot.slot.exercise == exercise for slot in made),
        )
        match stands:
            case Against.MORE:
                found.up.append(moved)
            case Against.SAME:
                found.same.append(exercise)
            case Against.LESS:
                found.down.append(moved)
    return found


def _made(done: SetDone, slot: SlotToday) -> bool:
    """Whether a set made what one of the slot's sets asked; a deload week asks nobody to prove anything."""
    if Held.DELOAD in slot.prescription.held:
        return True
    return not done.missed and any(
        done.reps >= least_reps(one.target) and (one.load is None or (done.load is not None and done.load >= one.load))
        for one in slot.prescription.sets
    )


def _rank(done: SetDone) -> tuple[Decimal, Decimal, Decimal, int]:
    mass = done.load.kilograms() if done.load is not None else NONE
    return mass, done.seconds or NONE, done.metres or NONE, done.reps


def _bests(records: Sequence[SetRecord]) -> dict[ExerciseName, SetRecord]:
    """Each lift's best hard set: the heaviest, of those the longest."""
    bests: dict[ExerciseName, SetRecord] = {}
    for record in records:
        done = record.done
        if done.is_hard and (done.exercise not in bests or _rank(bests[done.exercise].done) < _rank(done)):
            bests[done.exercise] = record
    return bests


def _last_bests(before: Sequence[SetRecord]) -> dict[ExerciseName, SetRecord]:
    """Each lift's best hard set of the last calendar week it was trained in."""
    weeks: dict[ExerciseName, tuple[date, list[SetRecord]]] = {}
    for record in before:
        monday = record.on - timedelta(days=record.on.weekday())
        latest, sets = weeks.get(record.done.exercise, (monday, []))
        weeks[record.done.exercise] = (monday, [record] if monday > latest else [*sets, record])
    return _bests([record for _, sets in weeks.values() for record in sets])
