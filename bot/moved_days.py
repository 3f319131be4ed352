"""Where a plan's training days are now: by its calendar, and where she moved them since."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, timedelta

from bot.plans_in_force import PlanInForce
from engine.values.plan import PlannedDay
from storage.records import Choice, ChoiceKind


def moves_of(choices: Sequence[Choice]) -> Mapping[date, date]:
    """The day to which each planned day went in the end: what was moved twice is where it went last."""
    steps = {one.on: one.to_day for one in choices if one.kind is ChoiceKind.MOVE and one.to_day is not None}
    return {on: _end(on, steps) for on in steps}


def _end(on: date, steps: Mapping[date, date]) -> date:
    # A session is only ever moved forward, so this ends.
    while on in steps and steps[on] > on:
        on = steps[on]
    return on


def days_between(in_force: PlanInForce, choices: Sequence[Choice], first: date, last: date) -> tuple[PlannedDay, ...]:
    """The dated training days between two dates, both included, oldest first."""
    return tuple(day for day in _dated(in_force, choices) if day.on is not None and first <= day.on <= last)


def next_day(in_force: PlanInForce, choices: Sequence[Choice], first: date) -> PlannedDay | None:
    """The next training day from a date on, that date included; one without a date where none has a date."""
    dated = (day for day in _dated(in_force, choices) if day.on is not None and day.on >= first)
    undated = (
        day
        for day in in_force.days
        if day.on is None and day.week_first is not None and day.week_first + timedelta(days=6) >= first
    )
    return next(dated, None) or next(undated, None)


def _dated(in_force: PlanInForce, choices: Sequence[Choice]) -> Sequence[PlannedDay]:
    moves = moves_of(choices)
    if not moves:
        return in_force.days
    days = [replace(day, on=moves.get(day.on, day.on)) if day.on is not None else day for day in in_force.days]
    return sorted(days, key=lambda day: day.on or date.max)
