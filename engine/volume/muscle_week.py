"""What a week of training was for one muscle, against its target."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from enum import Enum

from engine.values.ids import ExerciseName
from engine.values.plan import VolumeTarget

NONE = Decimal(0)


class RepBand(Enum):
    """Rep ranges as a programmer mixes them. Common practice, no source."""

    HEAVY = "1-5"
    MODERATE = "6-12"
    LIGHT = "13-20"
    VERY_LIGHT = "over 20"
    UNCOUNTED = "no rep count"  # timed, carried, or planned for as many as possible


class Standing(Enum):
    """Where a week stands to its target range, both ends included."""

    BELOW = "below"
    WITHIN = "within"
    ABOVE = "above"


@dataclass(frozen=True, slots=True)
class MuscleWeek:
    """One muscle's week.

    Units: sets in sets, `tonnage` in kilograms.
    Shape: `reps` splits `fractional` over the rep bands that occur, in the order of RepBand; `days` are days with a
    hard set that works the muscle at all, `direct_days` those with it as a prime mover; `unweighed` counts sets whose
    mass is not known (no load told, or body weight unknown) and that `tonnage` therefore lacks.
    """

    direct: Decimal = NONE
    fractional: Decimal = NONE
    days: int = 0
    direct_days: int = 0
    reps: Mapping[RepBand, Decimal] = field(default_factory=dict)
    tonnage: Decimal = NONE
    unweighed: int = 0
    target: VolumeTarget | None = None

    @property
    def standing(self) -> Standing | None:
        """Below, within or above the target; None without a target."""
        if self.target is None:
            return None
        if self.fractional < self.target.low:
            return Standing.BELOW
        return Standing.ABOVE if self.fractional > self.target.high else Standing.WITHIN


@dataclass(frozen=True, slots=True)
class DayWork:
    """Like sets of one exercise on one day, done or planned: what a tally adds up.

    `day` is anything that tells days apart. `hard` are those of the sets that count as hard, in sets (halves where
    one side was told alone).
    """

    exercise: ExerciseName
    day: date | int
    hard: Decimal
    band: RepBand
    tonnage: Decimal = NONE
    unweighed: int = 0
