"""The filter and the trend against statsmodels and scipy, on cases where both must give the same."""

from __future__ import annotations

from decimal import Decimal

import numpy as np
import pytest
from scipy.stats import linregress, norm, theilslopes
from statsmodels.tsa.statespace.kalman_filter import KalmanFilter

from engine.strength.current import current_strength
from engine.strength.kalman import Belief, Step, corrected, corrected_in_part, innovation, moved, spread
from engine.strength.likelihood import chance_above
from engine.strength.rep_curve import log_multiple, reps_for
from engine.strength.stall import trend
from tests.engine.volume.invented import BENCH, done, kg, records
from tests.external.sources import published, row

SCIPY = published("SciPy", None, "scipy.stats.theilslopes and linregress")


def test_the_recursion_is_that_of_statsmodels():
    """A level with a fading drift and a constant seen through changing loadings, 60 steps, observations missing."""
    chance = np.random.default_rng(7)
    steps = 60
    fade, noise, variance = 0.97, (0.04, 0.01, 0.0), 0.25
    loadings = [(1.0, 0.0, float(x)) for x in chance.normal(size=steps)]
    seen = chance.normal(size=steps).cumsum()
    missing = set(chance.choice(steps, 8, replace=False).tolist())

    judge = KalmanFilter(k_endog=1, k_states=3)
    judge.bind(np.where([step in missing for step in range(steps)], np.nan, seen))
    judge["design"] = np.array(loadings).T[np.newaxis, :, :]
    judge["transition"] = np.array([[1.0, 1.0, 0.0], [0.0, fade, 0.0], [0.0, 0.0, 1.0]])
    judge["selection"] = np.eye(3)
    judge["state_cov"] = np.diag(noise)
    judge["obs_cov"] = np.array([[variance]])
    judge.initialize_known(np.array([0.5, 0.1, 0.0]), np.diag([4.0, 0.5, 1.0]))
    judged = judge.filter()

    belief = Belief.apart((0.5, 0.1, 0.0), (4.0, 0.5, 1.0))
    for step in range(steps):
        if step not in missing:
            expected = sum(a * b for a, b in zip(loadings[step], belief.mean, strict=True))
            belief = corrected(belief, innovation(belief, loadings[step], seen[step] - expected, variance))
        assert belief.mean == pytest.approx(judged.filtered_state[:, step], rel=1e-9, abs=1e-12)
        assert np.array(belief.cov) == pytest.approx(judged.filtered_state_cov[:, :, step], rel=1e-9, abs=1e-12)
        belief = moved(belief, (Step(0, 1, 1.0), Step(1, 1, fade - 1)), noise)


def test_an_observation_that_may_not_move_one_component_is_the_joseph_form():
    chance = np.random.default_rng(3)
    root = chance.normal(size=(4, 4))
    cov, loading = root @ root.T, chance.normal(size=4)
    belief = Belief((0.0,) * 4, tuple(map(tuple, cov.tolist())))
    found = innovation(belief, loading.tolist(), 1.3, 0.4)

    after = corrected_in_part(belief, loading.tolist(), found, 2)

    gain = cov @ loading / (loading @ cov @ loading + 0.4)
    gain[2] = 0.0
    left = np.eye(4) - np.outer(gain, loading)
    assert np.array(after.mean) == pytest.approx(gain * 1.3)
    assert np.array(after.cov) == pytest.approx(left @ cov @ left.T + 0.4 * np.outer(gain, gain))
    assert spread(belief, loading.tolist()) == pytest.approx(loading @ cov @ loading)


@pytest.mark.parametrize("mark", [-2.5, -0.3, 0.0, 0.7, 3.1])
def test_chances_are_those_of_the_normal_distribution(mark):
    assert chance_above(mark, 0.2, 1.7) == pytest.approx(norm.sf(mark, 0.2, 1.7), abs=1e-12)


@pytest.mark.parametrize("reps", [1.0, 1.5, 2.0, 4.3, 9.9, 17.2])
def test_the_curve_undoes_itself(reps):
    assert reps_for(log_multiple(reps)[0]) == pytest.approx(reps)


BAD_DAY = ((0, 7, 14, 21, 28, 35), (100, 101, 102, 80, 104, 105))


@pytest.mark.parametrize(
    ("source", "days", "kilograms", "robust", "least_squares"),
    [row("LIB-12", SCIPY, *BAD_DAY, 0.142857, 0.048980)],
)
def test_one_bad_day_bends_our_trend_less_than_least_squares(source, days, kilograms, robust, least_squares):
    """Singles to failure, with the bad day and without it."""
    assert theilslopes(kilograms, days).slope == pytest.approx(robust, abs=1e-6), source
    assert linregress(days, kilograms).slope == pytest.approx(least_squares, abs=1e-6), source

    pairs = list(zip(days, kilograms, strict=True))
    good = [pair for pair in pairs if pair[1] != 80]
    lost = 1 - linregress(*zip(*pairs, strict=True)).slope / linregress(*zip(*good, strict=True)).slope
    ours = 1 - _singles(pairs).one_rep_max.amount / _singles(good).one_rep_max.amount
    assert lost > 0.6
    assert 0 <= ours < Decimal("0.025")


@pytest.mark.parametrize(
    ("source", "a_week"), [row("half a kilogram a week", SCIPY, "0.5"), row("a kilogram a week", SCIPY, "1")]
)
def test_a_steady_rise_is_followed_at_the_least_squares_slope(source, a_week):
    """No scatter, so every method must agree, but for what ours keeps of its start from no great gain."""
    pairs = [(day, 100 + Decimal(a_week) * day / 7) for day in range(0, 84, 2)]
    slope = linregress([day for day, _ in pairs], [float(load) for _, load in pairs]).slope
    log = _log([(day, load.quantize(Decimal("0.001"))) for day, load in pairs])
    followed, found = trend(log, BENCH, log[-1].on), current_strength(log, BENCH, log[-1].on)

    assert followed is not None
    assert found is not None
    assert float(found.one_rep_max.amount) * followed.change / followed.days == pytest.approx(slope, rel=0.25), source
    assert float(found.one_rep_max.amount) == pytest.approx(float(pairs[-1][1]), rel=0.02)


def _log(pairs):
    return records(*((day, (done(BENCH, 1, kg(str(load)), failure=True),)) for day, load in pairs))


def _singles(pairs):
    found = current_strength(_log(pairs), BENCH, _log(pairs)[-1].on)
    assert found is not None
    return found
