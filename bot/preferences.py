"""What a person can set, with its default: one frozen value read from the stored settings."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, time
from typing import Any

from engine.values.load import Unit
from engine.values.plan import Weekday

ZONE, UNIT, TRAINING_TIMES, SUMMARY, DIGEST = "zone", "unit", "training times", "summary", "digest"
REACTIONS, LOAD_FIRST, QUIET = "reactions", "load first", "quiet"
PAUSED_FROM, PAUSED_UNTIL = "paused from", "paused until"
WELCOMED, GYM, PAIN_OVER = "welcomed", "gym", "pain over"
REMINDED_AT = "reminded at"
"""When the reminder asked for last is to come, and the event that asked for it: undo and redo go by it."""


@dataclass(frozen=True, slots=True)
class Preferences:
    """`training_times` says when to remind on which weekday; empty: no reminders.

    A pause without its first day began when it was asked for.

    `quiet` is when nothing unprompted is sent, from the first time to the second, over midnight.
    """

    zone: str
    zone_known: bool = False
    unit: Unit = Unit.KG
    training_times: Mapping[Weekday, time] = field(default_factory=dict)
    summary: bool = True
    digest: bool = True
    reactions: bool = True
    load_first: bool | None = None
    paused_from: date | None = None
    paused_until: date | None = None
    quiet: tuple[time, time] = (time(21, 30), time(8, 0))
    welcomed: bool = False
    gym: str = ""


def preferences(stored: Mapping[str, Any], default_zone: str) -> Preferences:
    """The preferences that stored settings spell, with defaults for what was never set."""
    begins, until = stored.get(PAUSED_FROM), stored.get(PAUSED_UNTIL)
    quiet = stored.get(QUIET)
    base = Preferences(zone=default_zone)
    return Preferences(
        zone=stored.get(ZONE, default_zone),
        zone_known=ZONE in stored,
        unit=Unit(stored.get(UNIT, Unit.KG.value)),
        training_times=times_from_json(stored.get(TRAINING_TIMES, {})),
        summary=stored.get(SUMMARY, base.summary),
        digest=stored.get(DIGEST, base.digest),
        reactions=stored.get(REACTIONS, base.reactions),
        load_first=stored.get(LOAD_FIRST),
        paused_from=date.fromisoformat(begins) if begins else None,
        paused_until=date.fromisoformat(until) if until else None,
        quiet=(time.fromisoformat(quiet[0]), time.fromisoformat(quiet[1])) if quiet else base.quiet,
        welcomed=stored.get(WELCOMED, False),
        gym=stored.get(GYM, ""),
    )


def times_to_json(times: Mapping[Weekday, time]) -> dict[str, str]:
    """Training times as stored: weekday name to HH:MM."""
    return {weekday.name: at.strftime("%H:%M") for weekday, at in times.items()}


def times_from_json(stored: Mapping[str, str]) -> Mapping[Weekday, time]:
    """Training times as they were stored."""
    return {Weekday[name]: time.fromisoformat(at) for name, at in stored.items()}
