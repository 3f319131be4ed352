"""Local times, weeks and weekly repetition against RFC 5545, the time zone database, dateutil and icalendar."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from itertools import islice
from zoneinfo import ZoneInfo

import icalendar
import pytest
from dateutil.rrule import FR, MO, WE, WEEKLY, rrule

from bot.zones import instant, local, within
from engine.reading.days.calendar_days import weekday_after, weekday_before
from tests.external.sources import published, row

RFC = published("RFC 5545", 2009, "section 3.3.5, local time in a gap or told twice")
TZDATA = published("IANA", None, "time zone database")
ISO = published("ISO 8601", 2004, "week numbers")


def utc(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


@pytest.mark.parametrize(
    ("source", "zone", "start", "first", "second"),
    [
        row("LIB-06 before", TZDATA, "America/New_York", "2025-03-03T06:30", "2025-03-03T11:30", "2025-03-05T11:30"),
        row("LIB-07 before", TZDATA, "Europe/Berlin", "2025-03-24T06:30", "2025-03-24T05:30", "2025-03-26T05:30"),
        row("LIB-08 before", TZDATA, "Australia/Sydney", "2025-09-29T06:30", "2025-09-28T20:30", "2025-09-30T20:30"),
    ],
)
def test_a_weekly_time_before_the_clocks_change(source, zone, start, first, second):
    walls = list(islice(rrule(WEEKLY, byweekday=(MO, WE, FR), dtstart=datetime.fromisoformat(start)), 2))

    assert [instant(wall, zone) for wall in walls] == [utc(first), utc(second)], source


@pytest.mark.parametrize(
    ("source", "zone", "first", "fourth"),
    [
        row("LIB-06", TZDATA, "America/New_York", date(2025, 3, 3), "2025-03-10T10:30"),
        row("LIB-07", TZDATA, "Europe/Berlin", date(2025, 3, 24), "2025-03-31T04:30"),
        row("LIB-08", TZDATA, "Australia/Sydney", date(2025, 9, 29), "2025-10-05T19:30"),
    ],
)
def test_the_fourth_of_monday_wednesday_friday_mornings(source, zone, first, fourth):
    """dateutil lays out the wall times; we turn them into instants; icalendar reads them back from a calendar file."""
    start = datetime(first.year, first.month, first.day, 6, 30)  # noqa: DTZ001 - the wall's time
    wall = list(islice(rrule(WEEKLY, byweekday=(MO, WE, FR), dtstart=start), 4))[3]

    assert instant(wall, zone) == utc(fourth), source
    assert wall == start + timedelta(days=7)
    event = icalendar.Event()
    event.add("dtstart", wall.replace(tzinfo=ZoneInfo(zone)))
    read = icalendar.Event.from_ical(event.to_ical())
    assert read.decoded("dtstart").astimezone(UTC) == instant(wall, zone)


@pytest.mark.parametrize(
    ("source", "wall", "expected"),
    [
        row("LIB-09", RFC, "2025-03-09T02:30", "2025-03-09T07:30"),
        row("LIB-10", RFC, "2025-11-02T01:30", "2025-11-02T05:30"),
        row("just before the gap", RFC, "2025-03-09T01:59", "2025-03-09T06:59"),
        row("just after the gap", RFC, "2025-03-09T03:00", "2025-03-09T07:00"),
    ],
)
def test_times_skipped_or_told_twice(source, wall, expected):
    assert instant(datetime.fromisoformat(wall), "America/New_York") == utc(expected), source


@pytest.mark.parametrize("source", [row("LIB-09 as shown", RFC)])
def test_a_skipped_time_is_shown_an_hour_later(source):
    shown = local(instant(datetime(2025, 3, 9, 2, 30), "America/New_York"), "America/New_York")  # noqa: DTZ001

    assert shown == datetime(2025, 3, 9, 3, 30), source  # noqa: DTZ001


@pytest.mark.parametrize(
    ("source", "start", "wall_hours_later"),
    [
        row("LEN-14", TZDATA, "2025-03-08T09:00", "2025-03-10T10:00"),
        row("LEN-15", TZDATA, "2025-11-01T09:00", "2025-11-03T08:00"),
    ],
)
def test_forty_eight_hours_elapsed_on_the_wall(source, start, wall_hours_later):
    found = within(datetime.fromisoformat(start), "America/New_York", 48)

    assert found == datetime.fromisoformat(wall_hours_later), source


@pytest.mark.parametrize(
    ("source", "day", "week"),
    [row("LIB-11", ISO, date(2024, 12, 30), (2025, 1)), row("LIB-11", ISO, date(2027, 1, 1), (2026, 53))],
)
def test_training_weeks_are_iso_weeks(source, day, week):
    """Monday begins a week, across the turn of the year too."""
    monday = weekday_before(day, 0)

    assert tuple(day.isocalendar())[:2] == week, source
    assert monday.isocalendar()[:2] == week
    assert monday.isoweekday() == 1
    assert weekday_after(day, 0) - monday == timedelta(days=7)
