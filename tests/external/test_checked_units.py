"""Units against the definition of the pound, and against pint as an independent judge."""

from __future__ import annotations

from decimal import Decimal

import pint
import pytest

from engine.values.load import KG_PER_LB, Load, Unit
from tests.engine.volume.invented import kg, lb
from tests.external.sources import ALGEBRA, published, row

POUND = published("NIST", 2008, "SP 811, appendix B: the international pound of 1959")
REGISTRY: pint.UnitRegistry = pint.UnitRegistry(non_int_type=Decimal)


@pytest.mark.parametrize(("source", "kilograms"), [row("EQP-01", POUND, "0.45359237")])
def test_the_pound_is_exact(source, kilograms):
    assert Decimal(kilograms) == KG_PER_LB, source


@pytest.mark.parametrize(
    ("source", "pounds", "kilograms"),
    [
        row("EQP-02", ALGEBRA, "45", "20.41165665"),
        row("EQP-03", ALGEBRA, "135", "61.23496995"),
        row("EQP-04 LIB-05", ALGEBRA, "225", "102.05828325"),
        row("EQP-05", ALGEBRA, "315", "142.88159655"),
        row("EQP-06", ALGEBRA, "405", "183.70490985"),
    ],
)
def test_pounds_in_kilograms(source, pounds, kilograms):
    assert lb(pounds).kilograms() == Decimal(kilograms), source
    judged = REGISTRY.Quantity(Decimal(pounds), "pound").to("kilogram").magnitude
    assert lb(pounds).kilograms() == judged


@pytest.mark.parametrize(
    ("source", "kilograms", "pounds"),
    [
        row("EQP-07", ALGEBRA, "20", "44.092452"),
        row("EQP-08", ALGEBRA, "60", "132.277357"),
        row("EQP-09", ALGEBRA, "100", "220.462262"),
    ],
)
def test_kilograms_in_pounds(source, kilograms, pounds):
    assert abs(kg(kilograms).in_unit(Unit.LB).amount - Decimal(pounds)) <= Decimal("0.0005"), source
    assert abs(kg(kilograms).kilograms() / KG_PER_LB - Decimal(pounds)) <= Decimal("1e-6")


@pytest.mark.parametrize(("source", "tolerance"), [row("EQP-10", ALGEBRA, "0.0227")])
def test_shown_to_a_tenth_of_a_pound_and_back_loses_no_more_than_half_of_it(source, tolerance):
    for tenths in range(0, 4000, 7):
        start = kg(str(Decimal(tenths) / 10))
        shown = Load(start.in_unit(Unit.LB).amount.quantize(Decimal("0.1")), Unit.LB)
        assert abs(shown.kilograms() - start.kilograms()) <= Decimal(tolerance) + Decimal("0.0003"), source


@pytest.mark.parametrize("amount", ["0.5", "1.25", "17.5", "62.5", "102.5", "337.5"])
def test_pint_and_we_agree_on_any_load(amount):
    judged = REGISTRY.Quantity(Decimal(amount), "kilogram").to("pound").magnitude

    assert abs(kg(amount).in_unit(Unit.LB).amount - judged) <= Decimal("0.0005")
