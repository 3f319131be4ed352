"""The reminder at her training time, on days with a session."""

from __future__ import annotations

from datetime import timedelta

from bot.day_sessions import session_at
from bot.due_kind import Coming, Kind, Moment, next_weekday
from bot.plans_in_force import plan_in_force
from bot.replies.reminders import reminder
from bot.replies.session import generic_reminder
from storage.records import Due

REMINDER = "reminder"


def _next_at(moment: Moment) -> Coming | None:
    times = moment.preferences.training_times
    at = min((next_weekday(moment.now, day.value, at) for day, at in times.items()), default=None)
    return Coming(at.date(), at) if at is not None else None


def _run(moment: Moment, due: Due) -> bool:
    """A session gets its lifts, a day without a plan a plain word, a rest day or one trained on nothing."""
    if moment.is_paused or moment.store.sets.of_day(moment.person.id, moment.today):
        return False
    plan = plan_in_force(moment.store, moment.memory, moment.person.id, moment.today)
    if plan is None:
        moment.send(generic_reminder(), silent=False)
        return True
    session = session_at(moment.store, moment.memory, moment.person.id, moment.today)
    if session.planned is None or not session.prescriptions:
        return False
    moment.send(reminder(session.planned, [one.exercise for one in session.prescriptions]), silent=False)
    return True


KIND = Kind(REMINDER, _run, _next_at, timedelta(hours=2))
