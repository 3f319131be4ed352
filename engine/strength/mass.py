"""The mass one set moves: implements of both hands, both sides, and the share of body weight, in kilograms.

Body weight counts only where the load is told as added to or taken off body weight: the tonnage of a barbell squat
is the bar's, as the trade writes it. Common practice, no source.
"""

from __future__ import annotations

from decimal import Decimal

from engine.values.exercise import Exercise, Loading, Pattern
from engine.values.load import Basis, Load
from engine.values.sets import SetDone

TWO_HANDED_ON_ONE_LEG = frozenset({Pattern.SQUAT, Pattern.HINGE, Pattern.LUNGE, Pattern.CARRY})
"""One-sided exercises of these patterns work one leg while both hands hold an implement: a split squat with dumbbells.

A one-sided press, row or curl holds one: the working hand's."""


def mass_per_rep(load: Load | None, exercise: Exercise, body_weight: Load | None) -> Decimal | None:
    """The mass moved in one repetition; None where it is not known.

    Units: kilograms, unrounded. Never below zero, however much assistance was told.
    Source: pull-up, body mass is the resistance: Vanderburgh & Edmonds 1997, J Strength Cond Res 11(4). The share
    of other body-weight work is the catalogue's.
    """
    if load is None and exercise.loading is not Loading.BODY:
        return None
    if load is None or load.basis is Basis.BODY:
        if body_weight is None:
            return None
        added = load.kilograms() if load is not None else Decimal(0)
        return max(Decimal(0), exercise.body_share * body_weight.kilograms() + added)
    return load.kilograms() * implements(load, exercise)


def implements(load: Load, exercise: Exercise) -> int:
    """How many implements of this load one repetition moves."""
    if load.basis is not Basis.PER_HAND:
        return 1
    return 1 if exercise.one_sided and exercise.pattern not in TWO_HANDED_ON_ONE_LEG else 2


def volume_load(done: SetDone, exercise: Exercise, body_weight: Load | None = None) -> Decimal | None:
    """Load times repetitions of one set, both sides of a one-sided exercise together; None where it is not known.

    Units: kilograms. A hold or a carry has no repetitions to count: None.
    """
    if done.seconds is not None or done.metres is not None:
        return None
    mass = mass_per_rep(done.load, exercise, body_weight)
    if mass is None:
        return None
    sides = 2 if exercise.one_sided and done.side is None else 1
    return mass * done.reps * sides
