"""What the catalogue knows of one exercise. All of it is common practice, no source, unless a field says otherwise."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import Enum

from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle


class Pattern(Enum):
    """The movement a programmer balances."""

    # Members are singletons: hashing them by identity saves a call for each look-up.
    __hash__ = object.__hash__

    SQUAT = "squat"
    HINGE = "hinge"
    LUNGE = "lunge"
    HORIZONTAL_PUSH = "horizontal push"
    VERTICAL_PUSH = "vertical push"
    HORIZONTAL_PULL = "horizontal pull"
    VERTICAL_PULL = "vertical pull"
    CARRY = "carry"
    EXPLOSIVE = "explosive"
    TRUNK = "trunk"
    ISOLATION = "isolation"


class Equipment(Enum):
    __hash__ = object.__hash__

    BARBELL = "barbell"
    EZ_BAR = "ez bar"
    TRAP_BAR = "trap bar"
    DUMBBELL = "dumbbell"
    KETTLEBELL = "kettlebell"
    CABLE = "cable"
    MACHINE = "machine"
    SMITH_MACHINE = "smith machine"
    BODY_WEIGHT = "body weight"
    BAND = "band"
    SLED = "sled"
    STRONGMAN = "strongman implement"


class Loading(Enum):
    """How the exercise is loaded; it decides how a bare number is read and what can be loaded."""

    __hash__ = object.__hash__

    BAR = "bar"  # the load is the bar and all on it
    PER_HAND = "per hand"  # the load is one of two implements
    IMPLEMENT = "implement"  # one implement in all: a goblet squat, a swing
    STACK = "stack"  # a pin on a machine or cable
    PLATES = "plates"  # a plate-loaded machine or sled
    BODY = "body"  # body weight, with added or assisted load
    BAND = "band"


class Measure(Enum):
    """What a set of it is counted in."""

    __hash__ = object.__hash__

    REPS = "reps"
    TIME = "time"
    DISTANCE = "distance"


class Length(Enum):
    """Where in the range the prime mover's tension is highest."""

    LENGTHENED = "lengthened"
    MIDDLE = "middle"
    SHORTENED = "shortened"


class FailureGuard(Enum):
    """What a set to failure wants beside it."""

    NONE = "none"
    SPOTTER_OR_SAFETIES = "spotter or safeties"
    CAN_BE_DROPPED = "can be dropped"


@dataclass(frozen=True, slots=True)
class Exercise:
    """One exercise.

    `body_share` is the share of body weight moved, 0 to 1 (0 where none is).
    `swaps` names exercises that train much the same; `cues` are our own wording.
    """

    name: ExerciseName
    prime: tuple[Muscle, ...]
    secondary: tuple[Muscle, ...]
    pattern: Pattern
    equipment: Equipment
    loading: Loading
    measure: Measure
    one_sided: bool
    length: Length
    body_share: Decimal
    guard: FailureGuard
    swaps: tuple[ExerciseName, ...]
    cues: tuple[str, ...]

    @property
    def is_isolation(self) -> bool:
        return self.pattern is Pattern.ISOLATION

    @property
    def goes_without_load(self) -> bool:
        """Whether a plan that tells no load means that there is none. Common practice, no source."""
        return self.loading in (Loading.BODY, Loading.BAND) or self.measure is Measure.TIME
