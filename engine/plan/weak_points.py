"""More sets for a muscle, or fewer: a change of the plan to accept or to leave.

Each week kind of the block is changed by the same number of sets, and weeks that are alike are changed alike.
Where the sets go is worked out by `placing.py`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from math import ceil

from engine.catalogue.catalogue import Catalogue
from engine.plan.changes import SlotAt, with_slots
from engine.plan.placing import LONG_SESSION_SECONDS, Search
from engine.plan.week_view import week_volume
from engine.plan.what_if import WhatIf, compared
from engine.values.ids import ExerciseName
from engine.values.load import Unit
from engine.values.muscles import Muscle
from engine.values.plan import Plan, Slot, WeekKind
from engine.values.problem import Problem

MOST_SETS_AT_ONCE = 12


@dataclass(frozen=True, slots=True)
class Placed:
    """Sets put on one slot (or taken off, below 0); `new`: the slot was not in the plan.

    `week` is the week kind's label, empty where the block has one kind.
    """

    at: SlotAt
    week: str
    day: str
    exercise: ExerciseName
    sets: int
    new: bool = False

    @property
    def in_words(self) -> str:
        """``+2 sets dumbbell lateral raise (press and pull)``."""
        count = abs(self.sets)
        sign = "+" if self.sets > 0 else "-"
        where = ", ".join(part for part in (self.week, self.day, "new" if self.new else "") if part)
        return f"{sign}{count} set{'s' * (count != 1)} {self.exercise} ({where})"


@dataclass(frozen=True, slots=True)
class Proposal:
    """A change to accept or to leave: where the sets go, and what the plan is before and after."""

    muscle: Muscle
    placed: tuple[Placed, ...]
    what_if: WhatIf

    @property
    def plan(self) -> Plan:
        """The plan as it would be."""
        return self.what_if.plan

    @property
    def description(self) -> str:
        """What changes, in one line."""
        return "; ".join(dict.fromkeys(placed.in_words for placed in self.placed))


def more_sets(
    plan: Plan,
    block: int,
    muscle: Muscle,
    count: int,
    catalogue: Catalogue,
    *,
    unit: Unit = Unit.KG,
    longest_seconds: int = LONG_SESSION_SECONDS,
) -> Proposal | Problem:
    """The best place for `count` more weekly sets of a muscle; below 0, the best place to take them from.

    Errors: a Problem where the sets have nowhere to go.
    """
    counts = [count] * len(plan.blocks[block].kinds)
    return sets_by_week(plan, block, muscle, counts, catalogue, unit=unit, longest_seconds=longest_seconds)


def to_target(plan: Plan, block: int, muscle: Muscle, catalogue: Catalogue) -> tuple[int, ...]:
    """The sets that each week kind lacks to the muscle's target, below 0 those it has too many; all 0 without one."""
    target = plan.targets.get(muscle)
    found = []
    for sets in weekly_sets(plan, block, muscle, catalogue).values():
        lacks = 0 if target is None else max(0, ceil(target.low - sets)) - max(0, ceil(sets - target.high))
        found.append(max(-MOST_SETS_AT_ONCE, min(lacks, MOST_SETS_AT_ONCE)))
    return tuple(found)


def weekly_sets(plan: Plan, block: int, muscle: Muscle, catalogue: Catalogue) -> dict[str, Decimal]:
    """The fractional sets of a muscle in each week kind of a block, by the kind's label."""
    found = {}
    for kind in plan.blocks[block].kinds:
        week = week_volume(kind, catalogue.exercises).get(muscle)
        found[kind.label] = week.fractional if week is not None else Decimal(0)
    return found


def sets_by_week(
    plan: Plan,
    block: int,
    muscle: Muscle,
    counts: Sequence[int],
    catalogue: Catalogue,
    *,
    unit: Unit = Unit.KG,
    longest_seconds: int = LONG_SESSION_SECONDS,
) -> Proposal | Problem:
    """The best place for more weekly sets of a muscle, with a number for each week kind; 0 leaves a week as it is.

    Errors: a Problem where the sets have nowhere to go.
    """
    biggest = max(counts, key=abs)
    read = f"{biggest:+d} sets {muscle.value}"
    if not 1 <= abs(biggest) <= MOST_SETS_AT_ONCE:
        return Problem(0, read, f"1 to {MOST_SETS_AT_ONCE} sets at once", f"+2 sets {muscle.value}")
    chosen: dict[SlotAt, Slot | None] = {}
    placed: list[Placed] = []
    alike: dict[tuple[WeekKind, int], tuple[int, ...] | None] = {}
    kinds = plan.blocks[block].kinds
    for kind_at, (kind, count) in enumerate(zip(kinds, counts, strict=True)):
        if not kind.days or not count:
            continue
        search = Search(plan.blocks[block], block, kind_at, muscle, count, catalogue, unit, longest_seconds)
        key = (kind, count)
        best = alike[key] if key in alike else alike.setdefault(key, search.best())
        if best is None:
            sign = "+" if count > 0 else "-"
            example = f"{sign}1 set {muscle.value}, or another exercise in the plan"
            return Problem(0, read, f"room for {abs(count)} sets in {kind.label}", example)
        chosen.update(search.slots(best))
        placed.extend(_told(search, best, kind.label if len(kinds) > 1 else ""))
    return Proposal(muscle, tuple(placed), compared(plan, with_slots(plan, chosen), block, catalogue))


def _told(search: Search, way: tuple[int, ...], week: str) -> list[Placed]:
    days = search.kind.days
    return [
        Placed(place.at, week, days[place.at.day].label, place.slot.exercise, sets, place.new)
        for place, sets in zip(search.places, way, strict=True)
        if sets
    ]
