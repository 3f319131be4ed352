"""Plates for a target. Targets and answers: plate arithmetic, common practice, no source, unless a row says more."""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise

import pytest

from engine.loading import Bar, Plates, plates_for
from engine.loading.gym import KG_GYM, LB_GYM, loads
from engine.loading.plates import bar_totals
from engine.values.load import Load, Unit


def kg(amount: str | int) -> Load:
    return Load(Decimal(amount), Unit.KG)


def lb(amount: str | int) -> Load:
    return Load(Decimal(amount), Unit.LB)


def owned(unit: Unit, **pairs: int) -> Plates:
    """owned(Unit.KG, p25=1, p1_25=2): one pair of 25, two pairs of 1.25."""
    return Plates(tuple((Load(Decimal(name[1:].replace("_", ".")), unit), held) for name, held in pairs.items()))


BAR_20, BAR_15, BAR_45 = Bar(kg(20)), Bar(kg(15)), Bar(lb(45))
WITH_COLLARS = Bar(kg(20), collars=kg(5))
MICRO = owned(Unit.KG, p25=8, p20=8, p15=8, p10=8, p5=8, p2_5=8, p2=2, p1_5=2, p1=2, p0_5=2)


@pytest.mark.parametrize(
    ("target", "bar", "plates", "side"),
    [
        pytest.param(kg("62.5"), BAR_20, KG_GYM.plates, ("20", "1.25"), id="62.5 kg"),
        pytest.param(kg(100), BAR_20, KG_GYM.plates, ("25", "15"), id="100 kg takes the larger of two equal ways"),
        pytest.param(kg("102.5"), BAR_20, KG_GYM.plates, ("25", "15", "1.25"), id="102.5 kg"),
        pytest.param(kg("142.5"), BAR_20, KG_GYM.plates, ("25", "25", "10", "1.25"), id="142.5 kg"),
        pytest.param(kg(20), BAR_20, KG_GYM.plates, (), id="the empty bar takes no plates"),
        pytest.param(kg(100), WITH_COLLARS, KG_GYM.plates, ("25", "10", "2.5"), id="counted collars"),
        # Collars of 2.5 kg each count in the load. Source: IWF Technical and Competition Rules.
        pytest.param(kg(61), Bar(kg(15), collars=kg(5)), MICRO, ("20", "0.5"), id="half-kilogram discs reach 61 kg"),
        pytest.param(lb(185), BAR_45, LB_GYM.plates, ("45", "25"), id="185 lb"),
        pytest.param(lb(230), BAR_45, LB_GYM.plates, ("45", "45", "2.5"), id="230 lb"),
        pytest.param(kg(100), BAR_20, owned(Unit.KG, p25=1, p20=2), ("20", "20"), id="largest-first is stuck here"),
        pytest.param(kg(90), BAR_20, owned(Unit.KG, p25=1, p20=1, p15=1), ("20", "15"), id="one pair each of three"),
        pytest.param(kg("97.5"), BAR_20, owned(Unit.KG, p20=1, p10=1, p5=1, p2_5=1, p1_25=1),
                     ("20", "10", "5", "2.5", "1.25"), id="every plate owned"),
    ],
)  # fmt: skip
def test_exact_plates(target: Load, bar: Bar, plates: Plates, side: tuple[str, ...]) -> None:
    answer = plates_for(target, bar, plates)

    assert answer.exact is not None
    assert tuple(str(plate.amount) for plate in answer.exact.side) == side


@pytest.mark.parametrize(
    ("target", "bar", "plates", "below", "above"),
    [
        pytest.param(kg(61), BAR_20, KG_GYM.plates, "60 kg", "62.5 kg", id="61 kg needs half-kilogram discs"),
        pytest.param(lb("137.5"), BAR_45, LB_GYM.plates, "135 lb", "140 lb", id="137.5 lb needs 1.25 lb plates"),
        pytest.param(kg(15), BAR_20, KG_GYM.plates, None, "20 kg", id="under the empty bar there is nothing"),
        pytest.param(kg(200), BAR_20, owned(Unit.KG, p20=1, p10=1, p5=1, p2_5=1, p1_25=1), "97.5 kg", None,
                     id="over all plates owned there is nothing"),
        pytest.param(kg(60), BAR_45, LB_GYM.plates, "58.967 kg", "61.235 kg", id="a kilogram target on pound plates"),
    ],
)  # fmt: skip
def test_nearest_below_and_above(target: Load, bar: Bar, plates: Plates, below: str | None, above: str | None) -> None:
    answer = plates_for(target, bar, plates)

    assert answer.exact is None
    assert (answer.below and str(answer.below.load)) == below
    assert (answer.above and str(answer.above.load)) == above


@pytest.mark.parametrize(
    ("bar", "plates", "step"),
    [
        pytest.param(BAR_20, owned(Unit.KG, p10=4, p5=1, p2_5=1, p1_25=1), "2.5", id="1.25 kg plates"),
        pytest.param(BAR_20, owned(Unit.KG, p10=4, p5=1, p2=2, p1=1, p0_5=1), "1", id="0.5 kg plates"),
        pytest.param(Bar(kg(20)), owned(Unit.KG, p1_25=1, p0_5=1, p0_25=2, p2_5=2), "0.5", id="0.25 kg micro-plates"),
    ],
)
def test_the_smallest_step_is_twice_the_smallest_plate(bar: Bar, plates: Plates, step: str) -> None:
    totals = bar_totals(bar, plates)

    assert min(b - a for a, b in pairwise(totals)) == int(Decimal(step) * 10**11)


def test_mixed_kilogram_and_pound_plates_add_up_exactly() -> None:
    mixed = Plates(((lb(45), 1), (kg(10), 1)))

    answer = plates_for(kg("80.823"), BAR_20, mixed)

    assert answer.exact is not None  # 20 + 2 x (20.41165665 + 10) = 80.8233133 kg
    assert [str(plate) for plate in answer.exact.side] == ["45 lb", "10 kg"]


def test_no_plates_means_the_empty_bar_alone() -> None:
    assert bar_totals(BAR_20, Plates(())) == (20 * 10**11,)


@pytest.mark.parametrize("pairs", [((kg(0), 1),), ((kg(5), -1),)], ids=["a plate of no mass", "a negative stock"])
def test_plates_that_cannot_be(pairs: tuple[tuple[Load, int], ...]) -> None:
    with pytest.raises(ValueError, match="no such plates"):
        Plates(pairs)


def test_loads_writes_equipment_down() -> None:
    assert loads(Unit.KG, "1.25", 20) == (kg("1.25"), kg(20))
