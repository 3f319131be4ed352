"""A weekday beside a date says which year is meant: where the date was another day, it is still ahead or a slip."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context, Logged, NoSets

NOW = Context(now=datetime(2026, 11, 24, 18, 0, tzinfo=UTC))


@pytest.mark.parametrize(
    "day",
    ["Wed 25 Nov", "Wednesday 25 November", "Mi 25.11.", "środa 25 listopada", "ср 25 ноября", "mercredi 25 novembre"],
)
def test_a_date_that_fits_its_weekday_in_the_year_to_come_is_still_ahead(day) -> None:
    outcome = read(f"{day}\nsquat 3x5 100", NOW, catalogue())
    assert isinstance(outcome, NoSets)
    assert outcome.why == "that day is still ahead"


def test_a_date_that_was_another_weekday_is_told() -> None:
    outcome = read("Fri 21 Nov\nsquat 3x5 100", NOW, catalogue())
    assert isinstance(outcome, NoSets)
    assert outcome.why == "that date is another day of the week"


def test_days_of_a_paste_that_were_are_kept() -> None:
    outcome = read("Mon 23 Nov\nbench 3x5 80\nWed 25 Nov\nsquat 3x5 100", NOW, catalogue())
    assert isinstance(outcome, Logged)
    assert (outcome.on, len(outcome.sets), len(outcome.unread)) == (date(2026, 11, 23), 3, 1)


@pytest.mark.parametrize(
    ("day", "on"),
    [
        ("Sat 21 Nov", date(2026, 11, 21)),
        ("Tue 25 Nov", date(2025, 11, 25)),
        ("Wed 26 Nov", date(2025, 11, 26)),
        ("25 Nov", date(2025, 11, 25)),
    ],
)
def test_a_date_that_fits_its_weekday_is_that_day(day, on) -> None:
    outcome = read(f"{day}\nsquat 3x5 100", NOW, catalogue())
    assert isinstance(outcome, Logged)
    assert outcome.on == on
