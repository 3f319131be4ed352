"""Conversion of loads. One pound is 0.45359237 kg exactly. Source: NIST SP 811 (2008), appendix B."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.values.load import Basis, Load, Unit


@pytest.mark.parametrize(
    ("load", "unit", "expected"),
    [
        pytest.param(Load(Decimal(45), Unit.LB), Unit.KG, Load(Decimal("20.412"), Unit.KG), id="45 lb"),
        pytest.param(Load(Decimal(405), Unit.LB), Unit.KG, Load(Decimal("183.705"), Unit.KG), id="405 lb"),
        pytest.param(Load(Decimal(60), Unit.KG), Unit.LB, Load(Decimal("132.277"), Unit.LB), id="60 kg"),
        pytest.param(Load(Decimal(60), Unit.KG), Unit.KG, Load(Decimal(60), Unit.KG), id="its own unit"),
        pytest.param(
            Load(Decimal(-20), Unit.KG, Basis.BODY), Unit.LB, Load(Decimal("-44.092"), Unit.LB, Basis.BODY), id="help"
        ),
    ],
)
def test_in_unit_converts_amount_and_unit_and_keeps_the_basis(load: Load, unit: Unit, expected: Load) -> None:
    assert load.in_unit(unit) == expected
