"""Zones and local time; the clock changes are checked against dateutil's reading of the same database.

Source: IANA time zone database (tzdata); RFC 5545 section 3.3.5 for skipped and repeated local times.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from dateutil import tz

from bot.zones import instant, local, zone_named


@pytest.mark.parametrize(
    ("text", "zone"),
    [
        pytest.param("London", "Europe/London", id="a city"),
        pytest.param("new york", "America/New_York", id="two words"),
        pytest.param("São Paulo", None, id="accents are not in the database"),
        pytest.param("sao paulo", "America/Sao_Paulo", id="without them"),
        pytest.param("germany", "Europe/Berlin", id="a country"),
        pytest.param("Europe/Warsaw", "Europe/Warsaw", id="its own name"),
        pytest.param("gym", None, id="no place"),
    ],
)
def test_a_zone_is_named_by_city_country_or_itself(text, zone):
    found = zone_named(text)

    assert (found[0] if found else None) == zone


@pytest.mark.parametrize(
    ("wall", "zone", "utc"),
    [
        pytest.param("2026-03-29T19:00", "Europe/London", "2026-03-29T18:00", id="summer time"),
        pytest.param("2025-03-09T02:30", "America/New_York", "2025-03-09T07:30", id="skipped: the offset before"),
        pytest.param("2025-11-02T01:30", "America/New_York", "2025-11-02T05:30", id="repeated: the first"),
    ],
)
def test_a_wall_time_is_one_instant(wall, zone, utc):
    assert instant(datetime.fromisoformat(wall), zone) == datetime.fromisoformat(utc).replace(tzinfo=UTC)


@pytest.mark.parametrize("zone", ["Europe/Berlin", "America/New_York", "Australia/Sydney", "Asia/Kolkata"])
def test_local_time_agrees_with_dateutil_all_year(zone):
    judge = tz.gettz(zone)
    for day in range(365):
        moment = datetime(2026, 1, 1, 12, tzinfo=UTC) + timedelta(days=day)

        assert local(moment, zone) == moment.astimezone(judge).replace(tzinfo=None)
