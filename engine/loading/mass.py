"""Exact masses as whole numbers, so that sums of kilogram and pound pieces neither drift nor compare wrongly.

One count is 10^-11 kg: a thousandth of a pound is a whole number of them.
"""

from __future__ import annotations

from decimal import Decimal

from engine.values.load import KG_PER_LB, SMALLEST_STEP, Basis, Load, Unit

COUNTS_PER_KG = 10**11
_IN_KG = Decimal(COUNTS_PER_KG)
_IN_LB = COUNTS_PER_KG * KG_PER_LB
_HALF_A_THOUSANDTH = Decimal("0.0006")
_SLACK_KG, _SLACK_LB = int(_IN_KG * _HALF_A_THOUSANDTH), int(_IN_LB * _HALF_A_THOUSANDTH)
# Compared with `is` below, not looked up: an Enum's hash is slow, and each prescription asks for masses by the hundred.


def counts(load: Load) -> int:
    """The mass in counts."""
    return int(load.amount * (_IN_KG if load.unit is Unit.KG else _IN_LB))


def load_of(mass: int, unit: Unit, basis: Basis) -> Load:
    """The load of so many counts, rounded half even to a thousandth of its unit."""
    return Load((mass / (_IN_KG if unit is Unit.KG else _IN_LB)).quantize(SMALLEST_STEP), unit, basis)


def slack(unit: Unit) -> int:
    """How far a mass may be off for having been told in a unit not its own: just over half a thousandth of it."""
    return _SLACK_KG if unit is Unit.KG else _SLACK_LB
