"""What can be loaded for one exercise in one gym: the way an exercise is loaded, met with the equipment at hand.

Each answer is worked out once for a gym and kept.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from itertools import combinations
from typing import assert_never

from engine.loading.gym import Bar, Gym, Stack, default_gym
from engine.loading.loadable import Loadable
from engine.loading.mass import COUNTS_PER_KG, counts
from engine.loading.masses import Masses
from engine.loading.plates import HEAVIEST_SIDE, bar_totals, side_sums
from engine.values.exercise import Equipment, Exercise, Loading
from engine.values.load import Load, Unit

MOST_ADDED = 100 * COUNTS_PER_KG
"""The most anyone hangs on a belt here: it bounds the search."""

FINE_STEPS = {Unit.KG: Decimal("0.5"), Unit.LB: Decimal(1)}
"""Bands and odd implements have no plates: a fine row of masses stands for them."""

FINE_TOP = 800


def loadable_for(exercise: Exercise, gym: Gym | None, unit: Unit) -> Loadable:
    """What can be loaded for an exercise.

    Units: `unit` is the athlete's; it chooses the usual gym where she has told of none (`gym` None).
    """
    return _loadable(exercise.loading, exercise.equipment, gym or default_gym(unit), unit)


def empty_bar(exercise: Exercise, gym: Gym | None, unit: Unit) -> Load | None:
    """The least a bar exercise can weigh; None for exercises without a bar."""
    if exercise.loading is not Loading.BAR:
        return None
    return _bar_of(exercise.equipment, gym or default_gym(unit)).empty()


@lru_cache(maxsize=1024)
def _loadable(loading: Loading, equipment: Equipment, gym: Gym, unit: Unit) -> Masses:
    match loading:
        case Loading.BAR:
            return Masses(bar_totals(_bar_of(equipment, gym), gym.plates))
        case Loading.PER_HAND | Loading.IMPLEMENT:
            return _implements(equipment, gym, unit)
        case Loading.STACK:
            return Masses(_stack(gym.stack))
        case Loading.PLATES:
            return Masses(bar_totals(Bar(Load(Decimal(0), unit)), gym.plates))
        case Loading.BODY:
            return _body(gym)
        case Loading.BAND:
            return _fine(unit)
        case _:
            assert_never(loading)


def _bar_of(equipment: Equipment, gym: Gym) -> Bar:
    bar = gym.bar(equipment) or gym.bar(Equipment.BARBELL)
    if bar is None:
        raise ValueError(f"no bar for {equipment.value}: expected the gym to have at least a barbell")
    return bar


def _implements(equipment: Equipment, gym: Gym, unit: Unit) -> Masses:
    rack = {Equipment.DUMBBELL: gym.dumbbells, Equipment.KETTLEBELL: gym.kettlebells}.get(equipment)
    if rack is not None:
        return Masses(tuple(sorted({counts(size) for size in rack})))
    # A plate held in the hands, a belt squat, a carried stone: nothing known bounds it but its own step.
    return _fine(unit)


def _stack(stack: Stack) -> tuple[int, ...]:
    pins = range(counts(stack.first), counts(stack.top) + 1, counts(stack.step))
    extras = {
        sum(counts(piece) for piece in some)
        for size in range(len(stack.add_ons) + 1)
        for some in combinations(stack.add_ons, size)
    }
    return tuple(sorted({pin + extra for pin in pins for extra in extras}))


def _body(gym: Gym) -> Masses:
    """Help from an assistance stack, plain body weight, or plates and dumbbells on a belt."""
    singles = tuple((size, 2 * pairs) for size, pairs in gym.plates.pairs)
    added = set(side_sums(singles, min(MOST_ADDED, HEAVIEST_SIDE))) | {counts(size) for size in gym.dumbbells}
    helped = {-mass for mass in _stack(gym.stack)}
    return Masses(tuple(sorted(helped | {0} | added)))


def _fine(unit: Unit) -> Masses:
    step = counts(Load(FINE_STEPS[unit], unit))
    return Masses(tuple(range(0, counts(Load(Decimal(FINE_TOP), unit)) + 1, step)))
