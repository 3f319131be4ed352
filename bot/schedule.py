"""What goes out on its own, and when: due rows are planned by local time, claimed by any worker, done once.

Each kind of message is one file in `bot/scheduled/`. When a kind has been done for one local day, its next day is
planned in the same transaction, so the chain never breaks. Instants are worked out from local wall time by zoneinfo.
"""

from __future__ import annotations

import logging
from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime, timedelta

from bot import zones
from bot.due_kind import Kind, Moment
from bot.memory import Memory
from bot.preferences import REMINDED_AT, Preferences, preferences
from bot.scheduled import digest, draft, forget, once, reminder, rest_over, summary
from bot.turn import Turn
from storage.database import Database
from storage.records import Change, ChangeKind, Due, Person
from storage.store import Store

log = logging.getLogger(__name__)

LEASE = timedelta(minutes=2)
AT_ONCE = 50

KINDS: Mapping[str, Kind] = {
    kind.name: kind
    for kind in (
        reminder.KIND,
        once.KIND,
        once.SNOOZE_KIND,
        rest_over.KIND,
        summary.KIND,
        digest.KIND,
        forget.KIND,
        draft.KIND,
    )
}


def plan_person(store: Store, memory: Memory, person: Person, own: Preferences, now: datetime) -> None:
    """Nothing; the next of every recurring kind is planned for a person, replacing what was planned."""
    moment = Moment(store, memory, person, own, now)
    for kind in KINDS.values():
        _plan_next(moment, kind)


def replan(turn: Turn) -> None:
    """Nothing; her settings or plan were changed, so what comes next is planned anew."""
    turn.forget_lookups()
    plan_person(turn.store, turn.memory, turn.me, turn.preferences, turn.at)


def follow(turn: Turn, change: Change) -> None:
    """Nothing; a change that was undone or redone takes what it planned with it, or brings it back."""
    if change.kind in (ChangeKind.SETTING, ChangeKind.PLAN) and change.athlete == turn.athlete:
        replan(turn)
        _follow_a_reminder(turn, change)


def _follow_a_reminder(turn: Turn, change: Change) -> None:
    """A single reminder goes with the change that asked for it, and comes back while its hour is still ahead."""
    name = f"{once.ONCE} {change.inbound}"
    if change.undone_at is not None:
        turn.store.due.cancel(turn.athlete, name)
        return
    told = turn.store.settings.get(turn.athlete, REMINDED_AT, {})
    at = datetime.fromisoformat(told["at"]) if told.get("event") == change.inbound else turn.at
    if at > turn.at:
        turn.store.due.plan(turn.athlete, name, turn.today, at)


def _plan_next(moment: Moment, kind: Kind) -> None:
    if kind.next_at is None:
        return
    moment.store.due.cancel(moment.person.id, kind.name)
    while (coming := kind.next_at(moment)) is not None:
        at = zones.instant(coming.at, moment.preferences.zone)
        if moment.store.due.plan(moment.person.id, kind.name, coming.day, at):
            return
        # Done for that day before: the chain goes on with the day behind it.
        moment = replace(moment, at=at)


def plan_one(turn: Turn, name: str, at: datetime) -> None:
    """Nothing; a single message of this kind is planned, in place of one still waiting."""
    cancel_all(turn, name)
    plan_beside(turn, name, at)


def plan_beside(turn: Turn, name: str, at: datetime) -> None:
    """Nothing; a single message of this kind is planned, beside those still waiting.

    A day may hold several of a kind: the row's kind carries the event it came from.
    """
    turn.store.due.plan(turn.athlete, f"{name} {turn.event}", turn.today, at)


def cancel_all(turn: Turn, name: str) -> int:
    """How many single messages of this kind waited and are gone."""
    waiting = {due.kind for due in turn.store.due.planned(turn.athlete) if due.kind.split(" ", 1)[0] == name}
    return sum(turn.store.due.cancel(turn.athlete, kind) for kind in waiting)


def run_due(database: Database, memory: Memory, default_zone: str, now: datetime) -> int:
    """How many rows were due and are done; a row whose work fails is tried again later, alone."""
    count = 0
    while True:
        with database.transaction() as store:
            claimed = store.due.claim(now, limit=AT_ONCE, lease=LEASE)
        for due in claimed:
            count += _run(database, memory, default_zone, due, now)
        if len(claimed) < AT_ONCE:
            return count


def _run(database: Database, memory: Memory, default_zone: str, due: Due, now: datetime) -> int:
    try:
        with database.transaction() as store:
            return _do(store, memory, default_zone, due, now)
    except Exception:
        # One person's fault must not keep everybody else's messages back; the log has the traceback. It is tried again
        # when its lease ends, and still due when it was due: past its use it is skipped.
        log.exception("could not do what was due: %s", due.kind)
        return 0


def _do(store: Store, memory: Memory, default_zone: str, due: Due, now: datetime) -> int:
    person = store.people.get(due.athlete)
    store.people.lock(person.id)
    if not store.due.take(due):
        return 0
    kind = KINDS[due.kind.split(" ", 1)[0]]
    own = preferences(store.settings.all(person.id), default_zone)
    moment = Moment(store, memory, person, own, due.due_at)
    late = now - due.due_at > kind.useful_for
    if late or not kind.run(moment, due):
        store.due.skip(due, now)
        done = 0
    else:
        store.due.done(due, now)
        done = 1
    _plan_next(Moment(store, memory, person, own, max(now, due.due_at)), kind)
    return done
