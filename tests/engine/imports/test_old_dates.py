"""Dates of old logs: what is a date, which number is the month, which year is meant."""

from datetime import date, timedelta

import pytest
from openpyxl.utils.datetime import to_excel

from engine.imports.dates import date_order, days_of
from engine.imports.values import DateOrder
from engine.imports.written_dates import Pair, Told, written_date
from engine.values.load import Unit

TODAY = date(2026, 6, 1)


@pytest.mark.parametrize(
    ("text", "found"),
    [
        pytest.param("2024-03-05", Told(2024, 3, 5), id="ISO"),
        pytest.param("2024-03-05T18:00:00Z", Told(2024, 3, 5), id="ISO with a time"),
        pytest.param("2024/3/5", Told(2024, 3, 5), id="year first with slashes"),
        pytest.param("Mar 5, 2024 at 6:30 PM", Told(2024, 3, 5), id="a time behind a small word"),
        pytest.param("20240305", Told(2024, 3, 5), id="without separators"),
        pytest.param("05/03/24 6:30 PM", Pair(5, 3, 2024, False), id="two figures for the year, a time behind"),
        pytest.param("5.3.2024", Pair(5, 3, 2024, True), id="points"),
        pytest.param("5. 3. 2024", Pair(5, 3, 2024, True), id="points and spaces"),
        pytest.param("5.3.", Pair(5, 3, None, True), id="no year"),
        pytest.param("5 Mar 2024", Told(2024, 3, 5), id="month in words"),
        pytest.param("March 5th, 2024", Told(2024, 3, 5), id="month first in words"),
        pytest.param("5-Mar-24", Told(2024, 3, 5), id="as spreadsheets shorten it"),
        pytest.param("5 de marzo de 2024", Told(2024, 3, 5), id="Spanish"),
        pytest.param("Dienstag, 5. März 2024", Told(2024, 3, 5, 1), id="German with its weekday"),
        pytest.param("45356", Told(2024, 3, 5), id="a serial day"),
        pytest.param("45356.75", Told(2024, 3, 5), id="a serial day with a time"),
        pytest.param("3x8", None, id="sets"),
        pytest.param("8,8,7", None, id="reps with commas"),
        pytest.param("8/8/7", None, id="reps with slashes"),
        pytest.param("5.3. 60", None, id="a date and a load are no year"),
        pytest.param("82.5", None, id="a load"),
        pytest.param("Monday", None, id="a weekday alone"),
        pytest.param("Mar 2024", None, id="a month alone"),
        pytest.param("1e309", None, id="absurd"),
        pytest.param("٥/٣/٢٠٢٤", Pair(5, 3, 2024, False), id="digits of another script"),
    ],
)
def test_what_is_written_as_a_date(text, found):
    assert written_date(text) == found


@pytest.mark.parametrize("days", [0, 1, 59, 366, 5_000, 20_000])
def test_a_serial_day_is_the_day_that_a_reference_library_makes_of_it(days):
    """Checked against openpyxl's own conversion (1900 date system)."""
    day = date(1960, 1, 1) + timedelta(days=days)
    told = written_date(str(int(to_excel(day))))

    assert told == Told(day.year, day.month, day.day)


def days(*texts, unit=Unit.KG):
    written = [found for text in texts if (found := written_date(text)) is not None]

    assert len(written) == len(texts)
    order = date_order(written, unit, TODAY)
    return order, [found.isoformat() if isinstance(found, date) else found for found in days_of(written, order, TODAY)]


