"""Which IANA time zone a person means by a city, a country or a zone's own name; and local time in it.

Names come from the time zone database itself (the tzdata package): zone names, and the country table beside them.
Ambiguous local times take the earlier instant; times in a gap move forward by it (RFC 5545, section 3.3.5).
"""

from __future__ import annotations

import zoneinfo
from collections import defaultdict
from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from functools import cache
from importlib import resources
from zoneinfo import ZoneInfo

AREAS = ("Africa", "America", "Antarctica", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific")


def zone_named(text: str) -> tuple[str, ...]:
    """The zones that a person may mean, best first; empty where no zone goes by that name."""
    wanted = _fold(text)
    if not wanted:
        return ()
    return _names().get(wanted, ())


def local(moment: datetime, zone: str) -> datetime:
    """An aware instant by the clock of a zone, naive."""
    return moment.astimezone(ZoneInfo(zone)).replace(tzinfo=None)


def instant(wall: datetime, zone: str) -> datetime:
    """The UTC instant at which a zone's clock shows `wall` (naive).

    Errors: none; a time skipped by a clock change is read with the offset before the change.
    """
    return wall.replace(tzinfo=ZoneInfo(zone), fold=0).astimezone(UTC)


def within(wall: datetime, zone: str, hours: float) -> datetime:
    """The wall time a number of elapsed hours later in the zone."""
    return local(instant(wall, zone) + timedelta(hours=hours), zone)


def _fold(text: str) -> str:
    return " ".join("".join(c if c.isalnum() else " " for c in text.casefold()).split())


@cache
def _names() -> Mapping[str, tuple[str, ...]]:
    found: dict[str, list[str]] = defaultdict(list)
    for zone in sorted(zoneinfo.available_timezones()):
        area = zone.split("/", 1)[0]
        if "/" in zone and area in AREAS:
            found[_fold(zone.rsplit("/", 1)[1])].append(zone)
            found[_fold(zone)].append(zone)
    found["utc"] = found["gmt"] = ["UTC"]
    for country, zones in _countries().items():
        for zone in zones:
            if zone not in found[country]:
                found[country].append(zone)
    return {name: tuple(zones) for name, zones in found.items()}


def _countries() -> Mapping[str, list[str]]:
    tables = resources.files("tzdata") / "zoneinfo"
    names = {}
    for row in (tables / "iso3166.tab").read_text("utf-8").splitlines():
        if row and not row.startswith("#"):
            code, name = row.split("\t")
            names[code] = _fold(name)
    zones: dict[str, list[str]] = defaultdict(list)
    for row in (tables / "zone.tab").read_text("utf-8").splitlines():
        if row and not row.startswith("#"):
            code, _, zone = row.split("\t")[:3]
            zones[names[code]].append(zone)
    zones["uk"] = zones["england"] = zones["scotland"] = zones["wales"] = ["Europe/London"]
    zones["usa"] = zones["united states"]
    return zones
