"""The Sunday summary: the week that ends, and what the next one asks."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, time, timedelta

from bot.day_sessions import session_at
from bot.due_kind import Kind, Moment, next_weekday, out_of_quiet
from bot.plans_in_force import plan_in_force
from bot.replies.week import next_week_asks, summary
from bot.weeks import week_of
from engine.values.prescription import Prescription
from storage.records import Due

SUMMARY = "summary"
SUNDAY, EVENING = 6, time(19, 0)


def _next_at(moment: Moment) -> datetime | None:
    if not moment.preferences.summary:
        return None
    return out_of_quiet(next_weekday(moment.now, SUNDAY, EVENING), moment.preferences.quiet)


def _run(moment: Moment, due: Due) -> bool:
    """A week without a set and without a plan has nothing to sum up."""
    if moment.is_paused or not moment.preferences.summary:
        return False
    week = week_of(moment.store, moment.memory, moment.person, moment.today)
    if not week.sets and not week.planned:
        return False
    moment.send(summary(week, next_week_asks(_coming(moment))), silent=True)
    return True


def _coming(moment: Moment) -> Sequence[Prescription]:
    """What next week's sessions ask, as the log stands tonight."""
    plan = plan_in_force(moment.store, moment.memory, moment.person.id, moment.today + timedelta(days=1))
    if plan is None:
        return ()
    monday = moment.today + timedelta(days=1)
    days = plan.planned_days(monday, monday + timedelta(days=6))
    sessions = [session_at(moment.store, moment.memory, moment.person.id, day.on) for day in days if day.on is not None]
    return [one for session in sessions for one in session.prescriptions]


KIND = Kind(SUMMARY, _run, _next_at, timedelta(hours=24))
