"""Everything that belongs to one person: take it along as CSV or JSON, bring it back, or erase it.

JSON holds every row of every table, so that bringing it into an empty database gives an equal one.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import ColumnElement, Table, Text, cast, delete, or_, select, text, update

from engine.values.ids import AthleteId
from storage.bring_back import bring_back
from storage.envelopes import BESIDE, Delivery
from storage.portable import write_export
from storage.queue_mapping import DELIVERIES, delivery
from storage.sheets import sheets
from storage.tables import CHANGES, COACH_LINKS, INBOUND, METADATA, OUTBOX, PEOPLE, PLANS
from storage.work import NOBODY, Work


class Belongings:
    def __init__(self, work: Work) -> None:
        self._work = work

    def as_json(self, athlete: AthleteId) -> str:
        """All rows of a person, what she undid included.

        Errors: NoSuchPerson.
        """
        self._work.contact(athlete)
        return write_export({table: self._rows(table, athlete) for table in tables_of_a_person()})

    def as_csv(self, athlete: AthleteId) -> Mapping[str, str]:
        """File name to CSV text, for a spreadsheet: her standing sets, notes, body weights, plans."""
        return sheets(self._work, athlete)

    def bring_back(self, text: str) -> AthleteId:
        """The person whose rows `as_json` wrote, in this database again.

        Her ids are the same where none of them was ever given out here.

        What ties her to other people (coaches, clients) is left out: a number in a file proves no consent.
        Errors: NotOurs for text that is no such export; PersonExists when the chat is known here.
        """
        return bring_back(self._work, text)

    def erase(self, athlete: AthleteId) -> int:
        """How many rows of the person were deleted: every one, messages in and out included. There is no undo.

        What she did in the records of others (as their coach) stays theirs, without her name.
        Errors: NoSuchPerson.
        """
        self._work.contact(athlete)
        if not self._work.is_postgres:
            # Overwrite what is deleted with zeros; without it the bytes stay in the file until they are reused.
            self._work.connection.execute(text("PRAGMA secure_delete = ON"))
        self._work.erased = True
        run = self._work.connection.execute
        deleted = sum(
            run(delete(table).where(_belongs(table, athlete))).rowcount for table in reversed(tables_of_a_person())
        )
        for message in self.told_beside(athlete):
            deleted += run(delete(OUTBOX).where(OUTBOX.c.id == message.id)).rowcount
        run(update(CHANGES).where(CHANGES.c.by == athlete).values(by=NOBODY))
        run(update(PLANS).where(PLANS.c.coach == athlete).values(coach=None))
        self._work.forget(athlete)
        return deleted

    def told_beside(self, athlete: AthleteId) -> tuple[Delivery, ...]:
        """The messages to others that tell her records among those of several people, sent or not."""
        several = DELIVERIES.where(cast(OUTBOX.c.extras, Text).contains(f'"{BESIDE}"')).order_by(OUTBOX.c.id)
        found = map(delivery, self._work.connection.execute(several))
        return tuple(one for one in found if athlete in one.outgoing.extras[BESIDE])

    def _rows(self, table: Table, athlete: AthleteId) -> list[Mapping[str, Any]]:
        own = PEOPLE.c.id if table is PEOPLE else table.c.athlete_id
        query = select(table).where(own == athlete).order_by(*table.primary_key.columns)
        return [dict(row) for row in self._work.connection.execute(query).mappings()]


def tables_of_a_person() -> tuple[Table, ...]:
    """The tables with rows that belong to one person; a table that another refers to comes before it."""
    return tuple(table for table in METADATA.sorted_tables if table is PEOPLE or "athlete_id" in table.c)


def _belongs(table: Table, athlete: AthleteId) -> ColumnElement[bool]:
    if table is PEOPLE:
        return PEOPLE.c.id == athlete
    if table is COACH_LINKS:
        return or_(COACH_LINKS.c.athlete_id == athlete, COACH_LINKS.c.coach_id == athlete)
    if table is OUTBOX:
        return or_(OUTBOX.c.athlete_id == athlete, OUTBOX.c.about == athlete)
    if table is INBOUND:
        # By chat: what came before she was somebody is hers too.
        chats = select(PEOPLE.c.source, PEOPLE.c.chat).where(PEOPLE.c.id == athlete).subquery()
        return or_(
            INBOUND.c.athlete_id == athlete,
            select(chats).where(chats.c.source == INBOUND.c.source, chats.c.chat == INBOUND.c.chat).exists(),
        )
    return table.c.athlete_id == athlete
