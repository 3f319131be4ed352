"""Sets: as performed, and as they stand in the log.

A hold or carry is one rep with seconds or metres. Plain body-weight work has load 0 on the basis BODY.
A load of None means that it was not told and nothing known could stand for it.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from enum import Enum

from engine.values.effort import Effort
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Load

MOST_REPS = 2_000
HARD_SET_RIR = Decimal(4)
"""A work set at this many reps in reserve or fewer is hard; so is one with no effort told.

Common practice, no source."""


class SetKind(Enum):
    __hash__ = object.__hash__

    WORK = "work"
    WARMUP = "warmup"
    DROP = "drop"
    REST_PAUSE = "rest-pause"


class Side(Enum):
    __hash__ = object.__hash__

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True, slots=True)
class SetDone:
    """One performed set.

    Units: `load` carries its own; `seconds` and `metres` are those units.
    Errors: ValueError for counts that cannot be.
    """

    exercise: ExerciseName
    reps: int
    load: Load | None
    effort: Effort | None = None
    seconds: Decimal | None = None
    metres: Decimal | None = None
    kind: SetKind = SetKind.WORK
    failure: bool = False
    missed: bool = False
    side: Side | None = None

    def __post_init__(self) -> None:
        if not 0 <= self.reps <= MOST_REPS:
            raise ValueError(f"no such set: {self.reps} reps; expected 0 to {MOST_REPS}")
        if self.reps == 0 and not self.missed:
            raise ValueError("no such set: 0 reps that were not missed")
        if self.seconds is not None or self.metres is not None:
            self._check_amounts()

    def _check_amounts(self) -> None:
        for name, amount in (("seconds", self.seconds), ("metres", self.metres)):
            if amount is not None and not (amount.is_finite() and 0 < amount <= 1_000_000):
                raise ValueError(f"no such set: {amount} {name}")

    @property
    def counts_as_work(self) -> bool:
        """Whether progression and tallies look at it: anything but a warm-up."""
        return self.kind is not SetKind.WARMUP

    @property
    def is_hard(self) -> bool:
        """Whether it counts as a hard set (design: at 4 or fewer reps in reserve, or no effort told)."""
        if self.kind is not SetKind.WORK or (self.missed and self.reps == 0):
            return False
        return self.failure or self.effort is None or self.effort.rir <= HARD_SET_RIR


@dataclass(frozen=True, slots=True)
class SetRecord:
    """A set that stands in the log.

    `on` is the athlete's local day; `at` an aware instant; `place` orders sets inside the log of one athlete;
    `message` is the message it was told in, so that a correction can reach all sets of one message.
    """

    id: SetId
    done: SetDone
    on: date
    at: datetime
    place: int
    message: int = 0
