"""move to fri: today's session on another day."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from bot.replies.choices import moved, no_plan_to_change
from bot.replies.trouble import needs
from bot.sessions import forget_plan, session_of, session_on
from bot.turn import Turn
from bot.words import day_named
from engine.reading.values import Act
from storage.records import ChangeKind, ChoiceKind


def move(turn: Turn, act: Act) -> None:
    """Nothing; today's session waits for the day named."""
    session = session_of(turn)
    if session.planned is None or not session.prescriptions:
        turn.say(no_plan_to_change("move"))
        return
    to = _day(turn, act)
    if to is not None and _names_today(turn, act, to):
        turn.say(needs(f"another day: today is {to:%A}", f"move to {to.day} {to:%b}".lower()))
        return
    if to is None or to <= turn.today:
        turn.say(needs("a day to come", "move to fri"))
        return
    label = session.planned.day.label
    other = session_on(turn, to)
    clash = f"{other.planned.day.label} is planned for that day too: both are shown." if other.planned else ""
    change = turn.begin(ChangeKind.RESCHEDULE, f"moving {label}")
    turn.store.choices.add(change, ChoiceKind.MOVE, on=turn.today, at=turn.at, to_day=to)
    forget_plan(turn)
    turn.say(moved(label, to, turn.today, clash))


def _day(turn: Turn, act: Act) -> date | None:
    if isinstance(act.when, datetime):
        return act.when.date()
    return act.when or day_named(act.text, turn.today)


def _names_today(turn: Turn, act: Act, to: date) -> bool:
    """ "move to fri" on a Friday may mean today: a week on is only taken where it says next."""
    return (
        to == turn.today + timedelta(days=7)
        and "next" not in act.text.casefold().split()
        and not any(letter.isdigit() for letter in act.text)
    )
