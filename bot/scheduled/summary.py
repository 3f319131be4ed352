"""The Sunday summary: the week that ends, and what the next one asks."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, time, timedelta

from bot.day_sessions import session_at
from bot.due_kind import Coming, Kind, Moment, next_weekly
from bot.moved_days import days_between
from bot.plans_in_force import plan_in_force
from bot.replies.week import next_week, summary
from bot.weeks import week_of
from engine.values.prescription import Prescription
from storage.records import Due

SUMMARY = "summary"
SUNDAY, EVENING = 6, time(19, 0)


def _next_at(moment: Moment) -> Coming | None:
    if not moment.preferences.summary:
        return None
    return next_weekly(moment.now, SUNDAY, EVENING, moment.preferences.quiet)


def _run(moment: Moment, due: Due) -> bool:
    """A week without a set and without a plan has nothing to sum up."""
    if moment.is_paused or not moment.preferences.summary:
        return False
    week = week_of(moment.store, moment.memory, moment.person, due.local_date)
    if not week.sets and not week.planned:
        return False
    moment.send(summary(week, next_week(_coming(moment, due.local_date))), silent=True)
    return True


def _coming(moment: Moment, sunday: date) -> Sequence[Prescription]:
    """What next week's sessions ask, as the log stands tonight."""
    monday = sunday + timedelta(days=1)
    plan = plan_in_force(moment.store, moment.memory, moment.person.id, monday)
    if plan is None:
        return ()
    next_sunday = monday + timedelta(days=6)
    choices = moment.store.choices.between(moment.person.id, plan.stored.starts_on, next_sunday)
    days = days_between(plan, choices, monday, next_sunday)
    sessions = [session_at(moment.store, moment.memory, moment.person.id, day.on) for day in days if day.on is not None]
    return [one for session in sessions for one in session.prescriptions]


KIND = Kind(SUMMARY, _run, _next_at, timedelta(hours=24))
