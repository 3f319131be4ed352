"""Everyone the bot talks to: who is behind a chat, by which name, in which roles."""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime
from typing import Any

from sqlalchemy import Row, bindparam, delete, insert, select, update

from engine.values.ids import AthleteId
from storage.due import DueState
from storage.envelopes import OutboxState
from storage.errors import NoSuchPerson
from storage.records import Person, Role
from storage.tables.due import DUE
from storage.tables.people import PEOPLE
from storage.tables.queues import INBOUND, OUTBOX
from storage.work import Work

BY_CHAT = select(PEOPLE).where(PEOPLE.c.source == bindparam("source"), PEOPLE.c.chat == bindparam("chat"))
BY_ID = select(PEOPLE).where(PEOPLE.c.id == bindparam("athlete"))


class People:
    def __init__(self, work: Work) -> None:
        self._work = work

    def find(self, source: str, chat: int) -> Person | None:
        """The person behind a chat, or None before her first contact."""
        row = self._work.connection.execute(BY_CHAT, {"source": source, "chat": chat}).one_or_none()
        return None if row is None else _person(row)

    def get(self, athlete: AthleteId) -> Person:
        """The person with this id.

        Errors: NoSuchPerson.
        """
        row = self._work.connection.execute(BY_ID, {"athlete": athlete}).one_or_none()
        if row is None:
            raise NoSuchPerson(athlete)
        return _person(row)

    def version(self, athlete: AthleteId) -> int:
        """A number that has grown whenever a fact in her records was added, undone or redone.

        Errors: NoSuchPerson.
        """
        return self._work.last_id(athlete)

    def create(self, source: str, chat: int, name: str, at: datetime) -> Person:
        """A new person, an athlete at first; the one already there when the chat is known.

        Inbox rows of the chat become hers.
        """
        known = self.find(source, chat)
        if known is not None:
            return known
        athlete = self._work.connection.execute(
            insert(PEOPLE)
            .values(source=source, chat=chat, name=name, roles=Role.ATHLETE.value, since=at, reachable=True, last_id=0)
            .returning(PEOPLE.c.id)
        ).scalar_one()
        self._work.connection.execute(
            update(INBOUND).where(INBOUND.c.source == source, INBOUND.c.chat == chat).values(athlete_id=athlete)
        )
        return self.get(AthleteId(athlete))

    def rename(self, athlete: AthleteId, name: str) -> None:
        """Nothing; the person is called `name` from now on."""
        self._work.connection.execute(update(PEOPLE).where(PEOPLE.c.id == athlete).values(name=name))

    def set_roles(self, athlete: AthleteId, roles: Collection[Role]) -> Person:
        """The person with exactly these roles."""
        names = " ".join(sorted(role.value for role in set(roles)))
        self._work.connection.execute(update(PEOPLE).where(PEOPLE.c.id == athlete).values(roles=names))
        return self.get(athlete)

    def everyone(self, after: AthleteId | None = None, limit: int = 1000) -> tuple[Person, ...]:
        """Up to `limit` people after that id, by id: walk all of them page by page."""
        query = select(PEOPLE).where(PEOPLE.c.id > (after or 0)).order_by(PEOPLE.c.id).limit(limit)
        return tuple(_person(row) for row in self._work.connection.execute(query))

    def gone(self, athlete: AthleteId) -> None:
        """Nothing; the person blocked the bot: unsent messages are dropped, due rows cancelled, records kept."""
        self._reachable(athlete, False)
        contact = self._work.contact(athlete)
        self._work.connection.execute(
            update(OUTBOX)
            .where(
                OUTBOX.c.source == contact.source,
                OUTBOX.c.chat == contact.chat,
                OUTBOX.c.state.in_((OutboxState.NEW.value, OutboxState.SENDING.value)),
            )
            .values(state=OutboxState.DROPPED.value, claimed_until=None)
        )
        self._work.connection.execute(
            delete(DUE).where(DUE.c.athlete_id == athlete, DUE.c.state == DueState.WAITING.value)
        )

    def back(self, athlete: AthleteId) -> None:
        """Nothing; the person can be reached again."""
        self._reachable(athlete, True)

    def lock(self, *athletes: AthleteId) -> None:
        """Nothing; until the transaction ends no other worker changes these people's records.

        Take all the locks a transaction needs in one call: they are taken in one order, so none waits for ever.
        On SQLite the transaction already excludes every other writer.
        """
        self._work.lock(*athletes)

    def _reachable(self, athlete: AthleteId, reachable: bool) -> None:
        self._work.connection.execute(update(PEOPLE).where(PEOPLE.c.id == athlete).values(reachable=reachable))
        self._work.forget_contact(athlete)


def _person(row: Row[Any]) -> Person:
    return Person(
        id=AthleteId(row.id),
        source=row.source,
        chat=row.chat,
        name=row.name,
        roles=frozenset(Role(name) for name in row.roles.split()),
        since=row.since,
        reachable=row.reachable,
    )
