"""How well a reading fits what is known: the plan, the load of last time, what the equipment can weigh."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from functools import lru_cache
from itertools import pairwise

from engine.reading.chunks.choices import Traits
from engine.reading.chunks.chunks import Chunks, numbers_in
from engine.reading.values import Planned
from engine.reading.weighing.history import FAR_ABOVE_A_WARM_UP, Known, is_of_warming_up
from engine.reading.words.pieces import MOST_SETS, Role
from engine.values.exercise import Equipment, Exercise, Loading, Pattern
from engine.values.load import Basis, Load
from engine.values.muscles import Muscle
from engine.values.plan import MaxReps, RepRange, Reps
from engine.values.sets import SetDone, SetKind

FEW_SETS = 5
NEAR = (Decimal("0.6"), Decimal("1.6"))
ABOUT = (Decimal("0.35"), Decimal("2.9"))
LIGHTEST_BAR_KG = Decimal(15)
HEAVIEST_KG = Decimal(500)
HEAVIEST_IN_HAND_KG = Decimal(100)
HEAVIEST_BY_ARMS_ALONE_KG = Decimal(130)
HEAVIEST_BY_ARMS_ALONE_IN_HAND_KG = Decimal(60)
HEAVIEST_BY_THE_KNEES_ALONE_KG = Decimal(250)
HEAVIEST_OVERHEAD_KG = Decimal(270)
"""More of it nobody lifts, in each hand, with a movement of the elbows, shoulders or knees alone, or from the shoulders
overhead: rather a digit or a point slipped. Common practice, no source.
"""
HEAVIEST_ADDED_KG = Decimal(130)
"""More than this nobody hangs on the body, or holds with it. Common practice, no source."""
HEAVIEST_PRESSED_KG = Decimal(360)
"""More than this nobody presses off the chest with a bar. Common practice, no source."""
MOST_TELLING_REPS = 10
"""Up to so many reps, the maximum is estimated as load * (1 + reps / 30). Source: Epley 1985."""
FURTHEST_STEP = Decimal("1.5")
"""How many times the load before it a load told as a change of it ("+85") may be. Common practice, no source."""
OF_THE_KNEES = frozenset((Muscle.QUADS, Muscle.HAMSTRINGS))
OF_THE_ARMS = frozenset((Muscle.BICEPS, Muscle.TRICEPS, Muscle.FRONT_DELTS, Muscle.SIDE_DELTS, Muscle.REAR_DELTS))
SUITS_PLAN = 12.0


IN_HAND = (Equipment.DUMBBELL, Equipment.KETTLEBELL)


# ---- evidence


def evidence(sets: Sequence[SetDone], chunks: Chunks, exercise: Exercise, known: Known, traits: Traits) -> float:
    """How well the sets fit what is known; 1 is neither for nor against."""
    loads = _loads(sets)
    weight = _suits_equipment(loads, chunks, exercise, traits)
    if traits.barbell and any(_is_beyond_anybody(one, exercise) for one in sets[:1]):
        weight *= 0.04
    if known.planned is not None:
        weight *= _suits_plan(sets, known.planned)
    if known.load is not None and known.load.amount > 0:
        told = (load for load, kind in loads if kind is SetKind.WORK and load.amount > 0)
        steps_up = is_of_warming_up(known.load, known, exercise)
        weight *= min((_suits_last(load, known.load, steps_up=steps_up) for load in told), default=1.0)
        if Role.CHANGE in chunks.roles and not traits.body:
            leaps = any(load.kilograms() > FURTHEST_STEP * known.load.kilograms() for load, _ in loads)
            weight *= 0.04 if leaps else 1.0  # "squat +85x5" behind 85: rather the load itself
    if len(sets) == 2 and _may_be_a_group(sets[0], sets[1]):
        weight *= 0.2
    if len(sets) > MOST_SETS and not chunks.total and len({one.reps for one in sets}) == 1:
        weight *= 0.1
    return weight


def _may_be_a_group(first: SetDone, second: SetDone) -> bool:
    """ "3x12, 25": three sets at 25, and hardly more reps in the second set at 3 kg."""
    light = first.load is not None and first.load == second.load and 0 < first.load.amount <= FEW_SETS
    return light and first.reps < second.reps and first.kind is second.kind is SetKind.WORK


def _is_beyond_anybody(one: SetDone, exercise: Exercise) -> bool:
    """Whether the maximum that a set tells of is more than anybody's: "deadlift 500x5"."""
    if one.load is None or one.kind is SetKind.WARMUP or one.reps < 2:
        return False
    maximum = one.load.kilograms() * (1 + Decimal(min(one.reps, MOST_TELLING_REPS)) / 30)
    return maximum > heaviest_lifted(exercise)


