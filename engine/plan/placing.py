"""Where more sets of a muscle, or fewer, suit one week best: a small search that is exact.

They may go to any slot whose exercise works the muscle as a prime mover, up to six sets a slot, or to one new slot a
day of an exercise for it, with two sets or more. Of all ways to place them the best is found, by what comes first:
1. cautions between sessions, the weighty ones and each muscle of them counting most
2. seconds over the longest session wanted
3. slots begun or dropped: what the athlete already does comes before what she does not
4. the muscle's sets spread evenly over its days, then time spread evenly over the sessions
The search walks the places one by one and leaves a branch only when even its kindest end is no better than the best
found. Adding a set never lowers any of these costs and taking one off never raises one (slots begun or dropped apart,
which are counted only where decided); that is what makes it exact.
Order and limits are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from engine.catalogue.catalogue import Catalogue
from engine.plan.changes import SlotAt, new_slot, slot_with_sets, with_slots
from engine.plan.session_time import planned_sets, session_seconds
from engine.plan.week_view import block_cautions
from engine.values.exercise import Exercise, Pattern
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.muscles import Muscle
from engine.values.plan import Block, Plan, Slot
from engine.volume.spacing import Ground

MOST_SETS_A_SLOT = 6
FEWEST_NEW_SETS = 2
LONG_SESSION_SECONDS = 90 * 60
NEIGHBOURS = 3
"""A week, the one before and the one after."""

SEVERITY = {
    Ground.LONG_FAILURE: 4,
    Ground.NEW_AT_LENGTH: 3,
    Ground.FAILURE: 2,
    Ground.HARD_BEFORE_LONG: 1,
}
"""How much a caution counts; the order is that of `engine/volume/spacing.py`."""

Cost = tuple[int, int, int, int, int]


@dataclass(frozen=True, slots=True)
class Place:
    """Somewhere sets can go. `slot` is what stands there, or for a new slot would stand there with no sets yet."""

    at: SlotAt
    slot: Slot
    counts: tuple[int, ...]
    new: bool

    def begins_or_ends(self, sets: int) -> bool:
        """Whether so many sets open a slot, or leave none of it."""
        return bool(sets) and (self.new or planned_sets(self.slot) + sets == 0)


class Search:
    """All ways to place a number of sets in one week kind, and the best of them."""

    def __init__(
        self,
        block: Block,
        block_at: int,
        kind_at: int,
        muscle: Muscle,
        count: int,
        catalogue: Catalogue,
        unit: Unit = Unit.KG,
        longest_seconds: int = LONG_SESSION_SECONDS,
    ) -> None:
        self.kind, self.muscle, self.count = block.kinds[kind_at], muscle, count
        self.exercises, self.longest_seconds = catalogue.exercises, longest_seconds
        self.near, self.at_kind = _with_neighbours(block, kind_at)
        self.places = tuple(_places(block, SlotAt(block_at, kind_at, 0, 0), muscle, count, self.exercises, unit))
        self.before = [session_seconds(day.slots, self.exercises) for day in self.kind.days]

    def best(self) -> tuple[int, ...] | None:
        """The sets for each place at the least cost; None where they have nowhere to go."""
        found: list[tuple[Cost, tuple[int, ...]]] = []
        self._walk((), self.count, found)
        return found[-1][1] if found else None

    def ways(self, way: tuple[int, ...] = ()) -> Iterator[tuple[int, ...]]:
        """Every way to place the sets, good or bad."""
        if len(way) == len(self.places):
            if sum(way) == self.count:
                yield way
            return
        for sets in self.places[len(way)].counts:
            yield from self.ways((*way, sets))

    def cost(self, way: Sequence[int]) -> Cost:
        """What a way costs, the weightiest first.

        Shape: `way` may stop short of the last place; the places behind it then have the kindest they could get, so
        that no way that begins like this one costs less.
        """
        kindest = [min(place.counts) if self.count < 0 else 0 for place in self.places[len(way) :]]
        changed = {replace(at, block=0, kind=self.at_kind): slot for at, slot in self.slots((*way, *kindest)).items()}
        block = with_slots(self.near, changed).blocks[0]
        days = block.kinds[self.at_kind].days
        seconds = [session_seconds(day.slots, self.exercises) for day in days]
        over = (max(0, now - max(self.longest_seconds, was)) for now, was in zip(seconds, self.before, strict=True))
        return (
            sum(
                SEVERITY[found.caution.ground] * len(found.caution.muscles)
                for found in block_cautions(block, self.exercises)
            ),
            sum(over),
            sum(place.begins_or_ends(sets) for place, sets in zip(self.places, way, strict=False)),
            sum(self._sets_of(day.slots) ** 2 for day in days),
            sum(one**2 for one in seconds),
        )

    def slots(self, way: Sequence[int]) -> dict[SlotAt, Slot | None]:
        """The slots that a way changes."""
        pairs = zip(self.places, way, strict=True)
        return {place.at: slot_with_sets(place.slot, sets) for place, sets in pairs if sets}

    def _walk(self, way: tuple[int, ...], left: int, found: list[tuple[Cost, tuple[int, ...]]]) -> None:
        """Walk on from a beginning; `found` ends with the best so far."""
        behind = self.places[len(way) :]
        if not sum(min(place.counts) for place in behind) <= left <= sum(max(place.counts) for place in behind):
            return
        cost = self.cost(way)
        if found and cost >= found[-1][0]:
            return
        if not behind:
            found.append((cost, way))
            return
        fair = left / len(behind)
        # Even shares first: they tend to be cheap, and a cheap way found early spares the most walking.
        for sets in sorted(behind[0].counts, key=lambda count: abs(count - fair)):
            self._walk((*way, sets), left - sets, found)

    def _sets_of(self, slots: Sequence[Slot]) -> int:
        return sum(planned_sets(slot) for slot in slots if _trains(self.exercises.get(slot.exercise), self.muscle))


def _with_neighbours(block: Block, kind_at: int) -> tuple[Plan, int]:
    """A plan of the block's week kind with those before and after it, and the place of that kind in it.

    Spacing reaches no further than into the next week.
    """
    kinds, count = block.kinds, len(block.kinds)
    if count <= NEIGHBOURS:
        return Plan("", (block,)), kind_at
    near = (kinds[kind_at - 1], kinds[kind_at], kinds[(kind_at + 1) % count])
    return Plan("", (Block(block.label, NEIGHBOURS, near),)), 1


def _places(
    block: Block, first: SlotAt, muscle: Muscle, count: int, exercises: Mapping[ExerciseName, Exercise], unit: Unit
) -> Iterator[Place]:
    """The slots that work the muscle, and for more sets a new slot on each day that has none of them."""
    extra = _exercise_for(block, muscle, exercises)
    for day_at, day in enumerate(block.kinds[first.kind].days):
        here = [at for at, slot in enumerate(day.slots) if _trains(exercises.get(slot.exercise), muscle)]
        for at in here:
            slot = day.slots[at]
            have = planned_sets(slot)
            room = range(min(count, MOST_SETS_A_SLOT - have) + 1) if count > 0 else range(max(count, -have), 1)
            yield Place(replace(first, day=day_at, slot=at), slot, tuple(room) or (0,), new=False)
        if not here and count >= FEWEST_NEW_SETS and extra is not None:
            room = range(FEWEST_NEW_SETS, min(count, MOST_SETS_A_SLOT) + 1)
            added = new_slot(exercises[extra], 0, _unit_of(block, unit))
            yield Place(replace(first, day=day_at, slot=len(day.slots)), added, (0, *room), new=True)


def _trains(exercise: Exercise | None, muscle: Muscle) -> bool:
    return exercise is not None and muscle in exercise.prime


def _exercise_for(block: Block, muscle: Muscle, exercises: Mapping[ExerciseName, Exercise]) -> ExerciseName | None:
    """The exercise that a new slot takes: one of the block's own, else an isolation with equipment the block uses."""
    planned = {slot.exercise for kind in block.kinds for day in kind.days for slot in day.slots}
    swaps = {name for kind in block.kinds for day in kind.days for slot in day.slots for name in slot.swaps}
    used = {exercises[name].equipment for name in planned if name in exercises}

    def fit(exercise: Exercise) -> tuple[object, ...]:
        return (
            exercise.name not in planned,
            exercise.name not in swaps,
            exercise.pattern is not Pattern.ISOLATION,
            exercise.equipment not in used,
            len(exercise.prime) + len(exercise.secondary),
            exercise.name,
        )

    able = [exercise for exercise in exercises.values() if muscle in exercise.prime]
    return min(able, key=fit).name if able else None


def _unit_of(block: Block, unit: Unit) -> Unit:
    """The unit that the block's own loads are in."""
    loads = (slot.load for kind in block.kinds for day in kind.days for slot in day.slots)
    return next((load.unit for load in loads if isinstance(load, Load)), unit)
