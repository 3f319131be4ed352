"""The one place that asks the time, and where a process finds its own zone."""

from __future__ import annotations

import os
import zoneinfo
from datetime import UTC, datetime
from pathlib import Path

LOCALTIME = Path("/etc/localtime")


def now() -> datetime:
    """This instant, aware."""
    return datetime.now(UTC)


def machine_zone() -> str:
    """The IANA zone of this machine, UTC where it cannot be told."""
    for name in (os.environ.get("CHALKWIRE_ZONE", ""), os.environ.get("TZ", ""), _linked()):
        if name in zoneinfo.available_timezones():
            return name
    return "UTC"


def _linked() -> str:
    try:
        return str(LOCALTIME.resolve()).partition("zoneinfo/")[2]
    except OSError:
        return ""
