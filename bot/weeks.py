"""A week of one athlete, or of a coach's clients, worked out from the log: what summary, digest and `week` tell.

A week is Monday to Sunday by the athlete's calendar.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from bot.memory import Memory
from bot.plans_in_force import PlanInForce, plan_in_force
from bot.week_values import Client, Moved, Week
from engine.values.ids import ExerciseName
from engine.values.load import Load
from engine.values.plan import PlannedDay
from engine.values.sets import SetRecord
from engine.volume.tally import tally
from storage.records import Permission, Person
from storage.store import Store

WEEK = timedelta(days=7)


def week_of(store: Store, memory: Memory, person: Person, today: date) -> Week:
    """The week that `today` falls in, as far as it has come."""
    first = today - timedelta(days=today.weekday())
    last = first + timedelta(days=6)
    plan = plan_in_force(store, memory, person.id, today)
    exercises = memory.catalogue_of(store, person.id).exercises
    records = store.sets.between(person.id, first, last)
    weighed = store.body_weights.at(person.id, last)
    targets = plan.plan.targets if plan else {}
    volume = tally(records, exercises, targets, weighed.load if weighed else None)
    before = store.sets.between(person.id, first - 5 * WEEK, first - timedelta(days=1))
    up, same, down = _compared(records, before)
    notes = store.notes.between(person.id, first, last)
    days = plan.planned_days(first, last) if plan else ()
    return Week(
        first=first,
        last=last,
        sessions=len({record.on for record in records}),
        planned=len(days),
        sets=sum(record.done.counts_as_work for record in records),
        asked=sum(slot.sets for day in days for slot in day.day.slots),
        volume=volume,
        up=up,
        same=same,
        down=down,
        pains=[note for note in notes if note.pain],
        shared=[note for note in notes if note.shared],
        coming=plan.next_day(today + timedelta(days=1)) if plan else None,
        missed_days=_missed(plan, days, records, today),
    )


def week_of_person(store: Store, memory: Memory, person: Person, today: date) -> Week:
    """The same for someone else than the one who asks: a coach's client."""
    return week_of(store, memory, person, today)


def coach_week(store: Store, memory: Memory, clients: Sequence[Person], today: date) -> Sequence[Client]:
    """Every client's week, those who need a look first."""
    rows = []
    for person in clients:
        week = week_of_person(store, memory, person, today)
        rows.append(Client(person.name, week, attention(week)))
    return sorted(rows, key=lambda client: (-len(client.attention), client.name.casefold()))


def attention(week: Week) -> list[str]:
    """Why a coach should look: shared pain, sessions missed, lifts that fell."""
    reasons = []
    if any(note.pain for note in week.shared):
        reasons.append("shared a pain note")
    if week.planned and week.sessions < week.planned:
        reasons.append(f"{week.sessions} of {week.planned} sessions")
    if week.down:
        reasons.append(f"down: {', '.join(moved.exercise for moved in week.down[:2])}")
    return reasons


def may_see(store: Store, coach: Person, client: Person) -> bool:
    """Whether the client lets this coach see her log."""
    link = store.coaching.link(coach.id, client.id)
    return link is not None and Permission.SEE_LOG in link.permissions


def _compared(
    records: Sequence[SetRecord], before: Sequence[SetRecord]
) -> tuple[list[Moved], list[ExerciseName], list[Moved]]:
    up, same, down = [], [], []
    earlier = _last_tops(before)
    for exercise, top in _tops(records).items():
        if exercise not in earlier:
            continue
        moved = Moved(exercise, top, earlier[exercise])
        if earlier[exercise] < top:
            up.append(moved)
        elif top < earlier[exercise]:
            down.append(moved)
        else:
            same.append(exercise)
    return up, same, down


def _tops(records: Sequence[SetRecord]) -> dict[ExerciseName, Load]:
    """Each lift's heaviest work load."""
    tops: dict[ExerciseName, Load] = {}
    for record in records:
        load = record.done.load
        if load is None or not record.done.is_hard:
            continue
        if record.done.exercise not in tops or tops[record.done.exercise] < load:
            tops[record.done.exercise] = load
    return tops


def _last_tops(before: Sequence[SetRecord]) -> dict[ExerciseName, Load]:
    """Each lift's heaviest work load in the last calendar week it was trained in."""
    weeks: dict[ExerciseName, tuple[date, list[SetRecord]]] = {}
    for record in before:
        monday = record.on - timedelta(days=record.on.weekday())
        latest, sets = weeks.get(record.done.exercise, (monday, []))
        weeks[record.done.exercise] = (monday, [record] if monday > latest else [*sets, record])
    return _tops([record for _, sets in weeks.values() for record in sets])


def _missed(
    plan: PlanInForce | None, days: Sequence[PlannedDay], records: Sequence[SetRecord], today: date
) -> list[str]:
    if plan is None:
        return []
    trained = len({record.on for record in records})
    gone = [day for day in days if day.on is not None and day.on < today]
    return [day.day.label for day in gone[trained:]]
