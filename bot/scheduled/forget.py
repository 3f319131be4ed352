"""After an erasure: the row that carried the last answer goes too, unless the person came back meanwhile."""

from __future__ import annotations

from datetime import timedelta

from bot.due_kind import Kind, Moment
from bot.turn import FORGET
from storage.records import Due


def _run(moment: Moment, due: Due) -> bool:
    """A stranger without a single change has no records: nothing but the answer is left to erase."""
    if moment.store.changes.latest(moment.person.id):
        return False
    moment.store.belongings.erase(moment.person.id)
    return True


KIND = Kind(FORGET, _run, None, timedelta(days=3650))
