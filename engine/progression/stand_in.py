"""A lift swapped in for today: the slot it makes, and how it is told.

Decided: it asks the slot's sets and target at the load last used for it, whatever session that was in. Never done
within a year, it goes without load where the catalogue says so (a nordic curl), else the load is to be found. Where the
slot's target cannot be counted on it (a plank for squats), it asks what each set of last time lasted, or the usual
half a minute, 20 metres or 10 repetitions. It advances nothing, neither its own slots nor this one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import assert_never

from engine.progression.words import day
from engine.values.exercise import Exercise, Measure
from engine.values.ids import ExerciseName
from engine.values.plan import (
    HALF_A_MINUTE,
    TWENTY_METRES,
    FindIt,
    MaxReps,
    Metres,
    RepRange,
    Reps,
    Seconds,
    Slot,
    Target,
)
from engine.values.prescription import Prescription, Verdict
from engine.values.schemes import Hold
from engine.values.sets import SetRecord

TEN = Reps(10)
"""What a lift counted in repetitions asks in place of seconds or metres. Common practice, no source."""


def stand_in_slot(
    slot: Slot, exercise: ExerciseName, known: Exercise | None, last: Sequence[SetRecord], sets: int
) -> Slot:
    """The slot with the lift in it.

    Shape: `last` its sets of the last day it was trained, empty where there is none within a year.
    """
    load = None if _is_bare(known, last) else FindIt()
    target = slot.target if known is None else _counted_on(slot.target, known.measure, last)
    return replace(slot, exercise=exercise, sets=sets, target=target, scheme=Hold(), load=load)


def as_stand_in(asked: Prescription, slot: Slot, known: Exercise | None, last: Sequence[SetRecord]) -> Prescription:
    """What is asked of it, with the reason told as a swap's."""
    if asked.verdict is Verdict.FIND_LOAD:
        return asked
    bare = _is_bare(known, last)
    if not last:
        told = (
            f"Instead of {slot.exercise}, without added load: you have not done it within a year, so see how it goes."
        )
    else:
        how = "as last done" if bare else "at the load last used for it"
        told = f"Instead of {slot.exercise}, {how} on {day(last[-1].on)}."
    notes = asked.reason.partition(". ")[2]
    today = f"It stands in for today only: {slot.exercise} goes on from where it stood."
    next_step = asked.next_step if asked.held else today
    return replace(asked, verdict=Verdict.FOLLOW, reason=f"{told} {notes}".strip(), next_step=next_step)


def _is_bare(known: Exercise | None, last: Sequence[SetRecord]) -> bool:
    if last:
        return all(record.done.load is None for record in last)
    return known is not None and known.goes_without_load


def _counted_on(target: Target, measure: Measure, last: Sequence[SetRecord]) -> Target:
    """The target where the lift is counted the same way, else its own."""
    match measure:
        case Measure.REPS:
            return target if isinstance(target, Reps | RepRange | MaxReps) else TEN
        case Measure.TIME:
            lasted = [record.done.seconds for record in last if record.done.seconds is not None]
            fits = isinstance(target, Seconds)
            return target if fits else Seconds(min(lasted)) if lasted else HALF_A_MINUTE
        case Measure.DISTANCE:
            went = [record.done.metres for record in last if record.done.metres is not None]
            fits = isinstance(target, Metres)
            return target if fits else Metres(min(went)) if went else TWENTY_METRES
        case _:
            assert_never(measure)
