"""Where a date falls in a plan: block, week, week kind, deload or not, and the training days planned.

A plan's week is the seven days from its start date on, whatever weekday that is: a plan begun on a Wednesday still
gets every day of its first week. Plan weeks count from 1 over the whole plan, block weeks from 1 in each block.
Ranges of dates include both ends. A day without a weekday has no date: the athlete does such days in order.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from engine.values.plan import Block, Deload, Plan, PlannedDay, TrainingDay, WeekKind

DAYS_A_WEEK = 7


@dataclass(frozen=True, slots=True)
class PlannedWeek:
    """One week of a plan. `number` counts over the plan, `week` inside the block; `last` is its seventh day."""

    number: int
    block: Block
    week: int
    kind: WeekKind
    deload: Deload | None
    first: date
    last: date


def week_number(plan: Plan, starts_on: date, on: date) -> int | None:
    """The plan week of a date, counted from 1; None before the start or after the end."""
    days_in = (on - starts_on).days
    number = days_in // DAYS_A_WEEK + 1
    return number if days_in >= 0 and number <= plan.weeks else None


def planned_week(plan: Plan, starts_on: date, number: int) -> PlannedWeek | None:
    """The plan's week of this number, counted from 1 over all blocks; None where the plan has no such week."""
    week = number
    for block in plan.blocks:
        if 1 <= week <= block.weeks:
            first = starts_on + timedelta(days=DAYS_A_WEEK * (number - 1))
            deload = block.deload if week in block.deload_weeks else None
            last = first + timedelta(days=DAYS_A_WEEK - 1)
            return PlannedWeek(number, block, week, block.kind_of(week), deload, first, last)
        week -= block.weeks
    return None


def week_on(plan: Plan, starts_on: date, on: date) -> PlannedWeek | None:
    """The plan's week that a date falls in; None before the start or after the end."""
    number = week_number(plan, starts_on, on)
    return None if number is None else planned_week(plan, starts_on, number)


def days_of_week(plan: Plan, starts_on: date, number: int) -> tuple[PlannedDay, ...]:
    """The training days of one plan week: those with a date in its order, then those without, as written."""
    week = planned_week(plan, starts_on, number)
    if week is None:
        return ()
    days = [
        PlannedDay(_date_of(day, week.first), week.block, week.week, week.kind, day, week.deload, week.first)
        for day in week.kind.days
    ]
    # The sort is stable, so two sessions on one date and days without one keep the order of the plan.
    return tuple(sorted(days, key=lambda planned: planned.on or date.max))


def planned_days(plan: Plan, starts_on: date, first: date, last: date) -> tuple[PlannedDay, ...]:
    """The dated training days between two dates, both included, oldest first."""
    return tuple(planned for planned in _from(plan, starts_on, first) if planned.on is not None and planned.on <= last)


def planned_on(plan: Plan, starts_on: date, on: date) -> tuple[PlannedDay, ...]:
    """The training days planned for one date, in the order of the plan; empty on a rest day."""
    return planned_days(plan, starts_on, on, on)


def next_planned(plan: Plan, starts_on: date, after: date) -> PlannedDay | None:
    """The first dated training day later than a date; None when no more is planned."""
    return next(_from(plan, starts_on, after + timedelta(days=1)), None)


def _from(plan: Plan, starts_on: date, first: date) -> Iterator[PlannedDay]:
    """The dated training days from a date on, oldest first."""
    start_week = max(1, (first - starts_on).days // DAYS_A_WEEK + 1)
    for number in range(start_week, plan.weeks + 1):
        for planned in days_of_week(plan, starts_on, number):
            if planned.on is not None and planned.on >= first:
                yield planned


def _date_of(day: TrainingDay, first: date) -> date | None:
    if day.weekday is None:
        return None
    return first + timedelta(days=(day.weekday.value - first.weekday()) % DAYS_A_WEEK)
