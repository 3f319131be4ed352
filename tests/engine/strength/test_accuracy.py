"""The estimate of current strength is better than the last set's, and as sure as it says, on invented athletes."""

from __future__ import annotations

import pytest

from engine.strength.stall import A_GAIN, Direction, trend
from tests.engine.strength.invented_athletes import athlete
from tests.engine.strength.judged import GROUPS, judge, judge_loads
from tests.engine.volume.invented import BENCH

FIRST_SEED = 70_000


def test_over_all_groups_the_error_is_well_below_the_last_sets_and_the_interval_holds_what_it_says():
    one = judge(list(GROUPS.values()), 6, FIRST_SEED, every=4)

    assert one.estimates > 600
    assert one.better_by >= 0.25
    assert one.better_by_rms >= 0.25
    assert 0.85 <= one.covered <= 0.95
    assert abs(one.bias) < 0.015


@pytest.mark.parametrize("group", GROUPS)
def test_in_each_group_the_error_is_below_the_last_sets(group):
    one = judge([GROUPS[group]], 6, FIRST_SEED + 1_000, every=4)

    assert one.better_by >= 0.15
    assert one.covered >= 0.75


def test_loads_asked_from_the_steady_strength_are_as_near_as_those_of_the_learning_filter():
    one = judge_loads(list(GROUPS.values()), 6, FIRST_SEED + 2_000, every=4)

    assert one.loads > 600
    assert one.working <= 1.05 * one.learning
    assert one.working <= 0.75 * one.last_session


def test_a_trend_is_as_often_right_as_it_says():
    told: dict[Direction, list[float]] = {direction: [] for direction in Direction}
    for habits in GROUPS.values():
        for seed in range(FIRST_SEED, FIRST_SEED + 4):
            one = athlete(seed, habits, BENCH.name)
            for number in range(14, len(one.truth), 5):
                on, truth = one.truth[number]
                found = trend([record for record in one.records if record.on <= on], BENCH, on)
                if found is not None:
                    then = [level for day, level in one.truth[:number] if (on - day).days >= found.days]
                    told[found.direction].append(truth / then[-1] - 1)

    assert len(told[Direction.RISING]) > 50
    assert len(told[Direction.STALLED]) > 10
    assert sum(change > 0 for change in told[Direction.RISING]) / len(told[Direction.RISING]) > 0.8
    assert sum(change < A_GAIN for change in told[Direction.STALLED]) / len(told[Direction.STALLED]) > 0.75
