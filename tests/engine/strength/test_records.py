"""Records by kind, and trends."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

import pytest

from engine.strength.records import RecordKind, best_estimate, heaviest, most_volume, records_broken
from engine.strength.stall import Direction, trend
from engine.values.load import Basis
from engine.values.sets import SetKind
from tests.engine.volume.invented import BENCH, CURL, MONDAY, PULL_UP, done, kg, lb, records

BEFORE = (done(BENCH, 5, kg("80"), rir="1"), done(BENCH, 8, kg("70")), done(BENCH, 12, kg("50")))


@pytest.mark.parametrize(
    ("today", "kinds"),
    [
        pytest.param((done(BENCH, 5, kg("80"), rir="1"),), [], id="the same again is no record"),
        pytest.param((done(BENCH, 1, kg("82.5"), rir="3"),), [RecordKind.LOAD], id="more load than ever"),
        pytest.param((done(BENCH, 9, kg("70")),), [RecordKind.REPS], id="more reps at a load"),
        pytest.param((done(BENCH, 9, kg("60")),), [RecordKind.REPS], id="more reps than with that much or more"),
        pytest.param((done(BENCH, 8, kg("60")),), [], id="as many with less is none"),
        pytest.param(
            (done(BENCH, 6, kg("80"), rir="1"),), [RecordKind.REPS, RecordKind.ESTIMATED_MAXIMUM], id="both at once"
        ),
        pytest.param(
            (done(BENCH, 5, kg("80"), rir="3"),), [RecordKind.ESTIMATED_MAXIMUM], id="the same with more in reserve"
        ),
        pytest.param((done(BENCH, 8, kg("70")),) * 4, [RecordKind.SESSION_VOLUME], id="more in the session"),
        pytest.param((done(BENCH, 1, lb("176.4")),), [], id="grams of conversion are no record"),
        pytest.param((done(BENCH, 5, kg("90"), kind=SetKind.DROP),), [], id="a drop breaks none"),
        pytest.param((done(BENCH, 0, kg("120"), missed=True),), [], id="a miss breaks none"),
        pytest.param((done(CURL, 5, kg("90")),), [], id="another lift"),
        pytest.param((done(BENCH, 15, kg("55")),), [RecordKind.REPS], id="past ten reps no estimate is trusted"),
    ],
)
def test_records_of_a_session(today, kinds):
    log = records((0, BEFORE), (7, today))
    found = records_broken(log[: len(BEFORE)], log[len(BEFORE) :], BENCH)

    assert [one.kind for one in found] == kinds


def test_a_record_tells_the_old_mark_and_its_evidence():
    log = records((0, BEFORE), (7, (done(BENCH, 5, kg("85"), rir="1"),)))
    load, maximum = records_broken(log[:3], log[3:], BENCH)

    assert (load.load, load.previous_load, load.evidence) == (kg("85"), kg("80"), (log[3].id,))
    assert maximum.previous_load is not None
    assert maximum.load is not None
    assert maximum.sure is not None
    assert maximum.previous_load < maximum.load
    assert 0.5 < maximum.sure < 1


def test_a_maximum_seen_once_is_less_sure_than_one_seen_again_and_again():
    steady = tuple((3 * day, (done(BENCH, 5, kg("80"), rir="1"),)) for day in range(8))
    again = tuple((24 + 3 * day, (done(BENCH, 5, kg("85"), rir="1"),)) for day in range(8))
    once, often = records(*steady, again[0]), records(*steady, *again)

    first, later = _maximum(once[:8], once[8:]), _maximum(often[:8], often[8:])
    assert first.sure < later.sure


def _maximum(before, session):
    (found,) = (one for one in records_broken(before, session, BENCH) if one.kind is RecordKind.ESTIMATED_MAXIMUM)
    return found


def test_the_first_session_breaks_no_record():
    log = records((0, BEFORE))

    assert records_broken((), log, BENCH) == ()


def test_bests_of_a_lift():
    log = records((0, BEFORE), (3, (done(BENCH, 3, kg("82.5"), rir="2"),)))

    top, best = heaviest(log, BENCH), best_estimate(log, BENCH)
    assert top is not None
    assert best is not None
    assert top.done.load == kg("82.5")
    assert best[0] is log[3]
    assert most_volume(log, BENCH) == (MONDAY, Decimal("1560"))
    assert heaviest((), BENCH) is None
    assert best_estimate((), BENCH) is None
    assert most_volume((), BENCH) is None


def test_a_day_with_an_unknown_mass_has_no_volume_to_compare():
    log = records((0, (done(PULL_UP, 8, kg("0", Basis.BODY)),)))

    assert most_volume(log, PULL_UP) is None
    assert most_volume(log, PULL_UP, kg("80")) == (MONDAY, Decimal(640))


@pytest.mark.parametrize(
    ("gain", "direction"),
    [
        pytest.param("1.5", Direction.RISING, id="rising"),
        pytest.param("0", Direction.STALLED, id="stalled"),
        pytest.param("-1.5", Direction.FALLING, id="falling"),
    ],
)
def test_a_trend_has_a_direction_and_says_how_sure(gain, direction):
    log = records(*((2 * day, (done(BENCH, 5, kg(str(100 + Decimal(gain) * day)), rir="1"),) * 3) for day in range(22)))
    found = trend(log, BENCH, log[-1].on)

    assert found is not None
    assert found.direction is direction
    assert 0.8 <= found.sure <= 1


def test_four_sessions_show_no_trend():
    log = records(*((2 * day, (done(BENCH, 5, kg("100"), rir="1"),)) for day in range(4)))

    assert trend(log, BENCH, log[-1].on) is None


def test_a_lift_left_alone_for_months_has_no_trend():
    log = records(*((2 * day, (done(BENCH, 5, kg("100"), rir="1"),)) for day in range(10)))

    assert trend(log, BENCH, log[-1].on + timedelta(days=60)) is None
