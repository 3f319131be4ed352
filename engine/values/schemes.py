"""How a slot progresses: one frozen value for each rule, holding what the plan states for it.

The rules themselves are one file each in `engine/progression/`.
All defaults are common practice, no source, unless a line says otherwise.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from engine.values.effort import Effort
from engine.values.load import Load


@dataclass(frozen=True, slots=True)
class SetWave:
    """A set more each time up to `most`, then the first number of sets (the slot's) again, heavier by `step`."""

    most: int
    step: Load


@dataclass(frozen=True, slots=True)
class DoubleProgression:
    """Every set at the top of the range: heavier by `step`, back to the bottom."""

    step: Load


@dataclass(frozen=True, slots=True)
class LoadStep:
    """All prescribed reps made: heavier by `step`. After `misses` running misses, down by `reset_share`."""

    step: Load
    misses: int = 3
    reset_share: Decimal = Decimal("0.10")


@dataclass(frozen=True, slots=True)
class RepGoal:
    """On sets of maximum reps: `gain` more on each set than on the same set last time."""

    gain: int = 1


@dataclass(frozen=True, slots=True)
class RepTotal:
    """All sets together reach `total` reps: heavier by `step`, or without one `gain` more in all."""

    total: int
    step: Load | None = None
    gain: int = 1


@dataclass(frozen=True, slots=True)
class PercentageWave:
    """Weekly shares of a training maximum; each turn of the wave the maximum moves by the last set's reps."""

    training_maximum: Load
    shares: tuple[Decimal, ...]
    step: Load


@dataclass(frozen=True, slots=True)
class EffortTarget:
    """The load for the target reps at `effort`, from the current estimate of strength."""

    effort: Effort


@dataclass(frozen=True, slots=True)
class TopSetBackOff:
    """A top set that steps by `step`, then back-off sets at `share` of what was really done."""

    step: Load
    back_offs: int
    share: Decimal = Decimal("0.90")
    back_off_reps: int | None = None


@dataclass(frozen=True, slots=True)
class TimeOrDistance:
    """Seconds or metres grow by `gain` up to `bound`, then the load by `step` and back to the start."""

    gain: Decimal
    bound: Decimal
    step: Load | None = None


@dataclass(frozen=True, slots=True)
class Hold:
    """Never advances: rehabilitation, technique."""


Scheme = (
    SetWave
    | DoubleProgression
    | LoadStep
    | RepGoal
    | RepTotal
    | PercentageWave
    | EffortTarget
    | TopSetBackOff
    | TimeOrDistance
    | Hold
)
