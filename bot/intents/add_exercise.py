"""new exercise: an exercise of her own, like one that the catalogue knows."""

from __future__ import annotations

from bot.replies.small import exercise_added, exercise_problem
from bot.turn import Turn
from engine.catalogue.own import own_exercise
from engine.reading.values import Act
from engine.values.exercise import Exercise
from storage.records import ChangeKind


def add_exercise(turn: Turn, act: Act) -> None:
    """Nothing; the exercise can be logged and planned by its name."""
    built = own_exercise(act.text, turn.catalogue)
    if not isinstance(built, Exercise):
        turn.say(exercise_problem(built))
        return
    change = turn.begin(ChangeKind.EXERCISE, f"the exercise {built.name}")
    turn.store.taught.own_exercise(change, built)
    turn.forget_lookups()
    turn.say(exercise_added(built))
