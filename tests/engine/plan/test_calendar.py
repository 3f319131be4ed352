"""Where a date falls in a plan of two blocks, the first with weeks that alternate and a deload."""

from datetime import date

import pytest

from engine.plan.calendar import (
    days_of_week,
    next_planned,
    planned_days,
    planned_on,
    planned_week,
    week_number,
    week_on,
)
from engine.values.plan import Block, Deload, Plan, TrainingDay, Weekday, WeekKind

MONDAY = date(2026, 3, 2)


def day(label: str, weekday: Weekday | None) -> TrainingDay:
    return TrainingDay(label, weekday, ())


FULL_BODY = WeekKind("full body", (day("one", Weekday.MON), day("two", Weekday.THU)))
SPLIT = WeekKind("split", (day("lower", Weekday.FRI), day("upper", Weekday.MON)))
IN_ORDER = WeekKind("in order", (day("first", None), day("noted", Weekday.SAT), day("second", None)))
HALF = Deload()
PLAN = Plan("two blocks", (Block("build", 4, (FULL_BODY, SPLIT), (4,), HALF), Block("free", 2, (IN_ORDER,))))


@pytest.mark.parametrize(
    ("on", "number", "block", "week", "kind", "deload"),
    [
        pytest.param(MONDAY, 1, "build", 1, "full body", None, id="the first day is week 1"),
        pytest.param(date(2026, 3, 8), 1, "build", 1, "full body", None, id="the seventh day is still week 1"),
        pytest.param(date(2026, 3, 9), 2, "build", 2, "split", None, id="week kinds alternate"),
        pytest.param(date(2026, 3, 23), 4, "build", 4, "split", HALF, id="a deload week carries its shares"),
        pytest.param(date(2026, 3, 30), 5, "free", 1, "in order", None, id="a new block counts its own weeks from 1"),
    ],
)
def test_a_date_falls_in_a_week(on, number, block, week, kind, deload):
    found = week_on(PLAN, MONDAY, on)

    assert found is not None
    assert (found.number, found.block.label, found.week, found.kind.label) == (number, block, week, kind)
    assert found.deload == deload
    assert found.first <= on <= found.last


@pytest.mark.parametrize(
    "on",
    [
        pytest.param(date(2026, 3, 1), id="the day before the start"),
        pytest.param(date(2026, 4, 13), id="the day after the last week"),
    ],
)
def test_outside_the_plan_there_is_no_week(on):
    assert week_number(PLAN, MONDAY, on) is None
    assert week_on(PLAN, MONDAY, on) is None
    assert planned_on(PLAN, MONDAY, on) == ()


def test_there_is_no_week_before_the_first_or_after_the_last():
    assert planned_week(PLAN, MONDAY, 0) is None
    assert planned_week(PLAN, MONDAY, 7) is None
    assert days_of_week(PLAN, MONDAY, 7) == ()


def test_a_plan_begun_midweek_still_has_every_day_of_its_first_week():
    wednesday = date(2026, 3, 4)

    days = days_of_week(PLAN, wednesday, 1)

    assert [(planned.day.label, planned.on) for planned in days] == [
        ("two", date(2026, 3, 5)),
        ("one", date(2026, 3, 9)),
    ]


def test_days_without_a_weekday_follow_in_written_order():
    days = days_of_week(PLAN, MONDAY, 5)

    assert [(planned.day.label, planned.on) for planned in days] == [
        ("noted", date(2026, 4, 4)),
        ("first", None),
        ("second", None),
    ]


def test_two_sessions_on_one_date_keep_the_plans_order():
    twice = Plan("x", (Block("b", 1, (WeekKind("w", (day("am", Weekday.TUE), day("pm", Weekday.TUE))),)),))

    assert [planned.day.label for planned in planned_on(twice, MONDAY, date(2026, 3, 3))] == ["am", "pm"]


def test_a_range_of_dates_includes_both_ends_and_crosses_blocks():
    days = planned_days(PLAN, MONDAY, date(2026, 3, 27), date(2026, 4, 4))

    assert [(planned.on, planned.day.label) for planned in days] == [
        (date(2026, 3, 27), "lower"),
        (date(2026, 4, 4), "noted"),
    ]


@pytest.mark.parametrize(
    ("after", "label"),
    [
        pytest.param(date(2026, 2, 1), "one", id="before the start, the first day"),
        pytest.param(date(2026, 3, 2), "two", id="later than the date itself"),
        pytest.param(date(2026, 3, 5), "upper", id="over the week's end, by date and not as written"),
        pytest.param(date(2026, 4, 11), None, id="nothing after the last"),
    ],
)
def test_what_comes_next(after, label):
    found = next_planned(PLAN, MONDAY, after)

    assert (found.day.label if found else None) == label
