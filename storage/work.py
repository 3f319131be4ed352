"""One open transaction: the connection, the dialect, locks, and ids that count within each person's records."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, bindparam, select, text, update
from sqlalchemy.dialects import postgresql, sqlite

from engine.values.ids import AthleteId
from engine.values.sets import SetRecord
from storage.errors import NoSuchPerson
from storage.recall import Recall
from storage.tables.people import PEOPLE
from storage.tables.queues import SOURCES

LAST_ID = select(PEOPLE.c.last_id).where(PEOPLE.c.id == bindparam("athlete"))
CONTACT = select(PEOPLE.c.source, PEOPLE.c.chat, PEOPLE.c.reachable).where(PEOPLE.c.id == bindparam("athlete"))
KEEP_LAST_ID = update(PEOPLE).where(PEOPLE.c.id == bindparam("athlete")).values(last_id=bindparam("last"))
LOCK_PERSON = text("SELECT pg_advisory_xact_lock(:athlete)")


NOBODY = 0
"""Stands for another person who is no longer there, or is not in this database."""


@dataclass(frozen=True, slots=True)
class Contact:
    source: str
    chat: int
    reachable: bool


class Work:
    def __init__(self, connection: Connection, recall: Recall | None = None) -> None:
        self.connection = connection
        self.recall = recall or Recall()
        self.own_sets: dict[int, dict[int, SetRecord]] = {}
        """Sets recorded in this transaction, by athlete and id: known to it, not yet to others."""
        self._shared_recall = self.recall
        self._outdated: set[int] = set()
        self.is_postgres = connection.dialect.name == "postgresql"
        self.erased = False
        """Whether something was erased, so that its traces must leave the disk too."""
        self._last_ids: dict[int, int] = {}
        self._contacts: dict[int, Contact] = {}

    def take_ids(self, athlete: int, count: int = 1) -> int:
        """The first of `count` new ids in a person's records; they are never given out again.

        Errors: NoSuchPerson.
        """
        first = self.last_id(athlete) + 1
        self._last_ids[athlete] += count
        return first

    def last_id(self, athlete: int) -> int:
        """The last id given out in a person's records, this transaction's own included.

        Errors: NoSuchPerson.
        """
        if athlete not in self._last_ids:
            # On PostgreSQL the row lock also keeps two workers from drawing the same ids.
            query = LAST_ID.with_for_update(key_share=True) if self.is_postgres else LAST_ID
            last = self.connection.execute(query, {"athlete": athlete}).scalar_one_or_none()
            if last is None:
                raise NoSuchPerson(athlete)
            self._last_ids[athlete] = last
        return self._last_ids[athlete]

    def finish(self) -> None:
        """Nothing; what was held back until the end of the transaction is written."""
        for athlete, last in self._last_ids.items():
            self.connection.execute(KEEP_LAST_ID, {"athlete": athlete, "last": last})

    def committed(self) -> None:
        """Nothing; what was recorded is there for all to recall."""
        for athlete in self._outdated:
            self._shared_recall.forget(athlete)
        for athlete, records in self.own_sets.items():
            if athlete not in self._outdated:
                self._shared_recall.keep(athlete, records.values())

    def contact(self, athlete: int) -> Contact:
        """Where a person is reached.

        Errors: NoSuchPerson.
        """
        if athlete not in self._contacts:
            row = self.connection.execute(CONTACT, {"athlete": athlete}).one_or_none()
            if row is None:
                raise NoSuchPerson(athlete)
            self._contacts[athlete] = Contact(row.source, row.chat, row.reachable)
        return self._contacts[athlete]

    def forget(self, athlete: int) -> None:
        """Nothing; the person was erased or brought back: what was known of her is read again when asked for."""
        self.recall = Recall()  # what is read now may yet be rolled back
        self._outdated.add(athlete)
        self.own_sets.pop(athlete, None)
        self._contacts.pop(athlete, None)
        self._last_ids.pop(athlete, None)

    def forget_contact(self, athlete: int) -> None:
        """Nothing; where the person is reached is read again when asked for."""
        self._contacts.pop(athlete, None)

    def lock(self, *athletes: AthleteId) -> None:
        """Nothing; no other worker gets past this call for any of these people before the transaction ends."""
        if self.is_postgres:
            for athlete in sorted(set(athletes)):
                self.connection.execute(LOCK_PERSON, {"athlete": athlete})

    def set_source(self, source: str, **values: Any) -> None:
        """Nothing; these values of a source of messages are kept, its others left."""
        insert = postgresql.insert if self.is_postgres else sqlite.insert
        self.connection.execute(
            insert(SOURCES)
            .values(source=source, **values)
            .on_conflict_do_update(index_elements=["source"], set_=values)
        )
