"""What one athlete has to load with: bars, plates, racks, stacks.

A gym is a plain frozen value, so that what can be loaded with it is worked out once and kept.
The defaults are what most gyms hold; an athlete's own equipment takes their place. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from engine.values.exercise import Equipment
from engine.values.load import Load, Unit

AMPLE = 8
"""Pairs of each plate in a gym whose stock nobody counted."""


@dataclass(frozen=True, slots=True)
class Bar:
    """A bar with both of its collars; collars nobody counts weigh nothing."""

    mass: Load
    collars: Load | None = None

    def empty(self) -> Load:
        """What is lifted before the first plate."""
        return self.mass if self.collars is None else self.mass + self.collars.in_unit(self.mass.unit)


@dataclass(frozen=True, slots=True)
class Plates:
    """Plate sizes with the number of pairs of each."""

    pairs: tuple[tuple[Load, int], ...]

    def __post_init__(self) -> None:
        for size, count in self.pairs:
            if size.amount <= 0 or count < 0:
                raise ValueError(
                    f"no such plates: {count} pairs of {size}; expected a mass above 0 and 0 or more pairs"
                )


@dataclass(frozen=True, slots=True)
class Stack:
    """A pin stack from `first` in steps of `step` to `top`; any of the add-on weights may hang on it."""

    first: Load
    step: Load
    top: Load
    add_ons: tuple[Load, ...] = ()

    def __post_init__(self) -> None:
        if self.step.amount <= 0 or self.top < self.first:
            raise ValueError(f"no such stack: {self.first} to {self.top} by {self.step}; expected it to rise")


@dataclass(frozen=True, slots=True)
class Gym:
    """All that one athlete can load with. Racks are the sizes of single implements."""

    bars: tuple[tuple[Equipment, Bar], ...]
    plates: Plates
    dumbbells: tuple[Load, ...]
    kettlebells: tuple[Load, ...]
    stack: Stack

    def __hash__(self) -> int:
        # What was worked out for a gym is looked up at each prescription: hashing every plate would cost more than it.
        return hash((len(self.bars), len(self.plates.pairs), len(self.dumbbells), len(self.kettlebells)))

    def bar(self, equipment: Equipment) -> Bar | None:
        """The bar for a kind of equipment; None where it has none."""
        return dict(self.bars).get(equipment)


def default_gym(unit: Unit) -> Gym:
    """What a gym that counts in `unit` usually holds."""
    match unit:
        case Unit.KG:
            return KG_GYM
        case Unit.LB:
            return LB_GYM


def loads(unit: Unit, *amounts: str | int) -> tuple[Load, ...]:
    """Loads in one unit, for writing equipment down."""
    return tuple(Load(Decimal(amount), unit) for amount in amounts)


def _ample(unit: Unit, *amounts: str) -> Plates:
    return Plates(tuple((size, AMPLE) for size in loads(unit, *amounts)))


def _bars(unit: Unit, straight: int, ez: int, trap: int) -> tuple[tuple[Equipment, Bar], ...]:
    kinds = (Equipment.BARBELL, Equipment.EZ_BAR, Equipment.TRAP_BAR, Equipment.SMITH_MACHINE)
    return tuple(zip(kinds, map(Bar, loads(unit, straight, ez, trap, straight)), strict=True))


def _stack(unit: Unit, step: str, top: str, add_on: str) -> Stack:
    lift, most, extra = loads(unit, step, top, add_on)
    return Stack(first=lift, step=lift, top=most, add_ons=(extra,))


# Racks go on by 2 kg in one gym and by 2.5 kg in the next. Both kinds stand here, so that a plan's own step
# (+2 kg, +2.5 kg) finds its next dumbbell; an athlete who tells her rack gets hers alone.
_KG_DUMBBELLS = sorted(
    {Decimal(n) for n in range(1, 51) if n <= 10 or n % 2 == 0} | {Decimal(n) / 2 for n in range(25, 101, 5)}
)

KG_GYM = Gym(
    bars=_bars(Unit.KG, 20, 10, 25),
    plates=_ample(Unit.KG, "1.25", "2.5", "5", "10", "15", "20", "25"),
    dumbbells=tuple(Load(amount, Unit.KG) for amount in _KG_DUMBBELLS),
    kettlebells=loads(Unit.KG, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 32, 36, 40, 44, 48),
    stack=_stack(Unit.KG, step="5", top="150", add_on="2.5"),
)

LB_GYM = Gym(
    bars=_bars(Unit.LB, 45, 25, 55),
    plates=_ample(Unit.LB, "2.5", "5", "10", "25", "35", "45"),
    dumbbells=loads(Unit.LB, *range(5, 121, 5)),
    kettlebells=loads(Unit.LB, 9, 13, 18, 22, 26, 31, 35, 40, 44, 48, 53, 57, 62, 70, 79, 88, 97, 106),
    stack=_stack(Unit.LB, step="10", top="300", add_on="5"),
)