def _loads(sets: Sequence[SetDone]) -> list[tuple[Load, SetKind]]:
    """Each load once; the sets of one group share one value."""
    found: dict[int, tuple[Load, SetKind]] = {}
    before = None
    for one in sets:
        if one is not before and one.load is not None:
            found[id(one.load)] = one.load, one.kind
        before = one
    return list(found.values())


def _suits_last(load: Load, last: Load, *, steps_up: bool) -> float:
    alike = load.unit is last.unit
    ratio = load.amount / last.amount if alike else load.kilograms() / last.kilograms()
    if NEAR[0] <= ratio <= NEAR[1]:
        return 1.0
    if steps_up and 1 < ratio < FAR_ABOVE_A_WARM_UP:
        return 0.5
    return 0.5 if ABOUT[0] <= ratio <= ABOUT[1] else 0.2


def _suits_plan(sets: Sequence[SetDone], slot: Planned) -> float:
    if len(sets) != slot.sets:
        return 1.0
    reps = {one.reps for one in sets}
    match slot.target:
        case Reps(count):
            fits = reps == {count}
        case RepRange(low, high):
            fits = all(low <= one <= high for one in reps)
        case MaxReps():
            fits = True
        case _:
            fits = False
    return SUITS_PLAN if fits else 1.0


def _suits_equipment(
    loads: Sequence[tuple[Load, SetKind]], chunks: Chunks, exercise: Exercise, traits: Traits
) -> float:
    weight, heaviest = 1.0, heaviest_lifted(exercise)
    if not (traits.two_implements or traits.carried or traits.timed or traits.body) and _tells_a_pair(chunks, loads):
        weight *= 1.0 if exercise.equipment in IN_HAND else 0.03
    for load, kind in loads:
        if kind is SetKind.WARMUP:
            continue
        mass = load.kilograms()
        if load.basis is Basis.BODY:
            weight *= 0.04 if mass > HEAVIEST_ADDED_KG else 1.0
            continue
        heavy = traits.barbell or exercise.loading is Loading.PLATES  # a bar, or a sled
        if (heavy and not traits.light and mass < LIGHTEST_BAR_KG) or mass > heaviest:
            weight *= 0.04
    return weight


def heaviest_lifted(exercise: Exercise) -> Decimal:
    """Kilograms of this exercise's load that nobody lifts more of."""
    return _heaviest(exercise.loading, exercise.pattern, exercise.prime)


@lru_cache(maxsize=512)
def _heaviest(loading: Loading, pattern: Pattern, prime: tuple[Muscle, ...]) -> Decimal:
    in_hand = loading in (Loading.PER_HAND, Loading.IMPLEMENT)
    most = HEAVIEST_IN_HAND_KG if loading is Loading.PER_HAND else HEAVIEST_KG
    if pattern is Pattern.ISOLATION and OF_THE_ARMS.issuperset(prime):
        return HEAVIEST_BY_ARMS_ALONE_IN_HAND_KG if in_hand else HEAVIEST_BY_ARMS_ALONE_KG
    if pattern is Pattern.HORIZONTAL_PUSH and loading is Loading.BAR:
        return HEAVIEST_PRESSED_KG
    if pattern is Pattern.ISOLATION and OF_THE_KNEES.issuperset(prime):
        return min(most, HEAVIEST_BY_THE_KNEES_ALONE_KG)
    return min(most, HEAVIEST_OVERHEAD_KG) if pattern is Pattern.VERTICAL_PUSH else most


def _tells_a_pair(chunks: Chunks, loads: Sequence[tuple[Load, SetKind]]) -> bool:
    """ "26s", "dumbbells": one implement in each hand."""
    if chunks.dumbbells or Role.PLURAL not in chunks.roles:
        return chunks.dumbbells
    plural = [number.value for number in numbers_in(chunks) if number.role is Role.PLURAL]
    return any(load.amount in plural for load, _ in loads)


def falls_as_reps_do(numbers: Sequence[Decimal]) -> bool:
    """ "10 10 9": reps at the load of before, where the first is not that load itself. Common practice, no source."""
    steps = [high - low for high, low in pairwise(numbers)]
    return len(steps) > 1 and all(0 <= step <= MOST_REPS_LOST for step in steps)


MOST_REPS_LOST = 2
