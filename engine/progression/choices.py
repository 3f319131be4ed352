"""What an athlete chose about her sessions in words: another exercise today, none of this one, this training day.

A choice holds for its date only.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

from engine.values.ids import ExerciseName


@dataclass(frozen=True, slots=True)
class Swap:
    on: date
    exercise: ExerciseName
    to: ExerciseName


@dataclass(frozen=True, slots=True)
class Skip:
    on: date
    exercise: ExerciseName


@dataclass(frozen=True, slots=True)
class Choices:
    """`days` names the training day that a date's session was chosen to be, by its label."""

    swaps: tuple[Swap, ...] = ()
    skips: tuple[Skip, ...] = ()
    days: Mapping[date, str] = field(default_factory=dict)

    def instead_of(self, exercise: ExerciseName, on: date) -> ExerciseName | None:
        """The exercise that takes another's place on a date; the latest choice stands."""
        return next((swap.to for swap in reversed(self.swaps) if swap.on == on and swap.exercise == exercise), None)

    def skipped(self, exercise: ExerciseName, on: date) -> bool:
        """Whether an exercise is left out on a date."""
        return any(skip.on == on and skip.exercise == exercise for skip in self.skips)
