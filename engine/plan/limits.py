"""Numbers of a plan that cannot be meant. Common practice, no source: beyond these a number is a slip of the thumb."""

from __future__ import annotations

from typing import assert_never

from engine.plan.parts import Slip
from engine.values.load import Load
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Slot, Target

MOST_SETS = 30
MOST_REPS = 500
LONGEST_SECONDS = 4 * 60 * 60
LONGEST_METRES = 50_000
LONGEST_REST_SECONDS = 60 * 60
HEAVIEST_KG = 1000


def can_be(target: Target) -> bool:
    """Whether a target can be done at all."""
    match target:
        case Reps(count):
            return 1 <= count <= MOST_REPS
        case RepRange():
            return target.high <= MOST_REPS
        case MaxReps():
            return True
        case Seconds(count):
            return 0 < count <= LONGEST_SECONDS
        case Metres(count):
            return 0 < count <= LONGEST_METRES
        case _:
            assert_never(target)


def impossible(slot: Slot) -> Slip | None:
    """The first number of a slot that cannot be meant; None where all can."""
    if not 1 <= slot.sets <= MOST_SETS:
        return Slip(f"{slot.sets} sets", f"1 to {MOST_SETS} sets", f"{slot.exercise} 3x8")
    if not can_be(slot.target):
        return Slip(str(slot.target), "a target that can be done", f"{slot.exercise} 3x8")
    if slot.rest_seconds is not None and not 0 < slot.rest_seconds <= LONGEST_REST_SECONDS:
        return Slip(f"rest {slot.rest_seconds} s", "a rest up to an hour", "rest 90 s")
    if isinstance(slot.load, Load) and abs(slot.load.kilograms()) > HEAVIEST_KG:
        return Slip(str(slot.load), f"a load up to {HEAVIEST_KG} kg", f"at 40 {slot.load.unit.value}")
    return None
