"""week: this week so far: sessions, sets for each muscle, what went up; for a coach also a client's."""

from __future__ import annotations

from bot.coachs_clients import asked_about
from bot.replies.digest import client_card
from bot.replies.week import week_so_far
from bot.turn import Turn
from bot.weeks import week_of
from engine.reading.values import Act


def week(turn: Turn, act: Act) -> None:
    """Nothing; the week so far is said."""
    person, _ = asked_about(turn, act.text)
    this = week_of(turn.store, turn.memory, person, turn.today)
    turn.say(week_so_far(this) if person.id == turn.athlete else client_card(person.name, this))
