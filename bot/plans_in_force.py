"""The plan an athlete is on. It follows from what was assigned and the date; nothing here is stored."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.memory import Memory
from engine.catalogue.catalogue import Catalogue
from engine.plan.calendar import days_of_week, next_planned, planned_days, planned_week, week_number
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

    def planned_days(self, first: date, last: date) -> tuple[PlannedDay, ...]:
        """The dated training days between two dates, both included."""
        return planned_days(self.plan, self.stored.starts_on, first, last)

    def next_day(self, first: date) -> PlannedDay | None:
        """The next training day from a date on, that date included."""
        dated = next_planned(self.plan, self.stored.starts_on, first - timedelta(days=1))
        undated = [day for day in self.days if day.on is None and day.week_first is not None]
        coming = [day for day in undated if day.week_first is not None and day.week_first + timedelta(days=6) >= first]
        return dated or next(iter(coming), None)


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
