"""Words that reasons and next steps are made of. Plain English, no platform's markup."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import Decimal
from typing import assert_never

from engine.progression.work import Work
from engine.values.load import Basis, Load, plain
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


def stated(load: Load) -> str:
    """A load in a sentence: ``55 kg``, ``body weight``, ``+2.5 kg``, ``-20 kg assisted``."""
    if load.basis is not Basis.BODY:
        return str(load)
    if load.amount == 0:
        return "body weight"
    return f"+{load}" if load.amount > 0 else f"{load} assisted"


def loaded(load: Load | None) -> str:
    """A load behind reps: ``at 55 kg``, ``at 8 kg each hand``, ``with +2.5 kg``; nothing for body weight alone."""
    if load is None or (load.basis is Basis.BODY and load.amount == 0):
        return ""
    if load.basis is Basis.BODY:
        return f"with {stated(load)}"
    return f"at {load} each hand" if load.basis is Basis.PER_HAND else f"at {load}"


def percent(share: Decimal) -> str:
    """``90 %``."""
    return f"{plain(share * 100)} %"


def sets_of(sets: int, asked: Target) -> str:
    """``3×8-12``."""
    return f"{sets}×{target(asked)}"


def all_sets(sets: int) -> str:
    """``The set``, ``Both sets``, ``All 3 sets``."""
    return {1: "The set", 2: "Both sets"}.get(sets, f"All {sets} sets")


def reps(works: Sequence[Work]) -> str:
    """The reps of a session: ``12, 12, 11``."""
    return ", ".join(str(work.reps) for work in works)
