"""How hard a set was, kept as repetitions in reserve.

RPE and reps in reserve state one fact: RPE = 10 - RIR.
Source: Zourdos et al. 2016, J Strength Cond Res 30(1):267-275.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

TOP_OF_SCALE = Decimal(10)


@dataclass(frozen=True, slots=True)
class Effort:
    """Reps in reserve, 0 to 10; `as_rpe` remembers which scale the lifter used.

    Errors: ValueError outside the scale.
    """

    rir: Decimal
    as_rpe: bool = False

    def __post_init__(self) -> None:
        if not self.rir.is_finite() or not 0 <= self.rir <= TOP_OF_SCALE:
            raise ValueError(f"no such effort: {self.rir} reps in reserve; expected 0 to 10")

    @property
    def rpe(self) -> Decimal:
        """The same effort on the RPE scale."""
        return TOP_OF_SCALE - self.rir

    @classmethod
    def from_rpe(cls, rpe: Decimal) -> Effort:
        """An effort told as RPE, 0 to 10."""
        return cls(TOP_OF_SCALE - rpe, as_rpe=True)
