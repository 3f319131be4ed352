"""More sets for a muscle, or fewer: a change of the plan to accept or to leave.

Each week kind of the block is changed by the same number of sets, and weeks that are alike are changed alike.
Where the sets go is worked out by `placing.py`.
"""

from __future__ import annotations

from dataclasses import dataclass

from engine.catalogue.catalogue import Catalogue
from engine.plan.changes import SlotAt, with_slots
from engine.plan.placing import LONG_SESSION_SECONDS, Search
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
    read = f"{count:+d} sets {muscle.value}"
    if not 1 <= abs(count) <= MOST_SETS_AT_ONCE:
        return Problem(0, read, f"1 to {MOST_SETS_AT_ONCE} sets at once", f"+2 sets {muscle.value}")
    chosen: dict[SlotAt, Slot | None] = {}
    placed: list[Placed] = []
    alike: dict[WeekKind, tuple[int, ...] | None] = {}
    kinds = plan.blocks[block].kinds
    for kind_at, kind in enumerate(kinds):
        if not kind.days:
            continue
        search = Search(plan.blocks[block], block, kind_at, muscle, count, catalogue, unit, longest_seconds)
        best = alike[kind] if kind in alike else alike.setdefault(kind, search.best())
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
