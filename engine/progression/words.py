"""Words that reasons and next steps are made of. Plain English, no platform's markup."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import assert_never

from engine.progression.work import Work
from engine.values.load import plain
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Target

WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def day(on: date) -> str:
    """A date as lifters say it: ``Mon 2 Mar``."""
    return f"{WEEKDAYS[on.weekday()]} {on.day} {MONTHS[on.month - 1]}"


def counted(count: int, noun: str) -> str:
    """``1 set``, ``3 sets``."""
    return f"{count} {noun}" if count == 1 else f"{count} {noun}s"


def target(asked: Target) -> str:
    """What one set asks for: ``12``, ``8-12``, ``max``, ``40 s``, ``30 m``."""
    match asked:
        case Reps(count):
            return str(count)
        case RepRange(low, high):
            return f"{low}-{high}"
        case MaxReps():
            return "max"
        case Seconds(count):
            return f"{plain(count)} s"
        case Metres(count):
            return f"{plain(count)} m"
        case _:
            assert_never(asked)


def sets_of(sets: int, asked: Target) -> str:
    """``3×8-12``."""
    return f"{sets}×{target(asked)}"


def all_sets(sets: int) -> str:
    """``The set``, ``Both sets``, ``All 3 sets``."""
    return {1: "The set", 2: "Both sets"}.get(sets, f"All {sets} sets")


def reps(works: Sequence[Work]) -> str:
    """The reps of a session: ``12, 12, 11``."""
    return ", ".join(str(work.reps) for work in works)
