"""Effort: the RPE scale from repetitions in reserve, and how far calls may be trusted."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.strength import current, session_evidence
from engine.strength.one_rep_max import Equation, multiple
from engine.strength.set_estimate import Refused, estimate, reps_to_failure
from engine.values.effort import Effort
from tests.engine.volume.invented import BENCH, done, kg
from tests.external.sources import PRACTICE, from_memory, published, row

ZOURDOS = published("Zourdos et al.", 2016, "J Strength Cond Res 30(1):267-275")
HALVES = from_memory("Zourdos et al.; Helms et al.", 2016, "J Strength Cond Res 30(1); Strength Cond J 38(4):42-49")
HALPERIN = published("Halperin et al.", 2022, "Sports Med 52:377-390")
REFALO = published("Refalo et al.", 2023, "J Strength Cond Res, bench at 75 %, calls of 1 and 3")
SQUATS = published("Zourdos et al.", 2021, "J Strength Cond Res 35(S1):S158, squat at 70 %")
HACKETT = published("Hackett et al.", 2017, "J Strength Cond Res 31(8):2162")
MITTER = published("Mitter et al.", 2022, "PLoS ONE, bench retest")
HUNDREDTH = Decimal("0.01")


@pytest.mark.parametrize(
    ("source", "rpe", "rir"),
    [
        row("RPE-01", ZOURDOS, "10", "0"),
        row("RPE-02", ZOURDOS, "9", "1"),
        row("RPE-03", ZOURDOS, "8", "2"),
        row("RPE-04", ZOURDOS, "7", "3"),
        row("RPE-05", HALVES, "9.5", "0.5"),
        row("RPE-06", HALVES, "8.5", "1.5"),
        row("RPE-07", HALVES, "7.5", "2.5"),
        row("RPE-08 upper end", ZOURDOS, "6", "4"),
        row("RPE-08 within", ZOURDOS, "5", "5"),
    ],
)
def test_rpe_is_ten_less_the_reserve(source, rpe, rir):
    assert Effort.from_rpe(Decimal(rpe)).rir == Decimal(rir), source
    assert Effort(Decimal(rir)).rpe == Decimal(rpe)


@pytest.mark.parametrize(
    ("source", "load", "reps", "rir", "to_failure", "epley", "brzycki"),
    [
        row("RPE-09", ZOURDOS, "100", 5, "2", "7", "123.33", "120.00"),
        row("RPE-10", HALVES, "100", 5, "0.5", "5.5", "118.33", "114.29"),
        row("RPE-11", HALVES, "100", 5, "1.5", "6.5", "121.67", "118.03"),
        row("RPE-12", ZOURDOS, "140", 3, "1", "4", "158.67", "152.73"),
        row("RPE-13", ZOURDOS, "60", 8, "3", "11", "82.00", "83.08"),
    ],
)
def test_reserve_is_folded_into_the_repetitions(source, load, reps, rir, to_failure, epley, brzycki):
    reps_in_all = reps_to_failure(done(BENCH, reps, kg(load), rir=rir))

    assert reps_in_all == Decimal(to_failure)
    for equation, expected in ((Equation.EPLEY, epley), (Equation.BRZYCKI, brzycki)):
        assert abs(Decimal(load) * multiple(equation, reps_in_all) - Decimal(expected)) <= HUNDREDTH, source


@pytest.mark.parametrize(
    ("source", "rir", "used"),
    [
        row("RPE-18", PRACTICE, "3", True),
        row("RPE-18 over", PRACTICE, "4", False),
        row("RPE-18 half", PRACTICE, "3.5", False),
    ],
)
def test_only_sets_near_failure_are_estimated_from(source, rir, used):
    assert (estimate(done(BENCH, 5, kg("80"), rir=rir), BENCH) is not Refused.TOO_EASY) is used, source


@pytest.mark.parametrize(("source", "rpe"), [row("RPE-19 above", PRACTICE, "11"), row("RPE-19 below", PRACTICE, "-1")])
def test_there_is_no_effort_off_the_scale(source, rpe):
    with pytest.raises(ValueError, match="no such effort"):
        Effort.from_rpe(Decimal(rpe))


@pytest.mark.parametrize(("source", "low", "high"), [row("RPE-14", HALPERIN, 0.17, 1.73)])
def test_the_bias_in_calling_that_the_filter_starts_from_lies_in_the_published_interval(source, low, high):
    assert low <= current.CALL_MEAN <= high, source


@pytest.mark.parametrize(("source", "mean", "sd"), [row("RPE-17", REFALO, -0.17, 1.00)])
def test_the_filter_gives_a_near_call_its_published_error(source, mean, sd):
    """And its start allows for lifters like these, who hardly miscall."""
    assert pytest.approx(sd, abs=0.25) == session_evidence.CALLED_SD, source
    assert abs(current.CALL_MEAN - mean) < current.CALL_SD


@pytest.mark.parametrize(
    ("source", "left", "sd"),
    [row("RPE-15 RPE 9", SQUATS, 1, 1.73), row("RPE-15 RPE 7", SQUATS, 3, 2.46), row("RPE-15 RPE 5", SQUATS, 5, 2.92)],
)
def test_the_filter_trusts_calls_in_long_sets_no_more_than_published(source, left, sd):
    """Sets of about sixteen to failure: our spread is that of one repetition's worth, times what a long set adds."""
    long_set = 1 + (16 - 10) / 10
    ours = (session_evidence.CALLED_SD + session_evidence.CALLED_SD_FOR_EACH_LEFT * (left - 1)) * long_set

    assert ours == pytest.approx(sd, rel=0.25), source


@pytest.mark.parametrize(("source", "near", "far"), [row("RPE-16", HACKETT, 1, 2)])
def test_calls_near_failure_miss_by_about_one(source, near, far):
    assert pytest.approx(near, abs=0.25) == session_evidence.CALLED_SD, source


@pytest.mark.parametrize(("source", "low", "high"), [row("PCT-19", MITTER, 0.7, 1.1)])
def test_repetitions_to_failure_scatter_as_published(source, low, high):
    assert low <= session_evidence.FAILED_SD <= high, source
