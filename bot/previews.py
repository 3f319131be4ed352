"""The days to come of a plan, worked out as if they were trained."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import Decimal

from bot.memory import Memory
from bot.plans_in_force import plan_in_force
from bot.session_frames import Loadables, choices_of, facts_of, gym_of, strengths
from engine.plan.projection import EVERY_SESSION, Assumptions, ProjectedDay, project, success_share
from engine.progression.sessions import (
    assign,
    exposures,
)
from engine.values.ids import AthleteId, ExerciseName
from engine.values.plan import MaxReps
from engine.values.schemes import RepTotal
from storage.store import Store


def projected(
    store: Store, memory: Memory, athlete: AthleteId, today: date, share: Decimal | None, last_week: int
) -> tuple[ProjectedDay, ...]:
    """The plan's days from today to the end of a week, if every session is made, or this share of them."""
    in_force = plan_in_force(store, memory, athlete, today)
    if in_force is None:
        return ()
    facts = facts_of(store, athlete, in_force, today)
    log = store.sets.between(athlete, in_force.stored.starts_on, today)
    choices = choices_of(facts.choices)
    slots = tuple(dict.fromkeys(slot for day in in_force.days for slot in day.day.slots))
    strength = strengths(store, memory, athlete, slots, today)
    return project(
        in_force.plan,
        in_force.stored.starts_on,
        Loadables(memory.catalogue_of(store, athlete), facts.unit, gym_of(facts.gym, facts.unit)),
        since=max(today, in_force.stored.starts_on),
        sessions=assign(in_force.days, log, choices),
        assumptions=Assumptions(EVERY_SESSION if share is None else share, strength),
        choices=choices,
        last_week=last_week,
        unit=facts.unit,
    )


def assumed_maxima(
    store: Store, memory: Memory, athlete: AthleteId, today: date, days: Sequence[ProjectedDay]
) -> tuple[ExerciseName, ...]:
    """The lifts of these days on sets of maximum reps that no session of the plan holds yet, so that one is assumed."""
    in_force = plan_in_force(store, memory, athlete, today)
    if in_force is None:
        return ()
    log = store.sets.between(athlete, in_force.stored.starts_on, today)
    done = {record.done.exercise for record in log}
    slots = (slot for projected in days for slot in projected.planned.day.slots)
    to_maximum = (
        slot.exercise for slot in slots if isinstance(slot.target, MaxReps) and not isinstance(slot.scheme, RepTotal)
    )
    return tuple(dict.fromkeys(name for name in to_maximum if name not in done))


def success_of(store: Store, memory: Memory, athlete: AthleteId, today: date) -> Decimal | None:
    """The share of sessions in which she made all planned reps so far; None where there is nothing to judge by."""
    in_force = plan_in_force(store, memory, athlete, today)
    if in_force is None:
        return None
    log = store.sets.between(athlete, in_force.stored.starts_on, today)
    sessions = assign(in_force.days, log, choices_of(facts_of(store, athlete, in_force, today).choices))
    latest = {day.day.label: day for day in in_force.days}
    return success_share(
        [(slot, exposures(slot, day, sessions, today)) for day in latest.values() for slot in day.day.slots]
    )
