"""Exact masses as whole numbers, so that sums of kilogram and pound pieces neither drift nor compare wrongly.

One count is 10^-11 kg: a thousandth of a pound is a whole number of them.
"""

from __future__ import annotations

from decimal import Decimal

from engine.values.load import KG_PER_LB, SMALLEST_STEP, Basis, Load, Unit

COUNTS_PER_KG = 10**11
_COUNTS = {Unit.KG: Decimal(COUNTS_PER_KG), Unit.LB: COUNTS_PER_KG * KG_PER_LB}


def counts(load: Load) -> int:
    """The mass in counts."""
    return int(load.amount * _COUNTS[load.unit])


def load_of(mass: int, unit: Unit, basis: Basis) -> Load:
    """The load of so many counts, rounded half even to a thousandth of its unit."""
    return Load((mass / _COUNTS[unit]).quantize(SMALLEST_STEP), unit, basis)


def slack(unit: Unit) -> int:
    """How far a mass may be off for having been told in a unit not its own: just over half a thousandth of it."""
    return int(_COUNTS[unit] * Decimal("0.0006"))
