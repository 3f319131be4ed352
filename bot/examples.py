"""What a set looks like, in her terms: the lift she named or has in hand, as she did it last or as it is planned."""

from __future__ import annotations

from bot.context import context_of
from bot.replies.examples import EXAMPLE, example_of, example_with
from bot.turn import Turn
from engine.reading.lifts_named import only_lift_named
from engine.reading.values import Context
from engine.values.ids import ExerciseName
from engine.values.plan import Reps
from engine.values.sets import SetDone


def example_for(turn: Turn, text: str = "") -> str:
    """A set to show beside what could not be read; `text` may name its lift."""
    context = context_of(turn)
    planned = context.plan[0].exercise if context.plan else None
    lift = only_lift_named(text, context, turn.catalogue) or context.doing or planned
    if lift is None:
        return EXAMPLE
    done = _done(lift, context) or _planned(lift, context)
    return example_of(done) if done is not None else example_with(turn.catalogue.exercises[lift])


def _done(lift: ExerciseName, context: Context) -> SetDone | None:
    """The latest set of it that says it all: a set that was missed, or of no known load, is no example."""
    sets = [record.done for record in context.recent if record.done.exercise == lift]
    return next((one for one in reversed(sets) if one.reps > 0 and one.load is not None), None)


def _planned(lift: ExerciseName, context: Context) -> SetDone | None:
    slot = next((one for one in context.plan if one.exercise == lift), None)
    if slot is None or slot.load is None or not isinstance(slot.target, Reps):
        return None
    return SetDone(lift, slot.target.count, slot.load)
