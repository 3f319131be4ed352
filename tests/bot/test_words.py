"""Small words behind an intent."""

from __future__ import annotations

from datetime import date, time

import pytest

from bot.words import day_named, person_named, seconds_named, time_named, weekdays_named
from engine.values.plan import Weekday

FRIDAY = date(2025, 3, 14)


@pytest.mark.parametrize(
    ("text", "day"),
    [
        pytest.param("tomorrow", date(2025, 3, 15), id="tomorrow"),
        pytest.param("to mon", date(2025, 3, 17), id="the coming monday"),
        pytest.param("fri", date(2025, 3, 14), id="today's name means today"),
        pytest.param("2025-04-01", date(2025, 4, 1), id="iso date"),
        pytest.param("2025-02-30", None, id="no such date"),
        pytest.param("mon wed", None, id="two days are no day"),
        pytest.param("someday", None, id="no day"),
    ],
)
def test_a_day_is_the_coming_one(text, day):
    assert day_named(text, FRIDAY) == day


@pytest.mark.parametrize(
    ("text", "at"),
    [
        pytest.param("18:00 mon wed", time(18), id="24 hours"),
        pytest.param("at 6pm", time(18), id="pm"),
        pytest.param("12 am", time(0), id="midnight"),
        pytest.param("7.30", time(7, 30), id="a dot"),
        pytest.param("25:00", None, id="no such hour"),
        pytest.param("soon", None, id="no time"),
    ],
)
def test_a_time_of_day(text, at):
    assert time_named(text) == at


@pytest.mark.parametrize(
    ("text", "seconds"),
    [
        pytest.param("2", 120, id="up to 4 are minutes"),
        pytest.param("90", 90, id="from 10 up seconds"),
        pytest.param("7", None, id="between is open"),
        pytest.param("1,5 min", 90, id="decimal comma"),
        pytest.param("90s", 90, id="seconds"),
        pytest.param("1:30", 90, id="minutes and seconds"),
        pytest.param("timer 2:15", 135, id="behind a word"),
        pytest.param("3 hours", None, id="no rest between sets is that long"),
    ],
)
def test_a_rest(text, seconds):
    assert seconds_named(text) == seconds


def test_weekdays_come_in_the_order_of_the_week():
    assert weekdays_named("wed and Mondays, fri") == (Weekday.MON, Weekday.WED, Weekday.FRI)
    assert len(weekdays_named("daily")) == 7


@pytest.mark.parametrize(
    ("text", "place"),
    [
        pytest.param("ann: +2 sets", 0, id="a whole name before its prefix"),
        pytest.param("annab", 1, id="a unique prefix"),
        pytest.param("b", None, id="nobody"),
        pytest.param("", None, id="no name"),
    ],
)
def test_a_person_by_unique_prefix(text, place):
    assert person_named(text, ["Ann", "Annabel"]) == place
