"""The mass one set moves: implements of both hands, both sides, and the share of body weight, in kilograms.

Body weight counts only where the load is told as added to or taken off body weight: the tonnage of a barbell squat
is the bar's, as the trade writes it. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from engine.values.exercise import Exercise, Loading, Pattern
from engine.values.load import KG_PER_LB, SMALLEST_STEP, Basis, Load, Unit
from engine.values.sets import SetDone

TWO_HANDED_ON_ONE_LEG = frozenset({Pattern.SQUAT, Pattern.HINGE, Pattern.LUNGE, Pattern.CARRY})
"""One-sided exercises of these patterns work one leg while both hands hold an implement: a split squat with dumbbells.

A one-sided press, row or curl holds one: the working hand's."""


def load_told(done: SetDone, exercise: Exercise) -> Load | None:
    """The load of a set; body-weight work without one is body weight alone, anything else unknown."""
    if done.load is None and exercise.loading is Loading.BODY:
        return Load(Decimal(0), Unit.KG, Basis.BODY)
    return done.load


def resistance(load: Load, exercise: Exercise, body_weight: Load | None) -> Decimal | None:
    """What strength works against, as the load was told: one implement of a pair; None where it is not known.

    Units: kilograms, unrounded. Never below zero, however much assistance was told.
    Source: pull-up, body mass is the resistance: Vanderburgh & Edmonds 1997, J Strength Cond Res 11(4). The share
    of other body-weight work is the catalogue's.
    """
    if load.basis is not Basis.BODY:
        return load.kilograms()
    if body_weight is None:
        return None
    return max(Decimal(0), exercise.body_share * body_weight.kilograms() + load.kilograms())


def as_told(mass: Decimal, like: Load, exercise: Exercise, body_weight: Load | None) -> Load:
    """The load whose resistance is `mass` kilograms, in the unit and on the basis of `like`; undoes `resistance`.

    Units: rounded half even to a thousandth.
    """
    if like.basis is Basis.BODY and body_weight is not None:
        mass -= exercise.body_share * body_weight.kilograms()
    amount = mass if like.unit is Unit.KG else mass / KG_PER_LB
    return replace(like, amount=amount.quantize(SMALLEST_STEP))


def mass_per_rep(load: Load | None, exercise: Exercise, body_weight: Load | None) -> Decimal | None:
    """The mass moved in one repetition, both implements of a pair; None where it is not known.

    Units: kilograms, unrounded.
    """
    if load is None:
        return None
    mass = resistance(load, exercise, body_weight)
    return None if mass is None else mass * implements(load, exercise)


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
    mass = mass_per_rep(load_told(done, exercise), exercise, body_weight)
    if mass is None:
        return None
    sides = 2 if exercise.one_sided and done.side is None else 1
    return mass * done.reps * sides
