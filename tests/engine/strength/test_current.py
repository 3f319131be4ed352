"""Current strength from all recent sets."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

import pytest

from engine.strength.current import RECENT_SESSIONS, current_strength
from engine.values.load import Basis
from engine.values.sets import SetKind
from tests.engine.volume.invented import BENCH, MONDAY, PLANK, PULL_UP, SQUAT, done, kg, lb, records


def estimate(log, lift, today, body=None):
    found = current_strength(log, lift, today, body)

    assert found is not None
    return found


def kilograms(load):
    return float(load.kilograms())


def every_third_day(*sets, sessions=10, start=0):
    return tuple((start + 3 * number, sets) for number in range(sessions))


def test_singles_to_failure_are_what_they_are():
    log = records(*every_third_day(done(BENCH, 1, kg("100"), failure=True)))
    found = estimate(log, BENCH, log[-1].on)

    assert kilograms(found.one_rep_max) == pytest.approx(100, rel=0.02)
    assert found.low < found.one_rep_max < found.high
    assert kilograms(found.high) - kilograms(found.low) < 10


def test_more_sessions_make_it_surer():
    sets = (done(BENCH, 5, kg("80"), rir="1"),) * 3
    few = estimate(records(*every_third_day(*sets, sessions=2)), BENCH, MONDAY + timedelta(days=3))
    many = estimate(records(*every_third_day(*sets, sessions=15)), BENCH, MONDAY + timedelta(days=42))

    assert kilograms(many.high) - kilograms(many.low) < kilograms(few.high) - kilograms(few.low)


def test_a_set_with_no_effort_told_is_less_certain_than_one_with():
    silent = estimate(records(*every_third_day(done(BENCH, 5, kg("80")))), BENCH, MONDAY + timedelta(days=27))
    told = estimate(records(*every_third_day(done(BENCH, 5, kg("80"), rir="2"))), BENCH, MONDAY + timedelta(days=27))

    assert kilograms(silent.high) / kilograms(silent.low) > kilograms(told.high) / kilograms(told.low)


def test_easy_silent_sets_hardly_lower_it():
    hard = every_third_day(done(BENCH, 3, kg("100"), rir="1"))
    before = estimate(records(*hard), BENCH, MONDAY + timedelta(days=30))
    easy = every_third_day(done(BENCH, 5, kg("60")), sessions=3, start=30)
    after = estimate(records(*hard, *easy), BENCH, MONDAY + timedelta(days=36))

    assert kilograms(after.one_rep_max) > 0.96 * kilograms(before.one_rep_max)


def test_a_silent_set_that_no_weaker_lifter_could_do_raises_it():
    hard = every_third_day(done(BENCH, 3, kg("100"), rir="1"))
    before = estimate(records(*hard), BENCH, MONDAY + timedelta(days=30))
    after = estimate(
        records(*hard, *every_third_day(done(BENCH, 5, kg("110")), sessions=3, start=30)),
        BENCH,
        MONDAY + timedelta(days=36),
    )

    assert kilograms(after.one_rep_max) > 1.03 * kilograms(before.one_rep_max)


def test_one_bad_day_costs_less_than_it_shows():
    good = every_third_day(done(BENCH, 5, kg("100"), rir="1"))
    before = estimate(records(*good), BENCH, MONDAY + timedelta(days=30))
    after = estimate(records(*good, (30, (done(BENCH, 5, kg("92.5"), rir="0"),))), BENCH, MONDAY + timedelta(days=30))

    assert 0.96 < kilograms(after.one_rep_max) / kilograms(before.one_rep_max) < 1


def test_a_day_that_falls_far_short_never_raises_it():
    good = every_third_day(done(BENCH, 5, kg("100"), rir="1"))
    before = estimate(records(*good), BENCH, MONDAY + timedelta(days=30))
    after = estimate(records(*good, (30, (done(BENCH, 5, kg("80"), rir="0"),))), BENCH, MONDAY + timedelta(days=30))

    assert after.one_rep_max <= before.one_rep_max


def test_the_lifters_own_bias_in_calling_is_learned():
    """Calls three in reserve and never gets a third one: the next repetition after two is missed."""
    cautious = []
    for number in range(8):
        cautious.append((6 * number, (done(BENCH, 5, kg("80"), rir="3"),)))
        cautious.append((6 * number + 3, (done(BENCH, 10, kg("80"), failure=True),)))
    bold = [
        (day, (done(BENCH, 5, kg("80"), rir="3"),) if number % 2 == 0 else (done(BENCH, 6, kg("80"), failure=True),))
        for number, (day, _) in enumerate(cautious)
    ]
    today = MONDAY + timedelta(days=48)

    leaves_more = estimate(records(*cautious), BENCH, today).call_bias
    leaves_less = estimate(records(*bold), BENCH, today).call_bias
    assert leaves_more > 1.0
    assert leaves_less < 0.3


@pytest.mark.parametrize(
    ("days", "least", "most"),
    [
        pytest.param(14, 0.985, 1.02, id="two weeks cost nothing to speak of"),
        pytest.param(35, 0.94, 0.995, id="five weeks cost a few percent"),
        pytest.param(70, 0.88, 0.95, id="ten weeks cost more"),
        pytest.param(300, 0.80, 0.90, id="never more than about fifteen percent"),
    ],
)
def test_time_away_takes_strength_and_certainty(days, least, most):
    log = records(*every_third_day(done(BENCH, 5, kg("100"), rir="1")))
    now = estimate(log, BENCH, log[-1].on)
    later = estimate(log, BENCH, log[-1].on + timedelta(days=days))

    assert least < kilograms(later.one_rep_max) / kilograms(now.one_rep_max) < most
    assert kilograms(later.high) / kilograms(later.low) > kilograms(now.high) / kilograms(now.low)


def test_the_load_for_what_was_done_is_what_was_done():
    log = records(*every_third_day(done(BENCH, 5, kg("100"), rir="2"), sessions=15))
    found = estimate(log, BENCH, log[-1].on)
    low, high = found.interval_for(5, Decimal(2))

    assert kilograms(found.load_for(5, Decimal(2))) == pytest.approx(100, rel=0.02)
    assert low < found.load_for(5, Decimal(2)) < high
    assert found.load_for(8, Decimal(2)) < found.load_for(5, Decimal(2)) < found.load_for(3, Decimal(2))


@pytest.mark.parametrize(
    ("sets", "lift", "body"),
    [
        pytest.param((), BENCH, None, id="nothing logged"),
        pytest.param((done(SQUAT, 5, kg("100")),), BENCH, None, id="another lift"),
        pytest.param((done(BENCH, 5),), BENCH, None, id="no load told"),
        pytest.param((done(BENCH, 5, kg("40"), kind=SetKind.WARMUP),), BENCH, None, id="warm-ups alone"),
        pytest.param((done(BENCH, 5, kg("40"), rir="6"),), BENCH, None, id="nothing near failure"),
        pytest.param((done(BENCH, 40, kg("40")),), BENCH, None, id="past every equation"),
        pytest.param((done(PULL_UP, 5),), PULL_UP, None, id="body weight not known"),
        pytest.param((done(PLANK, 1, seconds="60"),), PLANK, kg("80"), id="a hold"),
    ],
)
def test_where_nothing_says_anything_there_is_no_estimate(sets, lift, body):
    assert current_strength(records((0, sets)), lift, MONDAY, body) is None


def test_body_weight_work_is_estimated_as_added_load():
    log = records(*every_third_day(done(PULL_UP, 1, kg("20", Basis.BODY), failure=True)))
    found = estimate(log, PULL_UP, log[-1].on, kg("80"))

    assert found.one_rep_max.basis is Basis.BODY
    assert kilograms(found.one_rep_max) == pytest.approx(20, abs=2)


def test_the_answer_comes_in_the_unit_last_told():
    log = records((0, (done(BENCH, 1, kg("100"), failure=True),)), (3, (done(BENCH, 1, lb("220.5"), failure=True),)))
    found = estimate(log, BENCH, log[-1].on)

    assert found.one_rep_max.unit is lb("1").unit
    assert kilograms(found.one_rep_max) == pytest.approx(100, rel=0.03)


def test_sets_after_today_and_those_long_past_are_left_out():
    log = records(*every_third_day(done(BENCH, 5, kg("100"), rir="1"), sessions=RECENT_SESSIONS + 5))
    half = log[RECENT_SESSIONS // 2]
    found = estimate(log, BENCH, half.on)

    assert found.sessions == RECENT_SESSIONS // 2 + 1
    assert estimate(log, BENCH, log[-1].on).sessions == RECENT_SESSIONS
    assert found.evidence == tuple(record.id for record in log[: RECENT_SESSIONS // 2 + 1])
