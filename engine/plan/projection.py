"""A plan projected forward: what each day would ask for if every session were done as assumed.

The projection is the product's own progression, run over a log that goes on as `invented.py` assumes: every session
made, or only as many as the athlete's own share of sessions made. With a share of 0.75 one session of an exercise
in four is not made, the same ones each time: a projection is worked out, never drawn by lot.
Days without a weekday are taken to be spread evenly over their week.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from decimal import Decimal

from engine.loading.loadable import Loadable
from engine.plan.calendar import DAYS_A_WEEK, PlannedWeek, days_of_week, planned_week
from engine.plan.invented import invented
from engine.progression import prescribe
from engine.progression.exposures import records_of
from engine.progression.inside import work_sets
from engine.progression.sessions import Choices, SessionDone, exposures
from engine.progression.terms import least_reps
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.plan import Plan, PlannedDay, Slot
from engine.values.prescription import Exposure, Prescription
from engine.values.sets import SetRecord

EVERY_SESSION = Decimal(1)
HALF = Decimal("0.5")
"""Where the shares begin to add up: with 0.75 the third of four sessions is the one that is not made."""


@dataclass(frozen=True, slots=True)
class Assumptions:
    """`success` is the share of sessions made, 0 to 1; `strength` are the maxima that slots by
    effort follow, which stay as they are.

    Errors: ValueError for a share outside 0 to 1.
    """

    success: Decimal = EVERY_SESSION
    strength: Mapping[Slot, Load] = field(default_factory=dict)

    def __post_init__(self) -> None:
        if not 0 <= self.success <= 1:
            raise ValueError(f"no such share of sessions: {self.success}; expected 0 to 1")

    @property
    def in_words(self) -> str:
        """What is assumed, in one line."""
        if self.success == EVERY_SESSION:
            return "If all reps are made in every session"
        return f"If {round(self.success * 100)} % of the sessions are made, as up to now"


@dataclass(frozen=True, slots=True)
class ProjectedDay:
    """What one planned day would ask for, slot by slot. `on` is its date, or the date taken for a day without one."""

    number: int
    on: date
    planned: PlannedDay
    asked: tuple[Prescription, ...]


@dataclass(slots=True)
class _Run:
    """A projection under way: the log so far, real and invented, and how each exercise fares."""

    sessions: list[SessionDone]
    last: dict[ExerciseName, date]
    owed: dict[ExerciseName, Decimal] = field(default_factory=dict)
    next_id: int = -1

    def makes(self, exercise: ExerciseName, success: Decimal) -> bool:
        """Whether this session of the exercise is made, so that the shares add up over time."""
        owed = self.owed.get(exercise, HALF) + success
        made = owed >= 1
        self.owed[exercise] = owed - made
        return made


def project(
    plan: Plan,
    starts_on: date,
    loadable: Callable[[ExerciseName], Loadable],
    *,
    since: date | None = None,
    sessions: Sequence[SessionDone] = (),
    assumptions: Assumptions = Assumptions(),
    choices: Choices = Choices(),  # noqa: B008 - frozen
    last_week: int | None = None,
    unit: Unit | None = None,
) -> tuple[ProjectedDay, ...]:
    """Every planned day from `since` on to the end of the block it falls in, or to plan week `last_week`.

    Shape: `sessions` are the log's, as assigned to the plan, oldest first. Days on which one of them was done already
    are left out; one begun on `since` itself is taken to be finished as assumed, but for what `choices` skip or swap.
    `since` None: from the plan's start.
    Units: loads are asked in `unit`; None: in the plan's.
    """
    first = since or starts_on
    run = _Run(list(sessions), _last_trained(sessions))
    done = {(session.planned.week_first, session.planned.day.label) for session in sessions if session.planned}
    run.sessions = [
        _finished(run, session, loadable, assumptions, choices, unit) if session.on == first else session
        for session in run.sessions
    ]
    found = []
    for week, on, planned in _days(plan, starts_on, first, last_week):
        if (planned.week_first, planned.day.label) in done:
            continue
        found.append(_projected(run, week, on, planned, loadable, assumptions, unit))
    return tuple(found)


def success_share(slots: Sequence[tuple[Slot, Sequence[Exposure]]]) -> Decimal | None:
    """The share of sessions in which every planned set met its least reps; None where there is none to judge by.

    Shape: each slot with its exposures. Deload weeks prove nothing and are left out.
    """
    judged = [
        _met(slot, exposure) for slot, past in slots for exposure in past if exposure.sets and not exposure.deload
    ]
    return Decimal(sum(judged)) / len(judged) if judged else None


def _met(slot: Slot, exposure: Exposure) -> bool:
    least = least_reps(slot.target)
    good = [record for record in exposure.sets if record.done.reps >= least and not record.done.missed]
    return len(good) >= min(slot.sets, len(exposure.sets)) and len(exposure.sets) >= slot.sets


def _days(
    plan: Plan, starts_on: date, first: date, last_week: int | None
) -> Iterator[tuple[PlannedWeek, date, PlannedDay]]:
    start = max(1, (first - starts_on).days // DAYS_A_WEEK + 1)
    for number in range(start, (last_week or _end_of_block(plan, start)) + 1):
        week = planned_week(plan, starts_on, number)
        if week is None:
            return
        days = days_of_week(plan, starts_on, number)
        dated = [(planned.on or _spread(week, at, len(days)), planned) for at, planned in enumerate(days)]
        for on, planned in sorted(dated, key=lambda pair: pair[0]):
            if on >= first:
                yield week, on, planned


def _end_of_block(plan: Plan, number: int) -> int:
    last = 0
    for block in plan.blocks:
        last += block.weeks
        if number <= last:
            break
    return last


def _spread(week: PlannedWeek, at: int, days: int) -> date:
    return week.first + timedelta(days=at * DAYS_A_WEEK // days)


def _finished(
    run: _Run,
    session: SessionDone,
    loadable: Callable[[ExerciseName], Loadable],
    assumptions: Assumptions,
    choices: Choices,
    unit: Unit | None,
) -> SessionDone:
    """A session under way with the sets that are still to do."""
    planned = session.planned
    if planned is None:
        return session
    rest: list[SetRecord] = []
    for slot in planned.day.slots:
        if choices.skipped(slot.exercise, session.on) or choices.instead_of(slot.exercise, session.on):
            continue
        asked, records = _session_of(run, slot, session.on, planned, loadable, assumptions, unit)
        rest.extend(records[min(work_sets(records_of(slot, planned, session.records)), len(asked.sets)) :])
    return replace(session, records=(*session.records, *rest))


def _projected(
    run: _Run,
    week: PlannedWeek,
    on: date,
    planned: PlannedDay,
    loadable: Callable[[ExerciseName], Loadable],
    assumptions: Assumptions,
    unit: Unit | None,
) -> ProjectedDay:
    asked: list[Prescription] = []
    logged: list[SetRecord] = []
    for slot in planned.day.slots:
        prescription, records = _session_of(run, slot, on, planned, loadable, assumptions, unit)
        asked.append(prescription)
        logged.extend(records)
    run.last.update({slot.exercise: on for slot in planned.day.slots})
    run.sessions.append(SessionDone(on, planned, tuple(logged)))
    return ProjectedDay(week.number, on, planned, tuple(asked))


def _session_of(
    run: _Run,
    slot: Slot,
    on: date,
    planned: PlannedDay,
    loadable: Callable[[ExerciseName], Loadable],
    assumptions: Assumptions,
    unit: Unit | None,
) -> tuple[Prescription, tuple[SetRecord, ...]]:
    """What a slot asks on a day, and the sets that the assumptions make of it."""
    past = exposures(slot, planned, run.sessions, on)
    prescription = prescribe(
        slot,
        past,
        today=on,
        loadable=loadable(slot.exercise),
        deload=planned.deload,
        strength=assumptions.strength.get(slot) if assumptions.strength else None,
        last_trained=run.last.get(slot.exercise),
        unit=unit,
    )
    made = planned.deload is not None or run.makes(slot.exercise, assumptions.success)
    records = invented(prescription, slot, past, on, run.next_id, made=made)
    run.next_id -= len(records)
    return prescription, records


def _last_trained(sessions: Sequence[SessionDone]) -> dict[ExerciseName, date]:
    return {record.done.exercise: record.on for session in sessions for record in session.records}
