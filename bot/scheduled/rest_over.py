"""One sounding message when a rest is over, with the next set."""

from __future__ import annotations

from datetime import timedelta

from bot.day_sessions import session_at
from bot.due_kind import Kind, Moment
from bot.replies.rest import over
from storage.records import Due

REST = "rest"


def _run(moment: Moment, due: Due) -> bool:
    session = session_at(moment.store, moment.memory, moment.person.id, moment.today)
    moment.send(over(session.following(session.latest_exercise), session.latest_exercise), silent=False)
    return True


KIND = Kind(REST, _run, None, timedelta(minutes=10))
