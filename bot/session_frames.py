"""What a plan asks of an athlete on a day, worked out from the log or remembered.

Everything a frame depends on is in the key under which it is remembered.
"""

from __future__ import annotations

import logging
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cache

from bot.memory import Memory
from bot.moved_days import moves_of
from bot.pain_spans import PAIN_HELD_FOR, Spans, spans_of
from bot.plans_in_force import PlanInForce
from bot.preferences import GYM, PAIN_OVER, UNIT
from engine.catalogue.catalogue import Catalogue
from engine.loading.exercises import loadable_for
from engine.loading.gym import Gym
from engine.loading.gym_words import read_gym
from engine.loading.loadable import Loadable
from engine.progression.maxima import maxima_for
from engine.progression.sessions import (
    Athlete,
    Choices,
    SessionDone,
    Skip,
    SlotToday,
    Swap,
    assign,
    due_on,
    session_for,
)
from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load, Unit
from engine.values.plan import PlannedDay, Slot
from engine.values.sets import SetRecord
from storage.records import Choice, ChoiceKind
from storage.store import Store

STRENGTH_DAYS = 30
"""More training days of a lift than the estimate of strength looks at."""
A_YEAR = timedelta(days=366)
"""How far back progression looks for the last time of a lift."""


log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class Frame:
    """The part of a session that the sets of the day itself do not change, but for which lifts they are of."""

    planned: PlannedDay | None
    slots: Sequence[SlotToday]
    begun: Sequence[tuple[PlannedDay, Sequence[SlotToday]]] = ()
    broken: bool = False

    def holds(self, lifts: frozenset[ExerciseName]) -> bool:
        """Whether these lifts are all asked for here, each by one slot."""
        asked = [one.prescription.exercise for one in self.slots]
        return all(asked.count(lift) == 1 for lift in lifts)


@dataclass(frozen=True, slots=True)
class Facts:
    """All that a frame depends on beside plan and log; also the key under which one is remembered."""

    choices: tuple[Choice, ...]
    pain: Spans
    unit: Unit
    gym: str


def frame_of(
    store: Store, memory: Memory, athlete: AthleteId, in_force: PlanInForce, sets_today: Sequence[SetRecord], on: date
) -> Frame:
    """Worked out from the log, or remembered where nothing that it depends on has changed.

    A fault in working it out must never cost a set: the frame is then empty and says that it is broken.
    """
    facts = facts_of(store, athlete, in_force, on)
    try:
        return _remembered(store, memory, athlete, in_force, sets_today, on, facts)
    except (ArithmeticError, AssertionError, AttributeError, LookupError, TypeError, ValueError):
        log.exception("could not work out the session of %s", on)
        return Frame(None, (), broken=True)


def _remembered(
    store: Store,
    memory: Memory,
    athlete: AthleteId,
    in_force: PlanInForce,
    sets_today: Sequence[SetRecord],
    on: date,
    facts: Facts,
) -> Frame:
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


def facts_of(store: Store, athlete: AthleteId, in_force: PlanInForce, on: date) -> Facts:
    """What a frame depends on beside plan and log, looked up once a transaction."""
    key = f"facts {athlete} {on}"
    if key not in store.kept:
        choices = store.choices.between(athlete, in_force.stored.starts_on, on + timedelta(days=13))
        settings = store.settings.all(athlete)
        unit, gym = Unit(settings.get(UNIT, Unit.KG.value)), str(settings.get(GYM, ""))
        store.kept[key] = Facts(tuple(choices), pained(store, athlete, in_force, on), unit, gym)
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
        loadable=Loadables(memory.catalogue_of(store, athlete), facts.unit, gym_of(facts.gym, facts.unit)),
        pain=dict(facts.pain),
        strength=strengths(store, memory, athlete, planned.day.slots, on),
        choices=choices,
        unit=facts.unit,
        exercises=memory.catalogue_of(store, athlete).exercises,
    )
    begun = [session.planned for session in sessions if session.on == on and session.planned is not None]
    days = [(day, session_for(day, sessions, on, athletes_own)) for day in (planned, *begun)]
    return Frame(planned, days[0][1], days[1:] or days[:1])


def strengths(store: Store, memory: Memory, athlete: AthleteId, slots: Sequence[Slot], on: date) -> dict[Slot, Load]:
    """Maxima of the slots whose load follows strength, from all their sets before the day."""
    weighed = store.body_weights.at(athlete, on)
    return maxima_for(
        slots,
        lambda lift: store.sets.history(athlete, lift, until=on - timedelta(days=1), days=STRENGTH_DAYS),
        memory.catalogue_of(store, athlete).exercises,
        weighed.load if weighed else None,
    )


def choices_of(stored: Sequence[Choice]) -> Choices:
    """Stored choices as progression needs them."""
    return Choices(
        swaps=tuple(Swap(one.on, one.exercise, one.to) for one in stored if one.exercise is not None and one.to),
        skips=tuple(Skip(one.on, one.exercise) for one in stored if one.kind is ChoiceKind.SKIP and one.exercise),
    )


def pained(store: Store, athlete: AthleteId, in_force: PlanInForce, on: date) -> Spans:
    """When each exercise hurt, as far as it bears on this plan: then its load is not pushed."""
    notes = store.notes.between(athlete, min(in_force.stored.starts_on, on) - PAIN_HELD_FOR, on, pain=True)
    return spans_of(notes, store.settings.get(athlete, PAIN_OVER, {})) if notes else ()


def _planned_for(
    in_force: PlanInForce, sessions: Sequence[SessionDone], stored: Sequence[Choice], on: date
) -> PlannedDay | None:
    """The training day of a date: one begun or moved here, else the first that is due and neither left nor moved."""
    begun = [session.planned for session in sessions if session.on == on and session.planned is not None]
    moves = moves_of(stored)
    here = [day for day in in_force.days if day.on is not None and moves.get(day.on) == on]
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


class Loadables:
    """What an athlete can load for each exercise, in her gym or the usual one of her unit."""

    def __init__(self, known: Catalogue, unit: Unit, gym: Gym | None) -> None:
        self._known, self._unit, self._gym = known, unit, gym

    def __call__(self, exercise: ExerciseName) -> Loadable:
        return loadable_for(self._known.exercises[exercise], self._gym, self._unit)


@cache
def gym_of(words: str, unit: Unit) -> Gym | None:
    """The gym that stored words tell; None: the usual one of the unit."""
    return read_gym(words, unit).gym if words else None
