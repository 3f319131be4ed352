"""The parts that an exercise line can hold, each as it was read and before any is weighed against another."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from engine.values.effort import Effort
from engine.values.load import Basis, Unit
from engine.values.plan import Target


@dataclass(frozen=True, slots=True)
class Mass:
    """An amount as typed. `unit` and `basis` None: not told."""

    amount: Decimal
    unit: Unit | None = None
    basis: Basis | None = None


@dataclass(frozen=True, slots=True)
class Words:
    """Words that are no other part: the exercise's name, or what could not be read."""

    text: str


@dataclass(frozen=True, slots=True)
class Tag:
    """A1, A2: the superset letter."""

    letter: str


@dataclass(frozen=True, slots=True)
class Partner:
    """The exercise of the same day that this one is a superset with; empty: the one above."""

    name: str


@dataclass(frozen=True, slots=True)
class Sets:
    count: int


@dataclass(frozen=True, slots=True)
class Aim:
    """`counted`: the line says that it counts reps, even where the exercise is timed."""

    target: Target
    counted: bool = False


@dataclass(frozen=True, slots=True)
class Weight:
    mass: Mass


@dataclass(frozen=True, slots=True)
class ToFind:
    """The load is to be found."""


@dataclass(frozen=True, slots=True)
class NoLoad:
    """Body weight alone, or none at all."""


@dataclass(frozen=True, slots=True)
class LoadOrEffort:
    """A small bare number behind @ or at."""

    amount: Decimal


@dataclass(frozen=True, slots=True)
class Exertion:
    effort: Effort


@dataclass(frozen=True, slots=True)
class Rest:
    seconds: int


@dataclass(frozen=True, slots=True)
class Cue:
    text: str


@dataclass(frozen=True, slots=True)
class Swap:
    names: str


@dataclass(frozen=True, slots=True)
class Standard:
    text: str


@dataclass(frozen=True, slots=True)
class Step:
    """+2.5 kg. `bare`: a sign and no more, so on a body-weight exercise it may be the load."""

    mass: Mass
    bare: bool


@dataclass(frozen=True, slots=True)
class WhenMade:
    """... when all reps are made."""


@dataclass(frozen=True, slots=True)
class AtTop:
    """... when all sets are at the top of the range. `reps`: the top as told with it."""

    reps: int | None = None


@dataclass(frozen=True, slots=True)
class TopSet:
    """The words "top set", apart from the back-offs. `reps`: a top set of so many."""

    reps: int | None


@dataclass(frozen=True, slots=True)
class Misses:
    count: int
    share: Decimal | None


@dataclass(frozen=True, slots=True)
class SetsUpTo:
    most: int
    first: int | None = None


@dataclass(frozen=True, slots=True)
class RepGain:
    """`most`: up to this many reps."""

    gain: int
    most: int | None = None


@dataclass(frozen=True, slots=True)
class TotalReps:
    total: int


@dataclass(frozen=True, slots=True)
class TotalGain:
    gain: int


@dataclass(frozen=True, slots=True)
class Wave:
    shares: tuple[Decimal, ...]
    maximum: Mass


@dataclass(frozen=True, slots=True)
class ByEffort:
    effort: Effort


@dataclass(frozen=True, slots=True)
class BackOffs:
    count: int
    reps: int | None
    share: Decimal | None


@dataclass(frozen=True, slots=True)
class Longer:
    """+5 s up to 60 s. `timed` False: metres. `bound` None: not told."""

    gain: Decimal
    timed: bool
    bound: Decimal | None


@dataclass(frozen=True, slots=True)
class Still:
    """No progression."""


@dataclass(frozen=True, slots=True)
class Slip:
    """What was recognised and cannot be used as typed."""

    read: str
    expected: str
    try_instead: str


@dataclass(frozen=True, slots=True)
class Taken:
    """What was used, but not quite as typed: worth a word."""

    read: str
    taken_as: str


Growth = SetsUpTo | RepGain | TotalReps | Wave | ByEffort | BackOffs | Longer | Still
"""Parts that name a progression rule on their own. A line may hold one of them."""

Condition = WhenMade | AtTop | TopSet | Misses | TotalGain | Step
"""Parts that say more about a progression, or name one together."""

Part = (
    Words
    | Tag
    | Partner
    | Sets
    | Aim
    | Weight
    | ToFind
    | NoLoad
    | LoadOrEffort
    | Exertion
    | Rest
    | Cue
    | Swap
    | Standard
    | Slip
    | Taken
    | Growth
    | Condition
)
