"""What is known of an exercise before the message: its load, its slot of today's plan, the heaviest ever."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import NamedTuple

from engine.reading.values import Context, Planned
from engine.values.exercise import Exercise, Loading
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetKind, SetRecord

FAR_ABOVE = 3
"""A load this many times the heaviest one known asks before it is recorded; a load under one tenth too.

Common practice, no source."""
FAR_BELOW = 10
FAR_ABOVE_A_WARM_UP = 10
"""An empty bar and a warm-up tell little of what is lifted: only a load that many times theirs, as of a point lost,
asks. Common practice, no source."""
NONE_ADDED = Decimal(0)
MOST_ADDED_AT_ONCE_KG = Decimal(50)
"""So much more on the body than ever before asks first. Common practice, no source."""


class Known(NamedTuple):
    """Shape: `load` is what reps alone are done at: one told alone, else today's latest, the planned, or the last."""

    load: Load | None
    planned: Planned | None
    heaviest: Load | None
    today: Load | None
    last: Load | None = None
    """The load of the session before, whatever is planned."""
    warmed_up: Load | None = None
    """The load of the latest set of today, where that was a warm-up."""


NOTHING = Known(None, None, None, None)


def known_of(exercise: ExerciseName, context: Context) -> Known:
    """What `context` knows of one exercise."""
    planned = _slot_of(exercise, context.plan)
    today = latest_today(exercise, context)
    told = today.done.load if today else None
    last, best = context.last.get(exercise), context.best.get(exercise)
    alone = context.told.get(exercise)
    if planned is None and told is None and last is None and best is None and alone is None:
        return NOTHING
    load = alone or told or (planned.load if planned else None) or last
    warmed_up = told if today is not None and today.done.kind is SetKind.WARMUP else None
    return Known(load, planned, _heaviest(best, last, told), told, last, warmed_up)


def _slot_of(exercise: ExerciseName, plan: Sequence[Planned]) -> Planned | None:
    for slot in plan:
        if slot.exercise == exercise:
            return slot
    return None


def _heaviest(*loads: Load | None) -> Load | None:
    seen = [load for load in loads if load is not None]
    return max(seen, key=Load.kilograms) if seen else None


def latest_today(exercise: ExerciseName, context: Context) -> SetRecord | None:
    """The latest standing set of the exercise on the day of the message."""
    if not context.recent:
        return None
    today = None if context.now is None else context.now.date()
    for record in reversed(context.recent):
        if record.done.exercise == exercise and (today is None or record.on == today):
            return record
    return None


def is_of_warming_up(load: Load, known: Known, exercise: Exercise) -> bool:
    """Whether a load known of the exercise is an empty bar, or no more than today's warm-up: "squat bar x10"."""
    mass = load.kilograms()
    if exercise.loading is Loading.BAR and mass <= EMPTY_BAR_KG:
        return True
    return known.warmed_up is not None and mass <= known.warmed_up.kilograms()


def is_far_off(load: Load, known: Known, exercise: Exercise) -> bool:
    """Whether a load is three times the heaviest known, or under a tenth of it; or far more than was ever added to the
    body. From an empty bar or a warm-up on, the way up is longer, unless the plan tells what is lifted.
    """
    if known.heaviest is None or load.amount <= 0:
        return False
    mass, heaviest = load.kilograms(), known.heaviest.kilograms()
    if load.basis is Basis.BODY:
        return mass > max(heaviest, NONE_ADDED) + MOST_ADDED_AT_ONCE_KG
    if heaviest > 0 and is_of_warming_up(known.heaviest, known, exercise):
        planned = known.planned.load if known.planned is not None else None
        if planned is None or planned.amount <= 0:
            return mass >= FAR_ABOVE_A_WARM_UP * heaviest or mass * FAR_BELOW <= heaviest
        heaviest = max(heaviest, planned.kilograms())
    return heaviest > 0 and (mass >= FAR_ABOVE * heaviest or mass * FAR_BELOW <= heaviest)


EMPTY_BAR = {Unit.KG: 20, Unit.LB: 45}
"""Common practice, no source: the men's Olympic bar, and its counterpart in pounds."""
EMPTY_BAR_KG = Load(Decimal(EMPTY_BAR[Unit.LB]), Unit.LB, Basis.TOTAL).kilograms()
"""The heavier of the two."""
PLATE = {Unit.KG: 20, Unit.LB: 45}
"""A plate without a number, each side. Common practice, no source."""
