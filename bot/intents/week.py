"""week: this week so far, or last week: sessions, sets for each muscle, what went up; for a coach also a client's."""

from __future__ import annotations

from datetime import date, datetime

from bot.coachs_clients import asked_about
from bot.replies.digest import client_card
from bot.replies.week import week_so_far
from bot.turn import Turn
from bot.weeks import week_of
from engine.reading.values import Act


def week(turn: Turn, act: Act) -> None:
    """Nothing; the week so far is said."""
    person, _ = asked_about(turn, act.text)
    on = day_of(turn, act)
    week = week_of(turn.store, turn.memory, person, on)
    turn.say(week_so_far(week, on == turn.today) if person.id == turn.athlete else client_card(person.name, week))


def day_of(turn: Turn, act: Act) -> date:
    """The day whose week is asked about: today, or the last one of a week before."""
    return act.when if act.when is not None and not isinstance(act.when, datetime) else turn.today
