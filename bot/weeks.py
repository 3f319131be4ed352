"""A week of one athlete, or of a coach's clients, worked out from the log: what summary, digest and `week` tell.

A week is Monday to Sunday by the athlete's calendar.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from bot.day_sessions import session_at
from bot.memory import Memory
from bot.moved_days import days_between, next_day
from bot.moved_lifts import compared_weeks
from bot.plans_in_force import PlanInForce, plan_in_force
from bot.week_values import Client, Week
from engine.progression.words import counted
from engine.strength.stall import Direction, Trend, trend
from engine.values.ids import ExerciseName
from engine.values.plan import PlannedDay
from engine.values.sets import SetRecord
from engine.volume.tally import tally
from storage.records import Permission, Person
from storage.store import Store

WEEK = timedelta(days=7)
SUNDAY = 6
TREND_DAYS = 40
"""More training days of a lift than its trend looks at."""


def week_of(store: Store, memory: Memory, person: Person, today: date, log: Sequence[SetRecord] | None = None) -> Week:
    """The week that `today` falls in, as far as it has come.

    Shape: `log` holds the person's sets of `_looked_at(today)`; without it they are looked up.
    """
    first, last = _week(today)
    if log is None:
        log = store.sets.between(person.id, *_looked_at(today))
    plan = plan_in_force(store, memory, person.id, today)
    exercises = memory.catalogue_of(store, person.id).exercises
    records = [record for record in log if first <= record.on]
    weighed = store.body_weights.at(person.id, last)
    targets = plan.plan.targets if plan else {}
    volume = tally(records, exercises, targets, weighed.load if weighed else None)
    before = [record for record in log if record.on < first]
    moved = compared_weeks(store, memory, person.id, records, before)
    notes = store.notes.between(person.id, first, last)
    choices = store.choices.between(person.id, plan.stored.starts_on, last) if plan else ()
    days = days_between(plan, choices, first, last) if plan else ()
    return Week(
        first=first,
        last=last,
        sessions=len({record.on for record in records}),
        planned=len(days),
        sets=sum(record.done.counts_as_work for record in records),
        asked=_asked(store, memory, person, days),
        volume=volume,
        up=moved.up,
        same=moved.same,
        down=moved.down,
        pains=[note for note in notes if note.pain],
        shared=[note for note in notes if note.shared],
        coming=next_day(plan, choices, today + timedelta(days=1)) if plan else None,
        missed_days=_missed(plan, days, records, today),
        stalls=_stalls(store, memory, person, records, today),
    )


def week_of_person(store: Store, memory: Memory, person: Person, today: date) -> Week:
    """The same for someone else than the one who asks: a coach's client."""
    return week_of(store, memory, person, today)


def coach_week(store: Store, memory: Memory, clients: Sequence[Person], today: date) -> Sequence[Client]:
    """Every client's week, those who need a look first; the sets of all of them are one query."""
    rows = []
    logs = store.sets.of_athletes([person.id for person in clients], *_looked_at(today)) if clients else {}
    for person in clients:
        week = week_of(store, memory, person, today, logs[person.id])
        rows.append(Client(person.name, week, attention(week)))
    return sorted(rows, key=lambda client: (-len(client.attention), client.name.casefold()))


def _week(today: date) -> tuple[date, date]:
    first = today - timedelta(days=today.weekday())
    return first, first + timedelta(days=6)


def _looked_at(today: date) -> tuple[date, date]:
    """The days whose sets a week is told from: its own, and five weeks before it to compare with."""
    first, last = _week(today)
    return first - 5 * WEEK, last


def attention(week: Week) -> list[str]:
    """Why a coach should look: shared pain, sessions missed, lifts that fell."""
    reasons = []
    if any(note.pain for note in week.shared):
        reasons.append("shared a pain note")
    if week.missed_days:
        reasons.append(f"{week.sessions} of {counted(week.planned, 'session')}")
    if week.stalls:
        reasons.append(f"no gain: {', '.join(name for name, _ in week.stalls[:2])}")
    elif week.down:
        reasons.append(f"down: {', '.join(moved.exercise for moved in week.down[:2])}")
    return reasons


def may_see(store: Store, coach: Person, client: Person) -> bool:
    """Whether the client lets this coach see her log."""
    link = store.coaching.link(coach.id, client.id)
    return link is not None and Permission.SEE_LOG in link.permissions


def _asked(store: Store, memory: Memory, person: Person, days: Sequence[PlannedDay]) -> int:
    """How many sets the week's sessions ask, waves and deloads worked out."""
    sessions = [session_at(store, memory, person.id, day.on) for day in days if day.on is not None]
    return sum(len(one.sets) for session in sessions for one in session.prescriptions)


def _stalls(
    store: Store, memory: Memory, person: Person, records: Sequence[SetRecord], today: date
) -> list[tuple[ExerciseName, Trend]]:
    """The week's lifts that stand still or fall, the surest first."""
    exercises = memory.catalogue_of(store, person.id).exercises
    weighed = store.body_weights.at(person.id, today)
    found = []
    for name in {record.done.exercise for record in records if record.done.is_hard}:
        if name not in exercises:
            continue
        history = store.sets.history(person.id, name, until=today, days=TREND_DAYS)
        seen = trend(history, exercises[name], today, weighed.load if weighed else None)
        if seen is not None and seen.direction in (Direction.STALLED, Direction.FALLING):
            found.append((name, seen))
    return sorted(found, key=lambda pair: (-pair[1].sure, pair[0]))


def _missed(
    plan: PlanInForce | None, days: Sequence[PlannedDay], records: Sequence[SetRecord], today: date
) -> list[str]:
    if plan is None:
        return []
    trained = len({record.on for record in records})
    # On Sunday evening, when the digest goes out, that day's session counts as gone too.
    before = today + timedelta(days=1) if today.weekday() == SUNDAY else today
    gone = [day for day in days if day.on is not None and day.on < before]
    return [day.day.label for day in gone[trained:]]
