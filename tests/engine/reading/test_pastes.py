"""Workouts of several days in one message: every lift under its day, and every line that is not read quoted."""

from datetime import datetime

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, Logged

MONDAY = datetime(2026, 3, 2, 18)  # noqa: DTZ001  # local, as contexts keep it


def logged(text):
    outcome = read(text, Context(now=MONDAY), catalogue())

    assert isinstance(outcome, Logged)
    return outcome


def days_told(text):
    found = logged(text)
    days = found.days or (found.on,) * len(found.sets)
    return [f"{day.day}.{day.month}." for day in dict.fromkeys(days) if day is not None]


@pytest.mark.parametrize(
    ("text", "days"),
    [
        pytest.param(
            "mon\nsquat 5x100kg\nwed\nbench 5x80kg\nfri\ndeadlift 5x140kg", ["23.2.", "25.2.", "27.2."], id="a week"
        ),
        pytest.param(
            "fri\nsquat 5x100kg\nsun\nbench 5x80kg\nmon\ndeadlift 5x140kg", ["27.2.", "1.3.", "2.3."], id="up to today"
        ),
        pytest.param(
            "mon\nsquat 5x100kg\nsun\nbench 5x80kg\nfri\ndeadlift 5x140kg", ["2.3.", "1.3.", "27.2."], id="newest first"
        ),
        pytest.param("mon: squat 5x100kg\ntue: bench 5x80kg", ["23.2.", "24.2."], id="two days on end"),
        pytest.param("mon: squat 5x100kg\nsun: bench 5x80kg", ["2.3.", "1.3."], id="today and the day before"),
        pytest.param("today: squat 5x100kg\nwed: bench 5x80kg", ["2.3.", "25.2."], id="today said as such"),
        pytest.param("23/2\nsquat 3x5 100\n25/2\nbench 3x8 60", ["23.2.", "25.2."], id="days alone on their lines"),
        pytest.param("25/2\nsquat 3x5 100\n23/2\nbench 3x8 60", ["25.2.", "23.2."], id="the later one first"),
    ],
)
def test_the_days_of_a_paste(text, days):
    assert days_told(text) == days


@pytest.mark.parametrize(
    ("line", "why"),
    [
        pytest.param("glorp 3x8 20", "unknown name “glorp”", id="an unknown name"),
        pytest.param("row 3x8 60", "which one: barbell row, dumbbell row or seated", id="an open name"),
        pytest.param("lateral raise 12x10", "12 at 10 kg", id="numbers that may be two things"),
        pytest.param("squat 5x5 110 ???", "a question, a plan or a story", id="a question"),
        pytest.param("next week: bench 3x8 65", "a question, a plan or a story", id="a plan"),
        pytest.param("bench 3x5 1?0", "is no number I can read", id="a broken number"),
    ],
)
def test_a_line_in_doubt_is_quoted_and_costs_no_other(line, why):
    found = logged(f"yesterday\nsquat 3x5 100\n{line}\ntoday\ndeadlift 5x140kg")

    assert [done.exercise for done in found.sets] == ["barbell back squat"] * 3 + ["conventional deadlift"]
    assert [one.text for one in found.unread] == [line]
    assert found.unread[0].why.startswith(why) or why in found.unread[0].why


def test_lines_of_a_day_that_cannot_be_are_quoted():
    found = logged("2026-02-23\nsquat 3x5 100\n2026-02-31\nbench 3x8 60\n2026-03-20\ndeadlift 5x140kg")

    assert [one.why for one in found.unread] == ["there is no such day", "that day is still ahead"]


def test_what_leans_on_a_line_in_doubt_is_left_with_it():
    found = logged("yesterday\nsquat 3x5 100\ntoday\nrow 3x8 60\nbench 3x10 same weight\ndeadlift 5x140kg")

    assert [done.exercise for done in found.sets] == ["barbell back squat"] * 3 + ["conventional deadlift"]
    assert [one.why for one in found.unread][1] == "by the load of a line that I could not read"


def test_one_open_name_of_one_day_is_asked():
    assert isinstance(read("squat 3x5 100\nrow 3x8 60\nbench 3x8 60", Context(now=MONDAY), catalogue()), Asked)


def test_sets_of_many_days_are_not_too_many_for_one():
    text = "\n".join(f"2026-02-{day:02}\nsquat 5x5 100\nbench 5x5 80" for day in range(1, 13))

    assert len(logged(text).sets) == 12 * 10
