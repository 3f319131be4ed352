"""What is known of an exercise before the message: its load, its slot of today's plan, the heaviest ever."""

from __future__ import annotations

from typing import NamedTuple

from engine.reading.values import Context, Planned
from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetRecord

FAR_ABOVE = 3
"""A load this many times the heaviest one known asks before it is recorded; a load under one tenth too.

Common practice, no source."""
FAR_BELOW = 10


class Known(NamedTuple):
    """Shape: `load` is what reps alone are done at: today's latest, else the planned, else the last."""

    load: Load | None
    planned: Planned | None
    heaviest: Load | None
    today: Load | None
    last: Load | None = None
    """The load of the session before, whatever is planned."""


def known_of(exercise: ExerciseName, context: Context) -> Known:
    """What `context` knows of one exercise."""
    planned = next((slot for slot in context.plan if slot.exercise == exercise), None)
    today = latest_today(exercise, context)
    told = today.done.load if today else None
    last = context.last.get(exercise)
    load = told or (planned.load if planned else None) or last
    seen = [one for one in (context.best.get(exercise), last, told) if one is not None]
    heaviest = max(seen, key=Load.kilograms) if len(seen) > 1 else next(iter(seen), None)
    return Known(load, planned, heaviest, told, last)


def latest_today(exercise: ExerciseName, context: Context) -> SetRecord | None:
    """The latest standing set of the exercise on the day of the message."""
    for record in reversed(context.recent):
        if record.done.exercise == exercise and (context.now is None or record.on == context.now.date()):
            return record
    return None


def is_far_off(load: Load, known: Known) -> bool:
    """Whether a load is three times the heaviest known, or under a tenth of it."""
    if known.heaviest is None or load.basis is Basis.BODY or load.amount <= 0:
        return False
    mass, heaviest = load.kilograms(), known.heaviest.kilograms()
    return heaviest > 0 and (mass >= FAR_ABOVE * heaviest or mass * FAR_BELOW <= heaviest)


EMPTY_BAR = {Unit.KG: 20, Unit.LB: 45}
"""Common practice, no source: the men's Olympic bar, and its counterpart in pounds."""
PLATE = {Unit.KG: 20, Unit.LB: 45}
"""A plate without a number, each side. Common practice, no source."""
