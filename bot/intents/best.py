"""best A: the records of one exercise, each with its kind."""

from __future__ import annotations

from bot.replies.history import bests, never, which
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act


def best(turn: Turn, act: Act) -> None:
    """Nothing; the records of the exercise are said."""
    exercise = act.exercise or session_of(turn).latest_exercise
    if exercise is None:
        turn.say(which("best"))
        return
    sets = turn.store.sets.history(turn.athlete, exercise)
    turn.say(bests(exercise, sets, turn.today) if sets else never(exercise))
