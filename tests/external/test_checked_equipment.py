"""Bars, plates, collars and warm-up ramps against federation rules and plate arithmetic."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.loading.exercises import loadable_for
from engine.loading.gym import KG_GYM, LB_GYM, Bar, Plates
from engine.loading.plates import plates_for
from engine.loading.ramp import warm_ups
from engine.values.load import Load, Unit, plain
from tests.engine.volume.invented import BENCH, kg, lb
from tests.external.sources import PRACTICE, published, row

IWF = published("IWF", None, "Technical and Competition Rules: bars of 20 and 15 kg, collars of 2.5 kg each")
IPF = published("IPF", None, "technical rules: bar with collars 25 kg")

BAR, WOMENS_BAR, BAR_LB = Bar(kg("20")), Bar(kg("15")), Bar(lb("45"))
COLLARED = Bar(kg("20"), collars=kg("5"))
COLLARED_15 = Bar(kg("15"), collars=kg("5"))
IWF_DISCS = Plates(tuple((kg(size), 8) for size in ("25", "20", "15", "10", "5", "2.5", "2", "1.5", "1", "0.5")))


def stock(unit: Unit, **pairs: int) -> Plates:
    sizes = ((Decimal(name[1:].replace("_", ".")), count) for name, count in pairs.items())
    return Plates(tuple((Load(size, unit), count) for size, count in sizes))


ONE_PAIR_EACH = stock(Unit.KG, p20=1, p10=1, p5=1, p2_5=1, p1_25=1)


@pytest.mark.parametrize(
    ("source", "bar", "plates", "target", "side"),
    [
        row("EQP-18", PRACTICE, BAR, KG_GYM.plates, kg("62.5"), "20 1.25"),
        row("EQP-19", PRACTICE, BAR, KG_GYM.plates, kg("100"), "25 15"),
        row("EQP-20", PRACTICE, BAR, KG_GYM.plates, kg("102.5"), "25 15 1.25"),
        row("EQP-21", PRACTICE, BAR, KG_GYM.plates, kg("142.5"), "25 25 10 1.25"),
        row("EQP-23 EQP-12", IWF, COLLARED, KG_GYM.plates, kg("100"), "25 10 2.5"),
        row("EQP-24", IWF, COLLARED_15, IWF_DISCS, kg("61"), "20 0.5"),
        row("EQP-26", PRACTICE, BAR_LB, LB_GYM.plates, lb("185"), "45 25"),
        row("EQP-27", PRACTICE, BAR_LB, LB_GYM.plates, lb("230"), "45 45 2.5"),
        row("EQP-29", PRACTICE, BAR, stock(Unit.KG, p25=1, p20=2), kg("100"), "20 20"),
        row("EQP-30", PRACTICE, BAR, ONE_PAIR_EACH, kg("97.5"), "20 10 5 2.5 1.25"),
        row("EQP-14", IWF, COLLARED, IWF_DISCS, kg("101"), "25 10 2.5 0.5"),
        row("EQP-15", IPF, COLLARED, KG_GYM.plates, kg("25"), ""),
    ],
)
def test_plates_a_side(source, bar, plates, target, side):
    answer = plates_for(target, bar, plates)

    assert answer.exact is not None, source
    assert " ".join(str(plate.amount) for plate in answer.exact.side) == side, source


@pytest.mark.parametrize(
    ("source", "bar", "plates", "target", "below", "above"),
    [
        row("EQP-22", PRACTICE, BAR, KG_GYM.plates, kg("61"), kg("60"), kg("62.5")),
        row("EQP-28", PRACTICE, BAR_LB, LB_GYM.plates, lb("137.5"), lb("135"), lb("140")),
        row("EQP-25", PRACTICE, BAR, KG_GYM.plates, kg("15"), None, kg("20")),
        row(
            "EQP-30 one more",
            PRACTICE,
            BAR,
            stock(Unit.KG, p20=1, p10=1, p5=1, p2_5=1, p1_25=1),
            kg("98"),
            kg("97.5"),
            None,
        ),
    ],
)
def test_what_cannot_be_loaded_comes_back_as_its_neighbours(source, bar, plates, target, below, above):
    answer = plates_for(target, bar, plates)

    assert answer.exact is None, source
    assert (answer.below and answer.below.load) == below
    assert (answer.above and answer.above.load) == above


@pytest.mark.parametrize(
    ("source", "bar", "plates", "step"),
    [
        row("EQP-32 1.25 kg", PRACTICE, BAR, KG_GYM.plates, kg("2.5")),
        row("EQP-32 0.5 kg", IWF, BAR, IWF_DISCS, kg("1")),
        row("EQP-32 2.5 lb", PRACTICE, BAR_LB, LB_GYM.plates, lb("5")),
    ],
)
def test_the_smallest_step_on_a_bar(source, bar, plates, step):
    assert plates_for(bar.empty() + step, bar, plates).exact is not None, source
    assert plates_for(bar.empty() + Load(step.amount / 2, step.unit), bar, plates).exact is None


@pytest.mark.parametrize(
    ("source", "bar", "kilograms"), [row("EQP-11 men", IWF, BAR, "20"), row("EQP-11 women", IWF, WOMENS_BAR, "15")]
)
def test_empty_bars(source, bar, kilograms):
    assert bar.empty() == kg(kilograms), source


@pytest.mark.parametrize(
    ("source", "work", "ramp"),
    [
        row("TRD-10", PRACTICE, "100", "20x10 40x5 60x3 80x2"),
        row("TRD-11", PRACTICE, "62.5", "20x10 25x5 37.5x3 50x2"),
        row("TRD-12", PRACTICE, "30", "20x10 22.5x2"),
    ],
)
def test_warm_up_ramps(source, work, ramp):
    """TRD-12 lists the bar alone, for 40 and 60 % lie below it; our 80 % of 30 kg, 24, is 22.5 and stands."""
    steps = warm_ups(kg(work), loadable_for(BENCH, None, Unit.KG), kg("20"))

    assert " ".join(f"{plain(step.load.amount)}x{step.reps}" for step in steps) == ramp, source
