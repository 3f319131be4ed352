"""A fault in working out a session must never cost a set, nor lock anyone out of her own log."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from bot import session_frames
from bot.handle import Product
from bot.messages import Inbound, InboundKind
from tests.databases import in_memory

PLAN = "plan: short, 4 weeks\nday mon: legs\nbarbell back squat 3x5 at 90 kg"
MONDAY = datetime(2026, 3, 2, 18, tzinfo=UTC)


def test_sets_are_saved_and_undone_while_the_session_cannot_be_worked_out(monkeypatch):
    def fails(*args):
        raise IndexError("a fault in a rule")

    database = in_memory()
    product = Product(database)
    monkeypatch.setattr(session_frames, "session_for", fails)

    said = []
    for number, text in enumerate((PLAN, "squat 3x5 90", "today", "next", "undo", "squat 90x5"), start=1):
        at = MONDAY + timedelta(minutes=number)
        product.receive(Inbound("test", 1, str(number), InboundKind.MESSAGE, number, text, at, "mia"))
        with database.transaction() as store:
            me = store.people.find("test", 1)
            assert me is not None
            said.append(store.outbox.latest(me.id)[0].outgoing.text)

    with database.transaction() as store:
        assert store.inbox.failures() == ()
        assert me is not None
        assert store.sets.count(me.id) == 1
    assert "can't work out" in said[2]
    assert "can't work out" in said[3]
