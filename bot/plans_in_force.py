"""The plan an athlete is on. It follows from what was assigned and the date; nothing here is stored."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.memory import Memory
from engine.catalogue.catalogue import Catalogue
from engine.plan.calendar import days_of_week, planned_week, week_number
from engine.plan.text import parse_plan
from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Unit
from engine.values.plan import Plan, PlannedDay
from storage.records import StoredPlan
from storage.store import Store


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
