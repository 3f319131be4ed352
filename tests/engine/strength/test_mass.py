"""The mass one set moves."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.strength.mass import mass_per_rep, volume_load
from engine.values.load import Basis
from engine.values.sets import Side
from tests.engine.volume.invented import (
    BENCH,
    DUMBBELL_PRESS,
    ONE_ARM_ROW,
    PLANK,
    PULL_UP,
    SPLIT_SQUAT,
    done,
    kg,
    lb,
)


@pytest.mark.parametrize(
    ("one", "lift", "expected"),
    [
        pytest.param(done(BENCH, 5, kg("100")), BENCH, "500", id="a bar counts once"),
        pytest.param(done(BENCH, 1, lb("225")), BENCH, "102.05828325", id="pounds become exact kilograms"),
        pytest.param(done(DUMBBELL_PRESS, 10, kg("30", Basis.PER_HAND)), DUMBBELL_PRESS, "600", id="both hands count"),
        pytest.param(done(ONE_ARM_ROW, 10, kg("30", Basis.PER_HAND)), ONE_ARM_ROW, "600", id="one hand, both sides"),
        pytest.param(
            done(ONE_ARM_ROW, 10, kg("30", Basis.PER_HAND), side=Side.LEFT), ONE_ARM_ROW, "300", id="one side alone"
        ),
        pytest.param(
            done(SPLIT_SQUAT, 10, kg("15", Basis.PER_HAND)), SPLIT_SQUAT, "600", id="both hands loaded, each leg"
        ),
        pytest.param(done(PULL_UP, 5, kg("10", Basis.BODY)), PULL_UP, "450", id="added to body weight"),
        pytest.param(done(PULL_UP, 5, kg("-25", Basis.BODY)), PULL_UP, "275", id="help is taken off"),
        pytest.param(done(PULL_UP, 5, kg("-90", Basis.BODY)), PULL_UP, "0", id="help never lifts more than the body"),
        pytest.param(done(PULL_UP, 5), PULL_UP, "400", id="no load on body-weight work is the body"),
        pytest.param(done(BENCH, 5), BENCH, None, id="a bar of unknown load weighs nothing known"),
        pytest.param(done(PLANK, 1, seconds="60"), PLANK, None, id="a hold has no repetitions"),
    ],
)
def test_volume_load(one, lift, expected):
    assert volume_load(one, lift, kg("80")) == (None if expected is None else Decimal(expected))


def test_without_a_body_weight_nothing_is_made_up():
    assert mass_per_rep(kg("10", Basis.BODY), PULL_UP, None) is None
