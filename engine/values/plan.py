"""A plan: blocks of weeks, week kinds that may alternate, training days, slots.

Week numbers inside a block count from 1. Ranges include both ends.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from enum import Enum

from engine.values.effort import Effort
from engine.values.ids import ExerciseName
from engine.values.load import Load
from engine.values.muscles import Muscle
from engine.values.schemes import Scheme


class Weekday(Enum):
    MON = 0
    TUE = 1
    WED = 2
    THU = 3
    FRI = 4
    SAT = 5
    SUN = 6


@dataclass(frozen=True, slots=True)
class Reps:
    """The same number of reps each set."""

    count: int


@dataclass(frozen=True, slots=True)
class RepRange:
    low: int
    high: int

    def __post_init__(self) -> None:
        if not 1 <= self.low < self.high:
            raise ValueError(f"no such rep range: {self.low}-{self.high}; expected a lower and a higher number")


@dataclass(frozen=True, slots=True)
class MaxReps:
    """As many as form allows."""


@dataclass(frozen=True, slots=True)
class Seconds:
    count: Decimal


@dataclass(frozen=True, slots=True)
class Metres:
    count: Decimal


Target = Reps | RepRange | MaxReps | Seconds | Metres

HALF_A_MINUTE, TWENTY_METRES = Seconds(Decimal(30)), Metres(Decimal(20))
"""What a hold and a carry ask where nothing says how long. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class FindIt:
    """No load planned: the athlete works up to a fitting one and the log decides from then on."""


@dataclass(frozen=True, slots=True)
class Slot:
    """One exercise of one training day.

    `load` None means body weight alone (or a load that makes no sense: a plank). `group` is a superset letter.
    """

    exercise: ExerciseName
    sets: int
    target: Target
    scheme: Scheme
    load: Load | FindIt | None = None
    effort: Effort | None = None
    rest_seconds: int | None = None
    cues: tuple[str, ...] = ()
    swaps: tuple[ExerciseName, ...] = ()
    standard: str | None = None
    group: str | None = None


@dataclass(frozen=True, slots=True)
class TrainingDay:
    """`weekday` None: the day is done in order, whenever the athlete comes."""

    label: str
    weekday: Weekday | None
    slots: tuple[Slot, ...]


@dataclass(frozen=True, slots=True)
class WeekKind:
    """One kind of week; a block alternates its kinds in order."""

    label: str
    days: tuple[TrainingDay, ...]


@dataclass(frozen=True, slots=True)
class Deload:
    """Shares of sets and load kept in a deload week. Common practice, no source: half the sets, 90 % of the load."""

    sets_share: Decimal = Decimal("0.5")
    load_share: Decimal = Decimal("0.9")


@dataclass(frozen=True, slots=True)
class Block:
    label: str
    weeks: int
    kinds: tuple[WeekKind, ...]
    deload_weeks: tuple[int, ...] = ()
    deload: Deload = field(default_factory=Deload)

    def kind_of(self, week: int) -> WeekKind:
        """The week kind of a week of this block, counted from 1."""
        return self.kinds[(week - 1) % len(self.kinds)]


@dataclass(frozen=True, slots=True)
class PlannedDay:
    """A training day where the calendar puts it.

    `on` None: a day done in order, whenever the athlete comes. `week` counts from 1 inside its block.
    `deload` is set in a deload week, and only then. `week_first` is the first day of its plan week.
    """

    on: date | None
    block: Block
    week: int
    kind: WeekKind
    day: TrainingDay
    deload: Deload | None = None
    week_first: date | None = None


@dataclass(frozen=True, slots=True)
class VolumeTarget:
    """Weekly sets wanted for a muscle, fractional counting, both ends included."""

    low: Decimal
    high: Decimal


@dataclass(frozen=True, slots=True)
class Plan:
    name: str
    blocks: tuple[Block, ...]
    targets: Mapping[Muscle, VolumeTarget] = field(default_factory=dict)

    @property
    def weeks(self) -> int:
        return sum(block.weeks for block in self.blocks)