@pytest.mark.parametrize(
    ("texts", "unit", "order", "first"),
    [
        pytest.param(
            ("5/3/2024", "13/3/2024"), Unit.LB, DateOrder.DAY_FIRST, "2024-03-05", id="a number over 12 decides"
        ),
        pytest.param(("5/3/2024", "3/13/2024"), Unit.KG, DateOrder.MONTH_FIRST, "2024-05-03", id="either way"),
        pytest.param(("5/3/2024",), Unit.KG, DateOrder.DAY_FIRST, "2024-03-05", id="kilograms: day first"),
        pytest.param(("5/3/2024",), Unit.LB, DateOrder.MONTH_FIRST, "2024-05-03", id="pounds: month first"),
        pytest.param(("5.3.2024",), Unit.LB, DateOrder.DAY_FIRST, "2024-03-05", id="points: day first"),
        pytest.param(("Tue 3/5/2024",), Unit.KG, DateOrder.MONTH_FIRST, "2024-03-05", id="a weekday decides"),
        pytest.param(("1/7/2026",), Unit.KG, DateOrder.MONTH_FIRST, "2026-01-07", id="nobody logs the future"),
        pytest.param(("2024-03-05",), Unit.LB, None, "2024-03-05", id="ISO needs no order"),
    ],
)
def test_the_whole_column_settles_the_order(texts, unit, order, first):
    found, told = days(*texts, unit=unit)

    assert (found, told[0]) == (order, first)


def test_in_a_column_of_both_orders_only_what_fits_both_ways_stays_open():
    order, told = days("5/3/2024", "13/3/2024", "3/14/2024", "4/4/2024")

    assert order is DateOrder.MIXED
    assert told[1:] == ["2024-03-13", "2024-03-14", "2024-04-04"]
    assert told[0].startswith("could be 5 Mar or 3 May")


@pytest.mark.parametrize(
    ("texts", "told"),
    [
        pytest.param(("28 Dec", "3 Jan", "5 Jan"), ["2025-12-28", "2026-01-03", "2026-01-05"], id="old to new"),
        pytest.param(("5 Jan", "3 Jan", "28 Dec"), ["2026-01-05", "2026-01-03", "2025-12-28"], id="new to old"),
        pytest.param(("5.3.2023", "7.3.", "2.1."), ["2023-03-05", "2023-03-07", "2024-01-02"], id="the year told once"),
        pytest.param(("7.3.2023", "5.3.", "9.3."), ["2023-03-07", "2023-03-05", "2023-03-09"], id="a day out of order"),
        pytest.param(
            ("28.12.", "2.1.2024", "4.1."), ["2023-12-28", "2024-01-02", "2024-01-04"], id="told in the middle"
        ),
        pytest.param(("29 Feb",), ["2024-02-29"], id="a leap day"),
        pytest.param(("2 Jun",), ["2025-06-02"], id="not to come"),
    ],
)
def test_a_year_that_is_not_written_follows_from_the_days_around(texts, told):
    assert days(*texts)[1] == told


@pytest.mark.parametrize(
    ("text", "why"),
    [
        pytest.param("31.02.2024", "no such day", id="no such day"),
        pytest.param("2024-13-05", "no such day", id="no such month"),
        pytest.param("2026-06-02", "the date is in the future", id="tomorrow"),
        pytest.param("1200-01-01", "the date is before 1950", id="long past"),
    ],
)
def test_a_date_that_cannot_be_says_why(text, why):
    assert days(text)[1] == [why]


@pytest.mark.parametrize(
    ("texts", "unit", "order"),
    [
        pytest.param("3/5/24 3/7/24 4/2/24", Unit.KG, DateOrder.MONTH_FIRST, id="row by row forward one way only"),
        pytest.param("5/3/24 7/3/24 2/4/24", Unit.LB, DateOrder.DAY_FIRST, id="the same for pounds"),
        pytest.param("4/2/24 3/7/24 3/5/24", Unit.KG, DateOrder.MONTH_FIRST, id="newest first"),
        pytest.param("3/5/24 3/7/24 3/9/24", Unit.KG, DateOrder.MONTH_FIRST, id="days apart, not months"),
        pytest.param("3/5/24 3/7/24", Unit.KG, DateOrder.DAY_FIRST, id="two dates tell too little"),
        pytest.param("1/2/24 2/3/24 3/4/24", Unit.KG, DateOrder.DAY_FIRST, id="as far apart both ways"),
        pytest.param("2/7/24 9/3/24 1/5/24", Unit.KG, DateOrder.DAY_FIRST, id="in no turn either way"),
        pytest.param("1/3/24 8/3/24 10/3/24", Unit.KG, DateOrder.DAY_FIRST, id="days apart by habit already"),
    ],
)
def test_the_order_by_how_the_dates_go_on(texts, unit, order):
    assert date_order([written_date(text) for text in texts.split()], unit, TODAY) is order
