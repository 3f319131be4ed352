"""Loads, and sets without an effort, as values made once: the same few loads are lifted for the same few reps.

A value is shared only where it is spelled alike: 80 and 80.0 are equal, and stand as they were typed.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache

from engine.values.ids import ExerciseName
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone, SetKind


def load_of(amount: Decimal, unit: Unit, basis: Basis) -> Load:
    """The load of this amount.

    Errors: ValueError for a mass that cannot be.
    """
    load = _load(amount, unit, basis)
    return load if load.amount is amount else Load(amount, unit, basis)


def set_of(
    exercise: ExerciseName, reps: int, load: Load, kind: SetKind = SetKind.WORK, failure: bool = False
) -> SetDone:
    """A set of so many reps at a load, and nothing else told of it.

    Errors: ValueError for counts that cannot be.
    """
    one = _set(exercise, reps, load.amount, load.unit, load.basis, kind, failure)
    return one if one.load is load else SetDone(exercise, reps, load, kind=kind, failure=failure)


@lru_cache(maxsize=4_096)
def _load(amount: Decimal, unit: Unit, basis: Basis) -> Load:
    return Load(amount, unit, basis)


@lru_cache(maxsize=8_192)
def _set(
    exercise: ExerciseName, reps: int, amount: Decimal, unit: Unit, basis: Basis, kind: SetKind, failure: bool
) -> SetDone:
    return SetDone(exercise, reps, _load(amount, unit, basis), kind=kind, failure=failure)
