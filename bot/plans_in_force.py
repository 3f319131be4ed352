"""The plan an athlete is on, the session it asks for on a day, and how far that session has come.

All of it follows from plan, log and date; nothing here is stored.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal

from bot.memory import Memory
from bot.replies.receipt import Following
from engine.catalogue.catalogue import Catalogue
from engine.loading.exercises import loadable_for
from engine.loading.loadable import Loadable
from engine.plan.calendar import days_of_week, next_planned, planned_days, planned_week, week_number
from engine.plan.projection import Assumptions, ProjectedDay, project, success_share
from engine.plan.text import parse_plan
from engine.progression.inside import work_sets
from engine.progression.sessions import (
    Athlete,
    Choices,
    SessionDone,
    Skip,
    SlotToday,
    Swap,
    assign,
    due_on,
    exposures,
    progress,
    session_for,
)
from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Unit
from engine.values.plan import Plan, PlannedDay, Slot
from engine.values.prescription import Prescription
from engine.values.sets import SetRecord
from storage.records import Choice, ChoiceKind, StoredPlan
from storage.store import Store

A_YEAR = timedelta(days=366)
"""How far back progression looks for the last time of a lift."""
PAIN_HELD_FOR = timedelta(days=14)
"""How long a pain note holds a movement's load when nothing more is said. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Session:
    """One day of an athlete: what is planned, what is asked, what is done.

    `prescriptions` leaves skipped lifts out; `latest_exercise` is the lift logged last that day.
    """

    on: date
    in_force: PlanInForce | None
    planned: PlannedDay | None
    slots: Sequence[SlotToday]
    sets_today: Sequence[SetRecord]
    coming: PlannedDay | None

    @property
    def plan(self) -> Plan | None:
        return self.in_force.plan if self.in_force is not None else None

    @property
    def prescriptions(self) -> Sequence[Prescription]:
        return [one.prescription for one in self.slots if not one.skipped]

    @property
    def latest_exercise(self) -> ExerciseName | None:
        latest = max(self.sets_today, key=lambda record: (record.at, record.place), default=None)
        return latest.done.exercise if latest is not None else None

    def slot_of(self, exercise: ExerciseName) -> Slot | None:
        """The slot that asks for an exercise today, also where the exercise stands in for the slot's own."""
        return next((one.slot for one in self.slots if one.prescription.exercise == exercise), None)

    def prescription_of(self, exercise: ExerciseName) -> Prescription | None:
        """What is asked of an exercise today."""
        return next((one for one in self.prescriptions if one.exercise == exercise), None)

    def sets_done(self, exercise: ExerciseName) -> int:
        """How many work sets of an exercise stand today."""
        return work_sets([one for one in self.sets_today if one.done.exercise == exercise])

    def planned_sets(self, exercise: ExerciseName) -> int:
        """How many sets of an exercise today asks for, 0 where it is not planned."""
        return sum(len(one.sets) for one in self.prescriptions if one.exercise == exercise)

    def is_finished(self, exercise: ExerciseName) -> bool:
        """Whether the exercise is planned today and all its sets are in."""
        asked = self.planned_sets(exercise)
        return 0 < asked <= self.sets_done(exercise)

    def following(self, in_hand: ExerciseName | None) -> Following | None:
        """What comes next where this lift is in hand: the rest of it, its superset's partner, or the next lift."""
        found = progress(self.slots, self.sets_today, in_hand).next
        return None if found is None else Following(found.today.prescription, found.number - 1)

    def next_up(self) -> Following | None:
        """What comes next after the lift logged last."""
        return self.following(self.latest_exercise)


@dataclass(frozen=True, slots=True)
class PlanInForce:
    """A plan with the day it started; `days` are all its training days in order."""

    stored: StoredPlan
    plan: Plan
    days: Sequence[PlannedDay]

    def week(self, on: date) -> int | None:
        """The plan's week of a day, counted from 1."""
        return week_number(self.plan, self.stored.starts_on, on)

    @property
    def exercises(self) -> frozenset[ExerciseName]:
        """Every exercise that the plan asks for."""
        return frozenset(slot.exercise for day in self.days for slot in day.day.slots)

    def block_at(self, on: date) -> int:
        """The place of the block that a day falls in, from 0; the last one after the plan's end."""
        week = planned_week(self.plan, self.stored.starts_on, self.week(on) or 1)
        return self.plan.blocks.index(week.block) if week is not None else len(self.plan.blocks) - 1

    def planned_days(self, first: date, last: date) -> tuple[PlannedDay, ...]:
        """The dated training days between two dates, both included."""
        return planned_days(self.plan, self.stored.starts_on, first, last)

    def next_day(self, after: date) -> PlannedDay | None:
        """The next training day from a date on."""
        dated = next_planned(self.plan, self.stored.starts_on, after)
        undated = [day for day in self.days if day.on is None and day.week_first is not None]
        coming = [day for day in undated if day.week_first is not None and day.week_first + timedelta(days=6) >= after]
        return dated or next(iter(coming), None)

    def session(self, store: Store, memory: Memory, athlete: AthleteId, on: date) -> Session:
        """What the plan asks on a day, as the log stands."""
        return session_at(store, memory, athlete, on)


