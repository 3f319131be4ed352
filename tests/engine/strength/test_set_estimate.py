"""What one set says of the maximum; the equations against published values stand in tests/external/."""

from __future__ import annotations

from decimal import Decimal

import pytest

from engine.strength.one_rep_max import Equation, PastPole, multiple, multiples, raw_multiple
from engine.strength.rep_table import reps_at, share_of_maximum
from engine.strength.set_estimate import Refused, SetEstimate, estimate
from engine.values.load import Basis
from engine.values.sets import SetKind
from tests.engine.volume.invented import BENCH, DUMBBELL_PRESS, PLANK, PULL_UP, done, kg, lb


@pytest.mark.parametrize(
    ("one", "lift", "body", "expected"),
    [
        pytest.param(done(BENCH, 1, kg("100"), failure=True), BENCH, None, kg("100"), id="a single is itself"),
        pytest.param(done(BENCH, 5, kg("80"), failure=True), BENCH, None, kg("92.390"), id="mean of seven"),
        pytest.param(done(BENCH, 3, kg("80"), rir="2"), BENCH, None, kg("92.390"), id="reps in reserve count as reps"),
        pytest.param(
            done(BENCH, 5, kg("80"), rir="3", failure=True),
            BENCH,
            None,
            kg("92.390"),
            id="failure leaves none",
        ),
        pytest.param(
            done(DUMBBELL_PRESS, 1, kg("30", Basis.PER_HAND)),
            DUMBBELL_PRESS,
            None,
            kg("30", Basis.PER_HAND),
            id="per hand stays per hand",
        ),
        pytest.param(
            done(PULL_UP, 1, kg("20", Basis.BODY)), PULL_UP, kg("80"), kg("20", Basis.BODY), id="a single with a belt"
        ),
        pytest.param(
            done(PULL_UP, 5, kg("0", Basis.BODY)),
            PULL_UP,
            kg("80"),
            kg("12.390", Basis.BODY),
            id="the body counts",
        ),
        pytest.param(
            done(PULL_UP, 5, lb("0", Basis.BODY)), PULL_UP, kg("80"), lb("27.315", Basis.BODY), id="told in pounds"
        ),
    ],
)
def test_the_maximum_a_set_points_to(one, lift, body, expected):
    found = estimate(one, lift, body)

    assert isinstance(found, SetEstimate)
    assert found.load.unit is expected.unit
    assert found.load.basis is expected.basis
    assert abs(found.load.amount - expected.amount) <= Decimal("0.005")
    assert found.low <= found.load <= found.high


@pytest.mark.parametrize(
    ("one", "lift", "body", "refused"),
    [
        pytest.param(done(BENCH, 5, kg("80"), rir="4"), BENCH, None, Refused.TOO_EASY, id="four in reserve"),
        pytest.param(done(BENCH, 21, kg("40")), BENCH, None, Refused.TOO_MANY_REPS, id="more than twenty"),
        pytest.param(done(BENCH, 18, kg("40"), rir="3"), BENCH, None, Refused.TOO_MANY_REPS, id="counting reserve"),
        pytest.param(done(BENCH, 0, kg("120"), missed=True), BENCH, None, Refused.NO_REPS, id="a missed single"),
        pytest.param(done(BENCH, 5), BENCH, None, Refused.NO_LOAD, id="no load told"),
        pytest.param(done(BENCH, 5, kg("0")), BENCH, None, Refused.NO_LOAD, id="nothing on it"),
        pytest.param(done(BENCH, 5, kg("20"), kind=SetKind.WARMUP), BENCH, None, Refused.NOT_WORK, id="a warm-up"),
        pytest.param(done(BENCH, 5, kg("50"), kind=SetKind.DROP), BENCH, None, Refused.NOT_WORK, id="a drop"),
        pytest.param(done(PLANK, 1, seconds="60"), PLANK, kg("80"), Refused.NOT_COUNTED_IN_REPS, id="a hold"),
        pytest.param(done(PULL_UP, 5), PULL_UP, None, Refused.NO_BODY_WEIGHT, id="body weight not known"),
        pytest.param(
            done(PULL_UP, 5, kg("-85", Basis.BODY)), PULL_UP, kg("80"), Refused.NO_LOAD, id="helped more than weighed"
        ),
    ],
)
def test_a_set_that_says_nothing_says_why(one, lift, body, refused):
    assert estimate(one, lift, body) is refused


@pytest.mark.parametrize(
    ("one", "at_least", "low_confidence"),
    [
        pytest.param(done(BENCH, 5, kg("80")), True, False, id="no effort told is a lower bound"),
        pytest.param(done(BENCH, 5, kg("80"), missed=True), False, False, id="a miss tells the effort"),
        pytest.param(done(BENCH, 10, kg("80"), rir="0"), False, False, id="ten reps are still linear"),
        pytest.param(done(BENCH, 10, kg("80"), rir="0.5"), False, True, id="past ten reps to failure"),
    ],
)
def test_how_far_to_trust_it(one, at_least, low_confidence):
    found = estimate(one, BENCH)

    assert isinstance(found, SetEstimate)
    assert (found.at_least, found.low_confidence) == (at_least, low_confidence)


@pytest.mark.parametrize("equation", [Equation.BRZYCKI, Equation.LANDER])
def test_an_equation_refuses_at_its_pole(equation):
    assert multiple(equation, Decimal("36.5")) > 10
    with pytest.raises(PastPole):
        multiple(equation, Decimal(38))
    with pytest.raises(PastPole):
        multiples(Decimal(37))


def test_less_than_one_repetition_has_no_multiple():
    with pytest.raises(ValueError, match="1 or more"):
        multiple(Equation.EPLEY, Decimal("0.5"))


def test_only_brzycki_and_mayhew_differ_in_how_far_they_go():
    assert [equation.most_reps for equation in Equation] == [10, 9, 10, 20, 10, 10, 10]


def test_raw_equations_add_to_a_single():
    assert raw_multiple(Equation.EPLEY, Decimal(1)) > 1
    assert multiple(Equation.EPLEY, Decimal(1)) == 1


@pytest.mark.parametrize(
    ("share", "reps"),
    [
        pytest.param("1.01", None, id="more than the maximum"),
        pytest.param("1", 1, id="the maximum once"),
        pytest.param("0.87", 5, id="a line of the table"),
        pytest.param("0.86", 5, id="between two lines the lower reps"),
        pytest.param("0.75", 10, id="its last line"),
        pytest.param("0.74", None, id="below the table"),
    ],
)
def test_reps_at_a_share(share, reps):
    assert reps_at(Decimal(share)) == reps


def test_the_table_ends_at_ten():
    assert share_of_maximum(11) is None
