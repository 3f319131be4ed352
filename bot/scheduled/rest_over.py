"""One sounding message when a rest is over, with the next set."""

from __future__ import annotations

from datetime import timedelta

from bot.day_sessions import session_at
from bot.due_kind import Kind, Moment
from bot.replies.rest import over
from storage.envelopes import InboundId
from storage.records import Due

REST = "rest"


def _run(moment: Moment, due: Due) -> bool:
    if _is_over_already(moment, due):
        return False
    session = session_at(moment.store, moment.memory, moment.person.id, moment.today)
    moment.send(over(session.following(session.latest_exercise), session.latest_exercise), silent=False)
    return True


def _is_over_already(moment: Moment, due: Due) -> bool:
    """Whether a set was told since the rest began: the next set ends it."""
    begun = moment.store.inbox.get(InboundId(int(due.kind.partition(" ")[2] or 0)))
    latest = moment.store.sets.latest(moment.person.id)
    return begun is not None and latest is not None and (latest.at, latest.message) > (begun.at, begun.message)


KIND = Kind(REST, _run, None, timedelta(minutes=10))