def plan_in_force(store: Store, memory: Memory, athlete: AthleteId, on: date) -> PlanInForce | None:
    """The plan that an athlete is on, or about to start; None without one."""
    key = f"plan {athlete} {on}"
    if key not in store.kept:
        store.kept[key] = store.plans.at(athlete, on) or store.plans.newest(athlete)
    stored: StoredPlan | None = store.kept[key]
    if stored is None or not stored.text:
        return None
    own = memory.catalogue_of(store, athlete)
    return memory.recall(("plan", athlete, stored, memory.own_of(store, athlete)), lambda: _in_force(stored, own))


def _in_force(stored: StoredPlan, known: Catalogue) -> PlanInForce | None:
    plan = parse_plan(stored.text, known, Unit.KG).plan
    if plan is None:
        return None
    days = [day for number in range(1, plan.weeks + 1) for day in days_of_week(plan, stored.starts_on, number)]
    return PlanInForce(stored, plan, tuple(days))


def session_at(store: Store, memory: Memory, athlete: AthleteId, on: date) -> Session:
    """What is planned, asked and done on a day."""
    in_force = plan_in_force(store, memory, athlete, on)
    sets_today = store.sets.of_day(athlete, on)
    if in_force is None:
        return Session(on, None, None, (), sets_today, None)
    frame = _frame(store, memory, athlete, in_force, sets_today, on)
    return Session(on, in_force, frame.planned, frame.slots, sets_today, in_force.next_day(on + timedelta(days=1)))


@dataclass(frozen=True, slots=True)
class Frame:
    """The part of a session that the sets of the day itself do not change, but for which lifts they are of."""

    planned: PlannedDay | None
    slots: Sequence[SlotToday]

    def holds(self, lifts: frozenset[ExerciseName]) -> bool:
        """Whether these lifts are all asked for here, each by one slot."""
        asked = [one.prescription.exercise for one in self.slots]
        return all(asked.count(lift) == 1 for lift in lifts)


@dataclass(frozen=True, slots=True)
class Facts:
    """All that a frame depends on beside plan and log; also the key under which one is remembered."""

    choices: tuple[Choice, ...]
    pain: frozenset[ExerciseName]
    unit: Unit


def _frame(
    store: Store, memory: Memory, athlete: AthleteId, in_force: PlanInForce, sets_today: Sequence[SetRecord], on: date
) -> Frame:
    """Worked out from the log, or remembered where nothing that it depends on has changed."""
    facts = _facts(store, athlete, in_force, on)
    stamp_key = f"stamp {athlete} {on}"
    if stamp_key not in store.kept:
        first = min(in_force.stored.starts_on, on - A_YEAR)
        store.kept[stamp_key] = store.sets.stamp(athlete, first, on - timedelta(days=1))
    stamp = store.kept[stamp_key]
    key = ("frame", athlete, on, in_force.stored, memory.own_of(store, athlete), facts, stamp)
    lifts = frozenset(record.done.exercise for record in sets_today)
    if not lifts:
        return memory.recall(key, lambda: _work_out(store, memory, athlete, in_force, facts, on))
    # Before its first set a day's frame is the calendar's; sets of its own lifts leave it so, others may move it.
    before: Frame | None = memory.known(key)
    if before is not None and before.holds(lifts):
        return before
    return memory.recall((*key, lifts), lambda: _work_out(store, memory, athlete, in_force, facts, on))


def _facts(store: Store, athlete: AthleteId, in_force: PlanInForce, on: date) -> Facts:
    key = f"facts {athlete} {on}"
    if key not in store.kept:
        choices = store.choices.between(athlete, in_force.stored.starts_on, on + timedelta(days=13))
        unit = Unit(store.settings.get(athlete, "unit", Unit.KG.value))
        store.kept[key] = Facts(tuple(choices), pained(store, athlete, on), unit)
    found: Facts = store.kept[key]
    return found


