"""preview week 6: what the plan would ask, if all goes as it has gone so far."""

from __future__ import annotations

import re
from datetime import timedelta

from bot.plans_in_force import PlanInForce
from bot.previews import projected, success_of
from bot.replies.plans import how_to
from bot.replies.preview import no_such_week, preview_card
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act

NUMBER = re.compile(r"\d{1,3}")
OWN_RATE = ("my", "mine", "own", "real", "rate")


def preview(turn: Turn, act: Act) -> None:
    """Nothing; the week is projected and said, with what was assumed."""
    in_force = session_of(turn).in_force
    if in_force is None:
        turn.say(how_to())
        return
    week = _week(act.text, in_force, in_force.week(turn.today))
    if week is None:
        turn.say(no_such_week(in_force.plan.weeks))
        return
    own = any(word in act.text.casefold().split() for word in OWN_RATE)
    share = success_of(turn.store, turn.memory, turn.athlete, turn.today) if own else None
    first = in_force.stored.starts_on + timedelta(days=7 * (week - 1))
    days = projected(turn.store, turn.memory, turn.athlete, turn.today, share, week)
    asked = [day for day in days if day.number == week]
    turn.say(preview_card(in_force.plan, week, first, asked, share))


def _week(text: str, in_force: PlanInForce, now: int | None) -> int | None:
    """The plan week meant: the number told, else the next one."""
    found = NUMBER.search(text)
    week = int(found.group()) if found else min((now or 0) + 1, in_force.plan.weeks)
    return week if 1 <= week <= in_force.plan.weeks else None
