"""Laws of strength: units and scale commute, more reps never cost, an estimate is a function of the log alone."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.strength.current import CurrentStrength, current_strength
from engine.strength.set_estimate import SetEstimate, estimate
from engine.strength.stall import trend
from engine.strength.working import working_strength
from engine.values.load import Load, Unit
from engine.values.sets import SetDone
from tests.engine.volume.invented import BENCH, MONDAY, SQUAT, done, kg, records

rirs = st.none() | st.integers(0, 6).map(lambda halves: str(Decimal(halves) / 2))


@st.composite
def bench_sets(draw: st.DrawFn) -> SetDone:
    """A set that says something of strength, near 100 kg."""
    load = kg(str(Decimal(draw(st.integers(120, 240))) / 2))
    missed = draw(st.booleans())
    return done(BENCH, draw(st.integers(1, 12)), load, rir=None if missed else draw(rirs), missed=missed)


days = st.lists(st.lists(bench_sets(), min_size=1, max_size=4).map(tuple), min_size=1, max_size=12)


def log_of(sessions, gap: int = 3):
    return records(*((gap * number, sets) for number, sets in enumerate(sessions)))


def current(log) -> CurrentStrength:
    found = current_strength(log, BENCH, log[-1].on)
    assert found is not None
    return found


@given(bench_sets())
def test_one_repetition_more_never_points_to_less(one: SetDone) -> None:
    less, more = estimate(one, BENCH), estimate(replace(one, reps=one.reps + 1), BENCH)

    assert isinstance(less, SetEstimate)
    assert isinstance(more, SetEstimate)
    assert less.load < more.load


@given(days)
def test_twice_the_loads_are_twice_the_strength(sessions) -> None:
    log = log_of(sessions)
    double = [replace(one, done=replace(one.done, load=_twice(one.done.load))) for one in log]

    once, twice = current(log), current(double)
    assert float(twice.one_rep_max.amount) == pytest.approx(2 * float(once.one_rep_max.amount), rel=1e-4)
    assert float(twice.high.amount) == pytest.approx(2 * float(once.high.amount), rel=1e-4)


def _twice(load: Load | None) -> Load:
    assert load is not None
    return Load(load.amount * 2, load.unit)


@given(days)
def test_pounds_say_what_kilograms_say(sessions) -> None:
    log = log_of(sessions)
    pounds = [replace(one, done=replace(one.done, load=one.done.load.in_unit(Unit.LB))) for one in log if one.done.load]

    assert float(current(pounds).one_rep_max.kilograms()) == pytest.approx(
        float(current(log).one_rep_max.kilograms()), rel=1e-4
    )


@given(days.filter(lambda drawn: len(drawn) > 1), st.integers(0, 3), st.integers(1, 3))
def test_more_reps_in_the_last_session_never_lower_it(sessions, which: int, more: int) -> None:
    """Not so for the first session, where the sets themselves set the expectation that weighs them."""
    log = list(log_of(sessions))
    last = len(log) - 1 - which % len(sessions[-1])
    better = [*log]
    better[last] = replace(log[last], done=replace(log[last].done, reps=log[last].done.reps + more))

    assert float(current(better).one_rep_max.amount) >= float(current(log).one_rep_max.amount) - 0.002


@given(days, st.data(), st.integers(1, 20), st.booleans())
def test_more_reps_in_any_set_never_lower_what_loads_are_asked_from(sessions, data, more: int, still: bool) -> None:
    """However old the set, and whether or not it then counts as missed."""
    log = list(log_of(sessions))
    at = data.draw(st.integers(0, len(log) - 1))
    one = log[at].done
    better = [*log]
    better[at] = replace(log[at], done=replace(one, reps=one.reps + more, missed=one.missed and still))

    assert working(better) >= working(log)


def working(log) -> Decimal:
    found = working_strength(log, BENCH, log[-1].on)
    assert found is not None
    return found.maximum_for(5, Decimal(2)).amount


@given(days)
def test_the_interval_holds_the_estimate_and_widens_with_time(sessions) -> None:
    log = log_of(sessions)
    now = current(log)
    later = current_strength(log, BENCH, log[-1].on + timedelta(days=30))

    assert later is not None
    assert now.low <= now.one_rep_max <= now.high
    assert later.high.amount / later.low.amount >= now.high.amount / now.low.amount


@given(days)
def test_other_lifts_and_undone_sets_leave_no_trace(sessions) -> None:
    log = log_of(sessions)
    crowded = sorted(
        [*log, *log_of([(done(SQUAT, 5, kg("180"), rir="1"),)] * len(sessions))], key=lambda one: (one.on, one.place)
    )

    assert current(crowded).one_rep_max == current(log).one_rep_max
    assert current_strength(log, BENCH, MONDAY - timedelta(days=1)) is None


@given(days)
def test_chances_of_a_trend_are_chances(sessions) -> None:
    log = log_of(sessions)
    found = trend(log, BENCH, log[-1].on)

    if found is not None:
        assert all(0 <= chance <= 1 for chance in (found.rising, found.stalled, found.falling, found.sure))
        assert found.falling <= found.stalled + 1e-9