def _work_out(store: Store, memory: Memory, athlete: AthleteId, in_force: PlanInForce, facts: Facts, on: date) -> Frame:
    log = store.sets.between(athlete, in_force.stored.starts_on, on)
    choices = choices_of(facts.choices)
    sessions = assign(in_force.days, log, choices)
    planned = _planned_for(in_force, sessions, facts.choices, on)
    if planned is None:
        return Frame(None, ())
    athletes_own = Athlete(
        log=_log(store, athlete, log, planned, choices, on),
        loadable=_Loadables(memory.catalogue_of(store, athlete), facts.unit),
        pain=facts.pain,
        choices=choices,
    )
    return Frame(planned, session_for(planned, sessions, on, athletes_own))


def projected(
    store: Store, memory: Memory, athlete: AthleteId, today: date, share: Decimal | None, last_week: int
) -> tuple[ProjectedDay, ...]:
    """The plan's days from today to the end of a week, if every session is made, or this share of them."""
    in_force = plan_in_force(store, memory, athlete, today)
    if in_force is None:
        return ()
    facts = _facts(store, athlete, in_force, today)
    log = store.sets.between(athlete, in_force.stored.starts_on, today)
    return project(
        in_force.plan,
        in_force.stored.starts_on,
        _Loadables(memory.catalogue_of(store, athlete), facts.unit),
        since=max(today, in_force.stored.starts_on),
        sessions=assign(in_force.days, log, choices_of(facts.choices)),
        assumptions=Assumptions() if share is None else Assumptions(success=share),
        last_week=last_week,
    )


def success_of(store: Store, memory: Memory, athlete: AthleteId, today: date) -> Decimal | None:
    """The share of sessions in which she made all planned reps so far; None where there is nothing to judge by."""
    in_force = plan_in_force(store, memory, athlete, today)
    if in_force is None:
        return None
    log = store.sets.between(athlete, in_force.stored.starts_on, today)
    sessions = assign(in_force.days, log, choices_of(_facts(store, athlete, in_force, today).choices))
    latest = {day.day.label: day for day in in_force.days}
    return success_share(
        [(slot, exposures(slot, day, sessions, today)) for day in latest.values() for slot in day.day.slots]
    )


def choices_of(stored: Sequence[Choice]) -> Choices:
    """Stored choices as progression needs them."""
    return Choices(
        swaps=tuple(Swap(one.on, one.exercise, one.to) for one in stored if one.exercise is not None and one.to),
        skips=tuple(Skip(one.on, one.exercise) for one in stored if one.kind is ChoiceKind.SKIP and one.exercise),
    )


def pained(store: Store, athlete: AthleteId, on: date) -> frozenset[ExerciseName]:
    """The exercises with a pain note of late: their load is not pushed."""
    notes = store.notes.between(athlete, on - PAIN_HELD_FOR, on, pain=True)
    return frozenset(note.exercise for note in notes if note.exercise is not None)


def _planned_for(
    in_force: PlanInForce, sessions: Sequence[SessionDone], stored: Sequence[Choice], on: date
) -> PlannedDay | None:
    """The training day of a date: one begun or moved here, else the first that is due and neither left nor moved."""
    begun = [session.planned for session in sessions if session.on == on and session.planned is not None]
    moved_here = [one.on for one in stored if one.kind is ChoiceKind.MOVE and one.to_day == on]
    here = [day for day in in_force.days if day.on in moved_here]
    left = any(
        one.on == on and one.exercise is None and one.kind in (ChoiceKind.SKIP, ChoiceKind.MOVE) for one in stored
    )
    due = () if left else due_on(in_force.days, sessions, on)
    return next(iter([*begun[-1:], *here, *due]), None)


def _log(
    store: Store, athlete: AthleteId, log: Sequence[SetRecord], planned: PlannedDay, choices: Choices, on: date
) -> Sequence[SetRecord]:
    """The log since the plan began, and before it the last day of whatever today needs and the plan has not seen."""
    wanted = {slot.exercise for slot in planned.day.slots} | {swap.to for swap in choices.swaps if swap.on == on}
    missing = wanted - {record.done.exercise for record in log if record.on < on}
    earlier = [
        record
        for exercise in sorted(missing)
        for record in store.sets.history(athlete, exercise, until=on - timedelta(days=1), days=1)
    ]
    return (*sorted(earlier, key=lambda record: (record.on, record.place)), *log)


class _Loadables:
    def __init__(self, known: Catalogue, unit: Unit) -> None:
        self._known, self._unit = known, unit

    def __call__(self, exercise: ExerciseName) -> Loadable:
        return loadable_for(self._known.exercises[exercise], None, self._unit)
