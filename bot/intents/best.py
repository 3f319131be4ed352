"""best A: the records of one exercise, each with its kind."""

from __future__ import annotations

from bot.coachs_clients import asked_about
from bot.replies.history import bests, never, which
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act
from engine.strength.current import current_strength


def best(turn: Turn, act: Act) -> None:
    """Nothing; the records of the exercise are said."""
    person, _ = asked_about(turn, act.text)
    exercise = act.exercise or session_of(turn).latest_exercise
    if exercise is None:
        turn.say(which("best"))
        return
    sets = turn.store.sets.history(person.id, exercise)
    known = turn.catalogue.get(exercise)
    if not sets or known is None:
        turn.say(never(exercise))
        return
    weighed = turn.store.body_weights.at(person.id, turn.today)
    current = current_strength(sets, known, turn.today, weighed.load if weighed else None)
    turn.say(bests(exercise, sets, turn.today, current))
