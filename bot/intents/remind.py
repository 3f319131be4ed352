"""remind me 18:00 mon wed fri: a reminder on training days; remind me at 6pm: one reminder, once."""

from __future__ import annotations

from datetime import datetime, time, timedelta

from bot import zones
from bot.intents.rest import rest_for
from bot.preferences import REMINDED_AT, TRAINING_TIMES, times_to_json
from bot.replies.dates import clock
from bot.replies.reminders import needs_time, one_reminder, reminders_set, reminders_stopped
from bot.schedule import cancel_all, plan_beside, plan_person
from bot.scheduled.once import ONCE
from bot.scheduled.reminder import REMINDER
from bot.sessions import session_of
from bot.turn import Turn
from bot.words import time_named, weekdays_named
from engine.reading.values import Act
from engine.values.plan import Weekday
from storage.records import ChangeKind

LONGEST_REST = timedelta(minutes=5)
"""Whoever asks to be told so soon rests between two sets, and wants no word that it is time to train. Common practice,
no source.
"""
STOPPERS = ("stop", "off", "no reminders", "none")


def remind(turn: Turn, act: Act) -> None:
    """Nothing; the reminders are as she wants them."""
    said = act.text.casefold()
    if any(word in said for word in STOPPERS):
        stop(turn)
        return
    days = weekdays_named(act.text)
    if isinstance(act.when, datetime) and not days:
        wait = act.when - turn.now
        if wait <= LONGEST_REST:
            rest_for(turn, round(wait.total_seconds()))
        else:
            once(turn, act.when)
        return
    at = time_named(act.text)
    if at is None:
        turn.say(needs_time())
        return
    set_times(turn, days or _planned_days(turn), at)


def once(turn: Turn, when: datetime) -> None:
    """Nothing; one reminder will be sent at this local time, beside others asked for."""
    at = zones.instant(when, turn.preferences.zone)
    change = turn.begin(ChangeKind.SETTING, f"the reminder at {clock(when.time())}")
    turn.store.settings.put(change, REMINDED_AT, {"event": turn.event, "at": at.isoformat()})
    turn.forget_lookups()
    plan_beside(turn, ONCE, at)
    turn.say(one_reminder(when, turn.today))


def set_times(turn: Turn, days: tuple[Weekday, ...], at: time) -> None:
    """Nothing; on these weekdays a reminder is sent at this local time."""
    times = dict.fromkeys(days or tuple(Weekday), at)
    change = turn.begin(ChangeKind.SETTING, f"reminders at {clock(at)}")
    turn.store.settings.put(change, TRAINING_TIMES, times_to_json(times))
    turn.forget_lookups()
    turn.store.due.cancel(turn.athlete, REMINDER)
    plan_person(turn.store, turn.memory, turn.me, turn.preferences, turn.at)
    turn.say(reminders_set(times, turn.preferences.zone, turn.now, turn.preferences.zone_known))


def stop(turn: Turn) -> None:
    """Nothing; no reminder is sent any more."""
    change = turn.begin(ChangeKind.SETTING, "stopping the reminders")
    turn.store.settings.put(change, TRAINING_TIMES, {})
    turn.forget_lookups()
    turn.store.due.cancel(turn.athlete, REMINDER)
    cancel_all(turn, ONCE)
    turn.say(reminders_stopped())


def _planned_days(turn: Turn) -> tuple[Weekday, ...]:
    plan = session_of(turn).plan
    if plan is None:
        return ()
    days = {day.weekday for block in plan.blocks for kind in block.kinds for day in kind.days}
    return tuple(sorted((day for day in days if day is not None), key=lambda day: day.value))
