"""The strength that loads are asked from."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

import pytest

from engine.strength.one_rep_max import multiples
from engine.strength.working import working_strength
from engine.values.load import Basis, Unit
from engine.values.sets import SetKind
from tests.engine.volume.invented import BENCH, MONDAY, PLANK, PULL_UP, SQUAT, done, kg, lb, records


def asked(log, reps=5, left="2"):
    """The load for so many repetitions with so many in reserve, in kilograms."""
    found = working_strength(log, BENCH, log[-1].on)

    assert found is not None
    maximum = found.maximum_for(reps, Decimal(left))
    return float(maximum.kilograms() / multiples(reps + Decimal(left)).mean)


def every_third_day(*sets, sessions=10, start=0):
    return tuple((start + 3 * number, sets) for number in range(sessions))


STEADY = every_third_day(done(BENCH, 5, kg("100"), rir="2"), sessions=15)


def test_the_load_for_what_was_done_is_what_was_done():
    assert asked(records(*STEADY)) == pytest.approx(100, rel=0.02)


@pytest.mark.parametrize(
    ("today", "least", "most"),
    [
        pytest.param((done(BENCH, 5, kg("100"), rir="3"),) * 3, 100.5, 103, id="easier than before"),
        pytest.param((done(BENCH, 5, kg("100"), rir="0"),) * 3, 95, 99.5, id="harder than before"),
        pytest.param((done(BENCH, 3, kg("100"), missed=True),) * 3, 94, 99, id="missed"),
        pytest.param((done(BENCH, 5, kg("60")),) * 3, 99, 100.5, id="easy and silent says little"),
        pytest.param((done(BENCH, 5, kg("300"), rir="2"),), 101, 108, id="a slip of the thumb pulls no more than far"),
        pytest.param((done(BENCH, 5, kg("10"), rir="2"),), 96, 99.9, id="nor one downwards"),
    ],
)
def test_a_session_pulls_towards_what_it_shows(today, least, most):
    assert least < asked(records(*STEADY, (45, today))) < most


def test_a_repetition_more_a_month_ago_never_asks_for_less():
    weeks = [(7 * week, (done(BENCH, 5, kg("100"), rir="2"),) * 3) for week in range(6)]
    better = [(0, (done(BENCH, 9, kg("100"), rir="2"),) * 3), *weeks[1:]]

    assert asked(records(*better)) >= asked(records(*weeks))


def test_the_answer_comes_in_the_unit_last_told():
    found = working_strength(records((0, (done(BENCH, 5, lb("225"), rir="2"),))), BENCH, MONDAY)

    assert found is not None
    assert found.maximum_for(5, Decimal(2)).unit is Unit.LB


def test_body_weight_is_part_of_the_work_and_taken_off_the_answer():
    found = working_strength(
        records((0, (done(PULL_UP, 5, kg("20", Basis.BODY), rir="2"),))), PULL_UP, MONDAY, kg("80")
    )

    assert found is not None
    by_equations = (found.maximum_for(5, Decimal(2)).amount + 80) / multiples(Decimal(7)).mean
    assert float(by_equations) == pytest.approx(100, rel=0.01)


@pytest.mark.parametrize(
    ("sets", "lift", "body"),
    [
        pytest.param((), BENCH, None, id="nothing logged"),
        pytest.param((done(SQUAT, 5, kg("100")),), BENCH, None, id="another lift"),
        pytest.param((done(BENCH, 5),), BENCH, None, id="no load told"),
        pytest.param((done(BENCH, 5, kg("40"), kind=SetKind.WARMUP),), BENCH, None, id="warm-ups alone"),
        pytest.param((done(PULL_UP, 5),), PULL_UP, None, id="body weight not known"),
        pytest.param((done(PLANK, 1, seconds="60"),), PLANK, kg("80"), id="a hold"),
    ],
)
def test_where_nothing_says_anything_there_is_none(sets, lift, body):
    assert working_strength(records((0, sets)), lift, MONDAY, body) is None


def test_sets_to_come_have_no_say():
    log = records(*STEADY, (60, (done(BENCH, 1, kg("200"), failure=True),)))

    assert working_strength(log, BENCH, MONDAY + timedelta(days=50)) == working_strength(
        log[:-1], BENCH, MONDAY + timedelta(days=50)
    )
