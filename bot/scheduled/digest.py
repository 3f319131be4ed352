"""A coach's weekly digest: every client, those who need a look first. Sent on Sunday, after the clients' summaries."""

from __future__ import annotations

from datetime import date, time, timedelta

from bot.coachs_clients import told_apart
from bot.due_kind import Coming, Kind, Moment, next_weekly
from bot.replies.digest import digest_card
from bot.weeks import coach_week
from storage.records import Due, Permission

DIGEST = "digest"
SUNDAY, EVENING = 6, time(20, 0)


def _next_at(moment: Moment) -> Coming | None:
    if not moment.preferences.digest or not moment.store.coaching.clients(moment.person.id):
        return None
    return next_weekly(moment.now, SUNDAY, EVENING, moment.preferences.quiet)


def _run(moment: Moment, due: Due) -> bool:
    if moment.is_paused or not moment.preferences.digest:
        return False
    return send(moment, due.local_date)


def send(moment: Moment, on: date) -> bool:
    """Whether there were clients to tell of; the digest of the week of a day is on its way."""
    links = moment.store.coaching.clients(moment.person.id)
    people = told_apart([moment.store.people.get(link.athlete) for link in links])
    seen = {link.athlete for link in links if Permission.SEE_LOG in link.permissions}
    clients = [person for person in people if person.id in seen]
    if not clients:
        return False
    card = digest_card(coach_week(moment.store, moment.memory, clients, on))
    moment.send(card, silent=True, about=[person.id for person in clients])
    return True


KIND = Kind(DIGEST, _run, _next_at, timedelta(hours=24))
