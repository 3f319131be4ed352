"""A coach's weekly digest: every client, those who need a look first. Sent on Sunday, after the clients' summaries."""

from __future__ import annotations

from datetime import datetime, time, timedelta

from bot.due_kind import Kind, Moment, next_weekday, out_of_quiet
from bot.replies.digest import digest_card
from bot.weeks import coach_week
from storage.records import Due, Permission

DIGEST = "digest"
SUNDAY, EVENING = 6, time(20, 0)


def _next_at(moment: Moment) -> datetime | None:
    if not moment.preferences.digest or not moment.store.coaching.clients(moment.person.id):
        return None
    return out_of_quiet(next_weekday(moment.now, SUNDAY, EVENING), moment.preferences.quiet)


def _run(moment: Moment, due: Due) -> bool:
    if not moment.preferences.digest:
        return False
    links = moment.store.coaching.clients(moment.person.id)
    clients = [moment.store.people.get(link.athlete) for link in links if Permission.SEE_LOG in link.permissions]
    if not clients:
        return False
    moment.send(digest_card(coach_week(moment.store, moment.memory, clients, moment.today)), silent=True)
    return True


KIND = Kind(DIGEST, _run, _next_at, timedelta(hours=24))
