"""A set as she would write it: the lift in hand or the one she named, with her own numbers where there are any."""

from __future__ import annotations

from typing import assert_never

from bot.replies.sets import sets_text
from engine.values.exercise import Exercise, Loading, Measure
from engine.values.load import Basis, plain
from engine.values.sets import SetDone

EXAMPLE = "row 3x12 55"
NUMBERS = {
    Loading.BAR: "3x5 80",
    Loading.PER_HAND: "3x10 12",
    Loading.IMPLEMENT: "3x10 20",
    Loading.STACK: "3x12 40",
    Loading.PLATES: "3x10 80",
    Loading.BODY: "10 8 8",
    Loading.BAND: "15 12 12",
}


def example_of(done: SetDone) -> str:
    """The lift, and what was done of it or is planned: barbell bench press 80 kg x 5."""
    load = done.load
    counted = done.seconds is None and done.metres is None
    if load is None or load.basis is Basis.BODY or not counted:
        bare = SetDone(done.exercise, done.reps, load, seconds=done.seconds, metres=done.metres)
        return f"{done.exercise} {sets_text([bare])}"
    return f"{done.exercise} {plain(load.amount)} {load.unit.value} x {done.reps}"


def example_with(lift: Exercise) -> str:
    """The lift with numbers that nobody has lifted yet."""
    match lift.measure:
        case Measure.TIME:
            return f"{lift.name} 30 s"
        case Measure.DISTANCE:
            return f"{lift.name} 40 m"
        case Measure.REPS:
            return f"{lift.name} {NUMBERS[lift.loading]}"
        case _:
            assert_never(lift.measure)
