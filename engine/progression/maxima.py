"""The maxima that a day's loads are asked from, for the slots whose load follows strength."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import assert_never

from engine.strength.working import working_strength
from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName
from engine.values.load import Load
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Slot, Target
from engine.values.schemes import EffortTarget
from engine.values.sets import SetRecord


def maxima_for(
    slots: Iterable[Slot],
    history: Callable[[ExerciseName], Sequence[SetRecord]],
    exercises: Mapping[ExerciseName, Exercise],
    body_weight: Load | None = None,
) -> dict[Slot, Load]:
    """For each slot by effort the maximum its load follows; absent where the log says nothing of it.

    As of the last session of the lift: time away is taken off once, by the lay-off rule, and not here as well.
    Shape: `history` gives an exercise's records in the order of the log, before the day.
    """
    found = {}
    for slot in slots:
        reps = _most_reps(slot.target)
        if not isinstance(slot.scheme, EffortTarget) or reps is None:
            continue
        records = history(slot.exercise)
        exercise = exercises[slot.exercise]
        strength = working_strength(records, exercise, records[-1].on, body_weight) if records else None
        if strength is not None:
            found[slot] = strength.maximum_for(reps, slot.scheme.effort.rir)
    return found


def _most_reps(target: Target) -> int | None:
    """The most repetitions a target asks of a set; None where it counts none."""
    match target:
        case Reps(count):
            return count
        case RepRange(_, high):
            return high
        case MaxReps() | Seconds() | Metres():
            return None
        case _:
            assert_never(target)
