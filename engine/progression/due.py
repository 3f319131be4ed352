"""Which planned days are due on a date, given what the log already holds.

Decided: a dated day is due on its date unless at least half of its slots were trained on another date: then it was
moved and is done. A day without a date is due when it is next in order. A day whose slots are partly trained is due
with what is left.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from engine.progression.assignment import SessionDone
from engine.progression.exposures import records_of, same_day
from engine.values.plan import PlannedDay


def due_on(planned: Sequence[PlannedDay], sessions: Sequence[SessionDone], today: date) -> tuple[PlannedDay, ...]:
    """The training days to do today, in the plan's order: those begun today first of all, then those due.

    Shape: empty on a rest day. An undated day is due only where no dated one is.
    """
    begun = [session.planned for session in sessions if session.on == today and session.planned is not None]
    due = [day for day in planned if day.on == today and not _moved(day, sessions, today)]
    days = begun + [day for day in due if not any(same_day(day, other) for other in begun)]
    if days:
        return tuple(days)
    following = next_in_order(planned, sessions)
    return () if following is None else (following,)


def next_in_order(planned: Sequence[PlannedDay], sessions: Sequence[SessionDone]) -> PlannedDay | None:
    """The next undated day: the first one not begun after the last week begun, or left undone in that week."""
    undated = [day for day in planned if day.on is None]
    done = [session.planned for session in sessions if session.planned is not None and session.planned.on is None]
    last = max((at for at, day in enumerate(undated) if any(same_day(day, other) for other in done)), default=None)
    week = None if last is None else _week(undated[last])
    for at, day in enumerate(undated):
        waits = last is None or at > last or _week(day) == week
        if waits and not any(same_day(day, other) for other in done):
            return day
    return None


def slots_done(day: PlannedDay, sessions: Sequence[SessionDone], *, before: date | None = None) -> int:
    """How many of a day's slots were trained, on any date (or before one)."""
    mine = [
        session.records
        for session in sessions
        if session.planned is not None and same_day(session.planned, day) and (before is None or session.on < before)
    ]
    records = [record for sets in mine for record in sets]
    return sum(bool(records_of(slot, day, records)) for slot in day.day.slots)


def _moved(day: PlannedDay, sessions: Sequence[SessionDone], today: date) -> bool:
    return 2 * slots_done(day, sessions, before=today) >= max(1, len(day.day.slots))


def _week(day: PlannedDay) -> tuple[date | None, str, int]:
    return day.week_first, day.block.label, day.week
