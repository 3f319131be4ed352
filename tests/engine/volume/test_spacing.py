"""Cautions where two sessions come too close for a muscle."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest

from engine.values.effort import Effort
from engine.values.muscles import Muscle
from engine.values.plan import MaxReps, Reps, Slot, TrainingDay
from engine.values.schemes import Hold
from engine.volume.session_work import Session, Work, familiar, sessions_done, sessions_planned, work_planned
from engine.volume.spacing import Ground, cautions, cautions_for, rest_follows
from engine.volume.swap_spacing import swap_advice
from tests.engine.volume.invented import (
    BENCH,
    CURL,
    DEADLIFT,
    EXERCISES,
    EXTENSION,
    LEG_CURL,
    MONDAY,
    PUSHDOWN,
    SEATED_CURL,
    SQUAT,
    STIFF_LEG,
    done,
    kg,
    records,
)

START = datetime(2026, 3, 2, 18, tzinfo=UTC)


def work(lift, hard="3", *, failure=False, new=False):
    return Work(lift.name, Decimal(hard), failure, new)


def session(hours, *works):
    return Session(f"+{hours} h", START + timedelta(hours=hours), works)


def slot(lift, sets=3, target=None, rir=None):
    return Slot(lift.name, sets, target or Reps(8), Hold(), effort=None if rir is None else Effort(Decimal(rir)))


@pytest.mark.parametrize(
    ("before", "hours", "after", "ground"),
    [
        pytest.param(work(EXTENSION, failure=True), 30, work(PUSHDOWN), Ground.LONG_FAILURE, id="failure at length"),
        pytest.param(work(EXTENSION, failure=True), 47.9, work(PUSHDOWN), Ground.LONG_FAILURE, id="just under 48 h"),
        pytest.param(work(EXTENSION, failure=True), 48, work(PUSHDOWN), None, id="48 h are enough"),
        pytest.param(work(EXTENSION, failure=True), 50, work(PUSHDOWN), None, id="more than 48 h are enough"),
        pytest.param(
            work(EXTENSION, failure=True, new=True),
            60,
            work(PUSHDOWN),
            Ground.LONG_FAILURE,
            id="a new one is longer",
        ),
        pytest.param(work(EXTENSION, failure=True, new=True), 72, work(PUSHDOWN), None, id="three days are enough"),
        pytest.param(work(EXTENSION, new=True), 30, work(PUSHDOWN), Ground.NEW_AT_LENGTH, id="new work at length"),
        pytest.param(work(PUSHDOWN, new=True), 30, work(PUSHDOWN), None, id="new work elsewhere in the range"),
        pytest.param(work(PUSHDOWN, failure=True), 24, work(PUSHDOWN), Ground.FAILURE, id="failure the day before"),
        pytest.param(work(PUSHDOWN, failure=True), 40, work(PUSHDOWN), None, id="plain failure is over after a day"),
        pytest.param(work(EXTENSION), 24, work(PUSHDOWN), None, id="short of failure"),
        pytest.param(work(PUSHDOWN), 24, work(EXTENSION), Ground.HARD_BEFORE_LONG, id="long work the day after hard"),
        pytest.param(work(PUSHDOWN, "2"), 24, work(EXTENSION), None, id="two sets are not many"),
        pytest.param(work(CURL, failure=True), 24, work(PUSHDOWN), None, id="another muscle"),
        pytest.param(work(BENCH, failure=True), 24, work(PUSHDOWN), None, id="a secondary mover does not clash"),
    ],
)
def test_ground_for_caution(before, hours, after, ground):
    found = cautions((session(0, before), session(hours, after)), EXERCISES)

    assert [one.ground for one in found] == ([] if ground is None else [ground])


def test_a_caution_tells_both_sides_and_what_to_do():
    (found,) = cautions((session(0, work(STIFF_LEG, failure=True)), session(24, work(LEG_CURL))), EXERCISES)

    assert found.reason == "stiff-leg deadlift took hamstrings to failure at long muscle length the day before."
    assert found.remedy == "Keep 2 reps in reserve on leg curl, or leave 48 hours between."


def test_muscles_that_clash_alike_are_told_together():
    (found,) = cautions((session(0, work(DEADLIFT, failure=True)), session(24, work(DEADLIFT))), EXERCISES)

    assert found.muscles == (Muscle.GLUTES, Muscle.HAMSTRINGS)
    assert "glutes and hamstrings" in found.reason


@pytest.mark.parametrize(
    ("first", "second", "cautioned"),
    [
        pytest.param("2025-03-08T09:00", "2025-03-10T09:00", True, id="47 h elapsed over the spring change"),
        pytest.param("2025-11-01T09:00", "2025-11-03T09:00", False, id="49 h elapsed over the autumn change"),
        pytest.param("2025-06-07T09:00", "2025-06-09T09:00", False, id="48 h elapsed in between"),
    ],
)
def test_hours_are_hours_elapsed_not_the_clock_on_the_wall(first, second, cautioned):
    new_york = ZoneInfo("America/New_York")
    pair = (
        Session("a", datetime.fromisoformat(first).replace(tzinfo=new_york), (work(EXTENSION, failure=True),)),
        Session("b", datetime.fromisoformat(second).replace(tzinfo=new_york), (work(PUSHDOWN),)),
    )

    assert bool(cautions(pair, EXERCISES)) is cautioned


def test_a_session_without_a_zone_cannot_be_built():
    with pytest.raises(ValueError, match="aware"):
        Session("a", datetime(2026, 3, 2, 18), ())  # noqa: DTZ001 - the point of the test


def test_a_planned_week_meets_its_own_next_week():
    sunday = TrainingDay("sunday", None, (slot(STIFF_LEG, target=MaxReps()),))
    monday = TrainingDay("monday", None, (slot(LEG_CURL),))
    sessions = sessions_planned([(6, sunday), (0, monday), (7, monday), (13, sunday)])

    assert [(one.earlier, one.later) for one in cautions(sessions, EXERCISES)] == [("sunday", "monday")]


@pytest.mark.parametrize(
    ("planned", "expected"),
    [
        pytest.param(slot(CURL), (Work(CURL.name, Decimal(3)),), id="no effort planned is hard, not to failure"),
        pytest.param(slot(CURL, target=MaxReps()), (Work(CURL.name, Decimal(3), True),), id="maximum reps are failure"),
        pytest.param(slot(CURL, target=MaxReps(), rir=1), (Work(CURL.name, Decimal(3)),), id="unless one is kept"),
        pytest.param(slot(CURL, rir=0), (Work(CURL.name, Decimal(3), True),), id="nothing in reserve is failure"),
        pytest.param(slot(CURL, rir=4), (), id="half effort is left out"),
    ],
)
def test_planned_work(planned, expected):
    assert work_planned((planned,)) == expected


@pytest.mark.parametrize(
    ("yesterday", "cautioned"),
    [
        pytest.param(done(STIFF_LEG, 8, kg("80"), failure=True), True, id="told as failure"),
        pytest.param(done(STIFF_LEG, 8, kg("80"), rir="0"), True, id="nothing in reserve"),
        pytest.param(done(STIFF_LEG, 6, kg("80"), missed=True), True, id="a miss is failure"),
        pytest.param(done(STIFF_LEG, 8, kg("80"), rir="4"), False, id="half effort"),
        pytest.param(done(STIFF_LEG, 8, kg("80")), False, id="one set, no effort told"),
        pytest.param(done(LEG_CURL, 8, kg("40"), failure=True), False, id="nothing long, and 30 h is the day after"),
    ],
)
def test_todays_session_after_what_the_log_says_of_yesterday(yesterday, cautioned):
    log = sessions_done(records((0, (yesterday,))), UTC)
    today = Session("today", START + timedelta(hours=37), work_planned((slot(LEG_CURL),)))

    assert bool(cautions_for(today, log, EXERCISES)) is cautioned


def test_a_session_of_the_log_ends_with_its_last_set():
    (monday,) = sessions_done(records((0, (done(CURL, 8),) * 4)), UTC)

    assert monday.at == datetime(2026, 3, 2, 18, 15, tzinfo=UTC)
    assert monday.work == (Work(CURL.name, Decimal(4)),)


def test_sets_told_a_day_late_count_from_the_noon_of_their_own_day():
    late = records((1, (done(CURL, 8),)))[0]
    moved = type(late)(late.id, late.done, MONDAY, late.at, late.place)

    (monday,) = sessions_done((moved,), ZoneInfo("Europe/Berlin"))
    assert monday.at == datetime(2026, 3, 2, 12, tzinfo=ZoneInfo("Europe/Berlin"))


def test_familiar_is_what_was_done_in_the_last_eight_weeks():
    log = records((0, (done(CURL, 8),)), (10, (done(SQUAT, 5),)))

    assert familiar(log, MONDAY + timedelta(days=57)) == {SQUAT.name}
    assert familiar(log, MONDAY + timedelta(days=10)) == {CURL.name}


WEEK = sessions_planned(
    [
        (0, TrainingDay("monday", None, (slot(DEADLIFT, 4),))),
        (1, TrainingDay("tuesday", None, (slot(BENCH), slot(LEG_CURL)))),
        (3, TrainingDay("thursday", None, (slot(STIFF_LEG),))),
    ]
)


def test_a_swap_is_judged_before_it_is_made():
    advice = swap_advice(WEEK, 1, LEG_CURL.name, SEATED_CURL.name, EXERCISES, (STIFF_LEG.name, CURL.name))

    assert [one.ground for one in advice.cautions] == [Ground.HARD_BEFORE_LONG]
    assert advice.instead == (CURL.name,)
    assert advice.text == (
        "seated leg curl puts long-length work on hamstrings the day after deadlift. "
        "Keep 2 reps in reserve on seated leg curl, or take curl instead."
    )


def test_a_swap_to_long_length_is_told_also_where_failure_the_day_before_was_a_caution_already():
    days = (session(0, work(DEADLIFT, failure=True)), session(24, work(LEG_CURL)))
    advice = swap_advice(days, 1, LEG_CURL.name, SEATED_CURL.name, EXERCISES, (CURL.name,))

    assert advice.text == (
        "deadlift took hamstrings to failure the day before, and seated leg curl works at long muscle length. "
        "Keep 2 reps in reserve on seated leg curl, or take curl instead."
    )
    assert swap_advice(days, 1, LEG_CURL.name, LEG_CURL.name, EXERCISES).text == ""


def test_a_swap_that_adds_nothing_says_nothing():
    advice = swap_advice(WEEK, 2, STIFF_LEG.name, SEATED_CURL.name, EXERCISES, (CURL.name,))

    assert (advice.cautions, advice.instead, advice.text) == ((), (), "")


def test_a_swap_to_something_new_at_length_weighs_more():
    sessions = sessions_planned(
        [(0, TrainingDay("a", None, (slot(LEG_CURL),))), (1, TrainingDay("b", None, (slot(LEG_CURL),)))]
    )
    used_to = swap_advice(sessions, 0, LEG_CURL.name, SEATED_CURL.name, EXERCISES)
    strange = swap_advice(sessions, 0, LEG_CURL.name, SEATED_CURL.name, EXERCISES, known={LEG_CURL.name})

    assert used_to.cautions == ()
    assert [one.ground for one in strange.cautions] == [Ground.NEW_AT_LENGTH]


def test_failure_work_fits_where_a_rest_day_follows():
    hamstrings = (Muscle.HAMSTRINGS,)

    assert not rest_follows(WEEK, 0, hamstrings, EXERCISES)
    assert rest_follows(WEEK, 1, hamstrings, EXERCISES)
    assert rest_follows(WEEK, 0, (Muscle.BICEPS,), EXERCISES)
