"""A week's best set of a lift against the one of the week before: like with like."""

from __future__ import annotations

import pytest

from engine.strength.compared import Against, against
from tests.engine.volume.invented import BENCH, PLANK, PULL_UP, done, kg

MORE, SAME, LESS = Against.MORE, Against.SAME, Against.LESS


def bench(reps, load, **told):
    return done(BENCH, reps, kg(str(load)), **told)


@pytest.mark.parametrize(
    ("before", "now", "asked", "stands"),
    [
        pytest.param(bench(8, 100), bench(8, 102.5), {}, MORE, id="heavier for as many"),
        pytest.param(bench(8, 100), bench(9, 100), {}, MORE, id="more at the same load"),
        pytest.param(bench(8, 100), bench(8, 100), {}, SAME, id="the same"),
        pytest.param(bench(8, 100), bench(8, 95), {}, LESS, id="lighter for as many"),
        pytest.param(bench(8, 100), bench(6, 100), {}, LESS, id="fewer at the same load"),
        pytest.param(bench(8, 100), bench(5, 100), {"made": True}, SAME, id="fewer, and no more were asked"),
        pytest.param(bench(8, 100), bench(8, 90), {"made": True}, SAME, id="lighter as asked: a deload"),
        pytest.param(bench(8, 100, failure=True), bench(5, 100, rir="3"), {}, SAME, id="as many were there"),
        pytest.param(bench(8, 100, failure=True), bench(5, 100, rir="1"), {}, LESS, id="and here they were not"),
        pytest.param(bench(12, 80), bench(5, 100), {}, SAME, id="another rep range, as strong"),
        pytest.param(bench(12, 80), bench(5, 120), {}, MORE, id="another rep range, surely stronger"),
        pytest.param(bench(12, 80), bench(5, 85), {}, LESS, id="another rep range, surely weaker"),
        pytest.param(bench(12, 80), bench(5, 85), {"made": True}, SAME, id="and all that was asked"),
        pytest.param(bench(12, 80), bench(8, 82.5), {"made": True, "in_turn": True}, MORE, id="the plan's own step"),
        pytest.param(bench(5, 100), bench(12, 95), {}, MORE, id="lighter for so many more"),
        pytest.param(done(BENCH, 5), done(BENCH, 8), {}, MORE, id="no load told, more repetitions"),
        pytest.param(bench(5, 100, missed=True), bench(30, 60), {}, SAME, id="past the equations nothing is said"),
    ],
)
def test_sets_of_two_weeks_are_compared_like_with_like(before, now, asked, stands):
    assert against(now, before, BENCH, **asked) is stands


@pytest.mark.parametrize(
    ("lift", "before", "now", "stands"),
    [
        pytest.param(PLANK, done(PLANK, 1, seconds="40"), done(PLANK, 1, seconds="50"), MORE, id="held longer"),
        pytest.param(PLANK, done(PLANK, 1, seconds="50"), done(PLANK, 1, seconds="40"), LESS, id="held shorter"),
        pytest.param(PULL_UP, done(PULL_UP, 8), done(PULL_UP, 9), MORE, id="body weight, one more"),
        pytest.param(PULL_UP, done(PULL_UP, 8), done(PULL_UP, 5, kg("10")), SAME, id="body weight not known"),
        pytest.param(None, done(BENCH, 8, kg("100")), done(BENCH, 5, kg("120")), SAME, id="a lift of no catalogue"),
    ],
)
def test_what_is_counted_otherwise_too(lift, before, now, stands):
    assert against(now, before, lift) is stands
