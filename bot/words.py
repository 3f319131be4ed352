"""Small words behind an intent: days to come, times of day, durations, who.

Pure and forgiving: what cannot be read is None, and the intent says what it needs.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date, time, timedelta

from engine.values.load import Unit
from engine.values.plan import Weekday

DAY_NAMES = {
    "monday": Weekday.MON,
    "tuesday": Weekday.TUE,
    "wednesday": Weekday.WED,
    "thursday": Weekday.THU,
    "friday": Weekday.FRI,
    "saturday": Weekday.SAT,
    "sunday": Weekday.SUN,
}
UNIT_WORDS = {
    "kg": Unit.KG,
    "kgs": Unit.KG,
    "kilo": Unit.KG,
    "kilos": Unit.KG,
    "kilograms": Unit.KG,
    "lb": Unit.LB,
    "lbs": Unit.LB,
    "pound": Unit.LB,
    "pounds": Unit.LB,
}
CLOCK = re.compile(r"\b(\d{1,2})(?:[:.h](\d{2}))?\s*(am|pm)?\b", re.IGNORECASE)
ISO = re.compile(r"\b(\d{4})-(\d{2})-(\d{2})\b")
LONGEST_REST_MIN = 15
"""More minutes and seconds than these are an hour of the day. Common practice, no source."""
MINUTES_AND_SECONDS = re.compile(r"\b(\d{1,2}):([0-5]\d)\b")
SPAN = re.compile(r"(\d+(?:[.,]\d+)?)\s*(s|sec|secs|seconds?|m|min|mins|minutes?|h|hours?)?\b", re.IGNORECASE)
WORD = re.compile(r"[^\W\d_]+")


def weekdays_named(text: str) -> tuple[Weekday, ...]:
    """The weekdays named, in the order of the week: mon wed fri; "daily" and "weekdays" count."""
    words = [word.casefold() for word in WORD.findall(text)]
    if "daily" in words or "everyday" in words:
        return tuple(Weekday)
    named = {Weekday(day) for day in range(5)} if "weekdays" in words else set()
    for word in words:
        day = weekday(word)
        if day is not None:
            named.add(day)
    return tuple(sorted(named, key=lambda one: one.value))


def weekday(word: str) -> Weekday | None:
    """The weekday of a word of three letters or more: mon, tues, wednesday."""
    word = word.casefold().rstrip(".")
    if len(word) < 3:
        return None
    for name, day in DAY_NAMES.items():
        if name.startswith(word) or f"{name}s" == word:
            return day
    return None


def day_named(text: str, today: date) -> date | None:
    """The coming day named: today, tomorrow, a weekday (today's name means today), or an ISO date."""
    words = [word.casefold() for word in WORD.findall(text)]
    if found := ISO.search(text):
        try:
            return date(int(found[1]), int(found[2]), int(found[3]))
        except ValueError:
            return None
    if "tomorrow" in words:
        return today + timedelta(days=1)
    if "yesterday" in words:
        return today - timedelta(days=1)
    if "today" in words:
        return today
    named = weekdays_named(text)
    if len(named) == 1:
        return today + timedelta(days=(named[0].value - today.weekday()) % 7)
    return None


def time_named(text: str) -> time | None:
    """The time of day named: 18:00, 6pm, 7.30; a bare number counts as a full hour."""
    for found in CLOCK.finditer(text):
        hour, minute, half = int(found[1]), int(found[2] or 0), (found[3] or "").casefold()
        if half and not 1 <= hour <= 12:
            continue
        if half:
            hour = hour % 12 + (12 if half == "pm" else 0)
        if hour < 24 and minute < 60:
            return time(hour, minute)
    return None


def seconds_named(text: str) -> int | None:
    """A rest in seconds: 90s, 2 min, 1:30, 2; bare numbers to 4 are minutes, from 10 on seconds (common practice)."""
    timed = MINUTES_AND_SECONDS.search(text)
    if timed is not None and int(timed[1]) <= LONGEST_REST_MIN:
        return int(timed[1]) * 60 + int(timed[2])
    found = SPAN.search(text)
    if found is None:
        return None
    amount = float(found[1].replace(",", "."))
    unit = (found[2] or "").casefold()[:1]
    if not unit:
        if 4 < amount < 10:
            return None
        unit = "m" if amount <= 4 else "s"
    seconds = amount * {"s": 1, "m": 60, "h": 3600}[unit]
    return round(seconds) if 0 < seconds <= 3600 else None


def person_named(text: str, names: Sequence[str]) -> int | None:
    """Which of the names the text begins with or is, by unique prefix: its place in the list."""
    first = text.strip().split(" ", 1)[0].rstrip(":,").casefold()
    if not first:
        return None
    exact = [place for place, name in enumerate(names) if name.casefold() == first]
    near = [place for place, name in enumerate(names) if name.casefold().startswith(first)]
    found = exact or near
    return found[0] if len(found) == 1 else None


def behind_name(text: str, name: str) -> str | None:
    """The words behind the name that begins the text; None where none does, or a longer word: "ann's mum"."""
    said = text.strip()
    behind = said[len(name) :]
    if not said.casefold().startswith(name.casefold()) or GOES_ON.match(behind):
        return None
    return behind.lstrip(" :,")


GOES_ON = re.compile(r"\w|['’-][^\W\d_]")
"""What makes a name part of a longer word: "anna", "ann's", "ann-lee"."""
