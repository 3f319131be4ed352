"""preview 6, preview 6 fri, preview 6 at my rate: what the plan would ask for, if all goes well or as it has gone."""

from __future__ import annotations

import re
from collections.abc import Sequence

from bot.plans_in_force import PlanInForce
from bot.previews import assumed_maxima, projected, success_of
from bot.replies.dates import DAYS
from bot.replies.plans import how_to
from bot.replies.preview import no_rate, no_such_day, no_such_week, preview_card
from bot.sessions import session_of
from bot.turn import Turn
from bot.words import day_named, weekdays_named
from engine.plan.projection import ProjectedDay
from engine.reading.values import Act
from engine.values.plan import Weekday

NUMBER = re.compile(r"[-−–]?\d{1,9}")
OWN_RATE = ("my", "mine", "own", "real", "rate", "honest", "realistic")


def preview(turn: Turn, act: Act) -> None:
    """Nothing; the week, or one day of it, is projected and said, with what was assumed."""
    in_force = session_of(turn).in_force
    if in_force is None:
        turn.say(how_to())
        return
    weekday = next(iter(weekdays_named(act.text)), None)
    week = _week(turn, act, in_force, weekday)
    if week is None:
        turn.say(no_such_week(in_force.plan.weeks))
        return
    own = any(word in act.text.casefold().split() for word in OWN_RATE)
    rate = success_of(turn.store, turn.memory, turn.athlete, turn.today)
    share = rate if own else None
    if own and share is None:
        turn.say(no_rate(week))
        return
    days = projected(turn.store, turn.memory, turn.athlete, turn.today, share, week)
    asked = [day for day in days if day.number == week]
    chosen = _chosen(asked, weekday, act.text)
    if asked and not chosen:
        turn.say(no_such_day(week, [_name(day) for day in asked]))
        return
    assumed = assumed_maxima(turn.store, turn.memory, turn.athlete, turn.today, chosen)
    turn.say(preview_card(in_force.plan, week, chosen, share, assumed, has_rate=rate is not None))


def _week(turn: Turn, act: Act, in_force: PlanInForce, weekday: Weekday | None) -> int | None:
    """The plan week meant: the number told, that of the coming day where only a day is, else the next one."""
    # The sign of a negative number is not part of what the intent hands over.
    found = NUMBER.search(turn.inbound.text) or NUMBER.search(act.text)
    now = in_force.week(turn.today)
    if found:
        week = int(found.group().replace("−", "-").replace("–", "-"))
    elif weekday is not None and (coming := day_named(act.text, turn.today)) is not None:
        week = in_force.week(coming) or 1
    else:
        week = min((now or 0) + 1, in_force.plan.weeks)
    return week if 1 <= week <= in_force.plan.weeks else None


def _chosen(days: Sequence[ProjectedDay], weekday: Weekday | None, text: str) -> list[ProjectedDay]:
    """The days meant: those on the weekday named, else those whose label was said, else all."""
    if weekday is not None:
        return [day for day in days if day.on.weekday() == weekday.value]
    said = f" {text.casefold()} "
    labelled = [day for day in days if f" {day.planned.day.label.casefold()} " in said]
    return labelled or list(days)


def _name(day: ProjectedDay) -> str:
    return DAYS[day.on.weekday()]
