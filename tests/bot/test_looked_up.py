"""What one message looked up serves the next only while nothing in her records changed, whoever changed it."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from bot.handle import Product
from bot.messages import Inbound, InboundKind
from tests.databases import in_memory

MONDAY = datetime(2026, 3, 2, 18, tzinfo=UTC)


def say(product, number, text):
    at = MONDAY + timedelta(minutes=number)
    product.receive(Inbound("test", 1, str(number), InboundKind.MESSAGE, number, text, at, "mia"))


@pytest.mark.parametrize(
    ("elsewhere", "unit"),
    [
        pytest.param(["units lb"], "lb", id="a setting"),
        pytest.param(["units lb", "undo"], "kg", id="an undo"),
        pytest.param(["units lb", "undo", "redo"], "lb", id="a redo"),
    ],
)
def test_a_change_made_by_another_process_is_seen_by_the_next_message(elsewhere, unit):
    database = in_memory()
    here, there = Product(database), Product(database)
    say(here, 1, "squat 100x5")
    say(here, 2, "5")
    for number, text in enumerate(elsewhere, start=3):
        say(there, number, text)

    say(here, 9, "bench 60x8")

    with database.transaction() as store:
        me = store.people.find("test", 1)
        assert me is not None
        latest = store.sets.latest(me.id)
        assert latest is not None
        assert latest.done.load is not None
        assert latest.done.load.unit.value == unit
