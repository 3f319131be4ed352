"""Warm-up ramps. The shares, reps and the 62.5 kg example: common practice, no source."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.loading import warm_ups
from engine.loading.exercises import _loadable
from engine.loading.gym import KG_GYM, LB_GYM, Gym
from engine.values.exercise import Equipment, Loading
from engine.values.load import Basis, Load, Unit

BAR, HANDS, BODY = Loading.BAR, Loading.PER_HAND, Loading.BODY
BARBELL, DUMBBELL, NONE = Equipment.BARBELL, Equipment.DUMBBELL, Equipment.BODY_WEIGHT


def ramp(work: str, unit: Unit, loading: Loading, equipment: Equipment, bar: str | None) -> str:
    gym: Gym = KG_GYM if unit is Unit.KG else LB_GYM
    basis = Basis.BODY if loading is Loading.BODY else Basis.TOTAL
    steps = warm_ups(
        Load(Decimal(work), unit, basis),
        _loadable(loading, equipment, gym, unit),
        None if bar is None else Load(Decimal(bar), unit),
    )
    return ", ".join(f"{step.load.amount.normalize():f}x{step.reps}" for step in steps)


@pytest.mark.parametrize(
    ("work", "unit", "loading", "equipment", "bar", "expected"),
    [
        pytest.param("62.5", Unit.KG, BAR, BARBELL, "20", "20x10, 25x5, 37.5x3, 50x2", id="62.5 kg"),
        pytest.param("100", Unit.KG, BAR, BARBELL, "20", "20x10, 40x5, 60x3, 80x2", id="100 kg"),
        pytest.param("40", Unit.KG, BAR, BARBELL, "20", "20x10, 22.5x3, 30x2", id="steps under the bar fall out"),
        pytest.param("20", Unit.KG, BAR, BARBELL, "20", "", id="the empty bar needs no ramp"),
        pytest.param("225", Unit.LB, BAR, BARBELL, "45", "45x10, 90x5, 135x3, 180x2", id="225 lb"),
        pytest.param("30", Unit.KG, HANDS, DUMBBELL, None, "12x5, 18x3, 24x2", id="dumbbells have no bar"),
        pytest.param("2", Unit.KG, HANDS, DUMBBELL, None, "1x3", id="one step is not told twice"),
        pytest.param("0", Unit.KG, BODY, NONE, None, "", id="plain body weight needs no ramp"),
        pytest.param("-20", Unit.KG, BODY, NONE, None, "", id="nor does assisted work"),
    ],
)  # fmt: skip
def test_warm_ups(
    work: str, unit: Unit, loading: Loading, equipment: Equipment, bar: str | None, expected: str
) -> None:
    assert ramp(work, unit, loading, equipment, bar) == expected
