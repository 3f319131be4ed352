"""Short ways to fill a database in tests, and to say all that stands in it."""

from __future__ import annotations

from datetime import UTC, date, datetime
from decimal import Decimal
from typing import Any

import pytest

from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Load, Unit
from engine.values.sets import SetDone, SetRecord
from storage.envelopes import StoredInbound, StoredOutgoing
from storage.records import ChangeKind
from storage.store import Store

SEVERAL_WRITERS = pytest.mark.parametrize("url", ["postgres"], indirect=True)
"""For tests of what SQLite, which has one writer at a time, cannot do."""
AT = datetime(2026, 3, 2, 18, 5, tzinfo=UTC)
MONDAY = date(2026, 3, 2)
ROW, BENCH = ExerciseName("barbell row"), ExerciseName("bench press")


def kg(amount: str) -> Load:
    return Load(Decimal(amount), Unit.KG)


def row(reps: int = 12, load: str = "55") -> SetDone:
    return SetDone(ROW, reps, kg(load))


def bench(reps: int = 5, load: str = "80") -> SetDone:
    return SetDone(BENCH, reps, kg(load))


def log(
    store: Store, athlete: AthleteId, *sets: SetDone, on: date = MONDAY, message: int = 0, at: datetime = AT
) -> tuple[SetRecord, ...]:
    """One message's sets, in a change of their own."""
    change = store.changes.begin(athlete, ChangeKind.SETS, f"{len(sets)} sets", at)
    return store.sets.add(change, sets, on=on, at=at, message=message)


def said(text: str, key: str, *, chat: int = 1, message: int = 1, place: int = 0, **more: Any) -> StoredInbound:
    return StoredInbound("telegram", chat, key, "message", message, text, AT, place=place, **more)


def answer(text: str) -> StoredOutgoing:
    return StoredOutgoing("send", text)


def all_that_stands(store: Store, athlete: AthleteId) -> dict[str, Any]:
    """Everything an athlete sees of her records, ids and instants of undone steps left out."""
    return {
        "sets": store.sets.between(athlete, date.min, date.max),
        "last": store.sets.last_loads(athlete),
        "best": store.sets.best_loads(athlete),
        "notes": store.notes.between(athlete, date.min, date.max),
        "body weights": store.body_weights.between(athlete, date.min, date.max),
        "plans": store.plans.all(athlete),
        "choices": store.choices.between(athlete, date.min, date.max),
        "settings": store.settings.all(athlete),
        "shorthands": store.taught.shorthands(athlete),
        "exercises": store.taught.own_exercises(athlete),
        "settled": store.taught.settled(athlete),
    }
