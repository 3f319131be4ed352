"""week: this week so far: sessions, sets for each muscle, what went up."""

from __future__ import annotations

from bot.replies.week import week_so_far
from bot.turn import Turn
from bot.weeks import week_of
from engine.reading.values import Act


def week(turn: Turn, act: Act) -> None:
    """Nothing; the week so far is said."""
    turn.say(week_so_far(week_of(turn.store, turn.memory, turn.me, turn.today)))
