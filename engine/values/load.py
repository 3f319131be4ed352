"""A mass with its unit and what the mass is counted on.

Amounts are exact decimals, kept in the unit the lifter typed. Conversion is a call you can see: `in_unit`.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import Enum
from functools import lru_cache

KG_PER_LB = Decimal("0.45359237")
"""Exact by definition of the international pound. Source: NIST SP 811 (2008), appendix B."""

SMALLEST_STEP = Decimal("0.001")
HEAVIEST = Decimal(100_000)


class Unit(Enum):
    # Members are singletons: hashing them by identity saves a call for each look-up.
    __hash__ = object.__hash__

    KG = "kg"
    LB = "lb"


class Basis(Enum):
    """What a load counts."""

    __hash__ = object.__hash__

    TOTAL = "total"  # the bar and all on it, or the whole implement or sled
    PER_HAND = "per hand"  # one of two implements
    BODY = "body"  # added to body weight; negative: taken off it
    STACK = "stack"  # the pin of a machine or cable


class UnitMismatch(ValueError):
    """Two loads that cannot be combined until one is converted."""

    def __init__(self, left: Load, right: Load) -> None:
        super().__init__(f"cannot combine {left} with {right}: convert one first, e.g. right.in_unit(left.unit)")
        self.left, self.right = left, right


@lru_cache(maxsize=4_096)
def _slip_of(amount: Decimal, on_the_body: bool) -> str:
    """What is wrong with a mass, empty where nothing is. (The same few amounts are lifted day after day.)"""
    if abs(amount) > HEAVIEST:
        return f"expected a number up to {HEAVIEST}"
    if amount < 0 and not on_the_body:
        return "only help with body weight is negative"
    return "" if amount == amount.quantize(SMALLEST_STEP) else f"expected steps of {SMALLEST_STEP}"


@dataclass(frozen=True, slots=True)
class Load:
    """A mass, never negative unless it is taken off body weight.

    Units: `amount` is in `unit`, to at most a thousandth.
    Errors: ValueError for a mass that cannot be (not finite, too fine, too heavy, negative on a bar).
    """

    amount: Decimal
    unit: Unit
    basis: Basis = Basis.TOTAL

    def __post_init__(self) -> None:
        amount = self.amount
        if not amount.is_finite():
            raise ValueError(f"no such load: {amount} {self.unit.value}; expected a number up to {HEAVIEST}")
        if slip := _slip_of(amount, self.basis is Basis.BODY):
            raise ValueError(f"no such load: {amount} {self.unit.value}; {slip}")

    def __add__(self, other: Load) -> Load:
        self._check(other)
        return Load(self.amount + other.amount, self.unit, self.basis)

    def __sub__(self, other: Load) -> Load:
        self._check(other)
        return Load(self.amount - other.amount, self.unit, self.basis)

    def __lt__(self, other: Load) -> bool:
        # Comparing is what progression does most: amounts of one unit are compared without a conversion.
        return self.amount < other.amount if self.unit is other.unit else self._mass() < other._mass()

    def __le__(self, other: Load) -> bool:
        return self.amount <= other.amount if self.unit is other.unit else self._mass() <= other._mass()

    def __str__(self) -> str:
        return f"{plain(self.amount)} {self.unit.value}"

    def _check(self, other: Load) -> None:
        if self.unit is not other.unit:
            raise UnitMismatch(self, other)

    def _mass(self) -> Decimal:
        return self.amount if self.unit is Unit.KG else self.amount * KG_PER_LB

    def in_unit(self, unit: Unit) -> Load:
        """The same mass in another unit, rounded half even to a thousandth of it."""
        if unit is self.unit:
            return self
        exact = self.amount * KG_PER_LB if unit is Unit.KG else self.amount / KG_PER_LB
        return Load(exact.quantize(SMALLEST_STEP), unit, self.basis)

    def kilograms(self) -> Decimal:
        """The mass in kilograms, unrounded."""
        return self.amount if self.unit is Unit.KG else self.amount * KG_PER_LB


def plain(amount: Decimal) -> str:
    """A decimal as a lifter writes it: no exponent, no trailing zeros."""
    text = format(amount, "f")
    return text.rstrip("0").rstrip(".") if "." in text else text
