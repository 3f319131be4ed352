"""history A: the last days of one exercise."""

from __future__ import annotations

from bot.coachs_clients import asked_about
from bot.replies.history import days, never, which
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act

DAYS_SHOWN = 6


def history(turn: Turn, act: Act) -> None:
    """Nothing; the last days of the exercise are said."""
    person, _ = asked_about(turn, act.text)
    exercise = act.exercise or session_of(turn).latest_exercise
    if exercise is None:
        turn.say(which("history"))
        return
    sets = turn.store.sets.history(person.id, exercise, days=DAYS_SHOWN)
    turn.say(days(exercise, sets, turn.today) if sets else never(exercise))
