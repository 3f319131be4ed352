"""Everyone the bot talks to: who is behind a chat, by which name, in which roles."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from engine.values.ids import AthleteId
from storage.records import Person, Role
from storage.work import Work


class People:
    def __init__(self, work: Work) -> None:
        self._work = work

    def find(self, source: str, chat: int) -> Person | None:
        """The person behind a chat, or None before her first contact."""
        raise NotImplementedError

    def get(self, athlete: AthleteId) -> Person:
        """The person with this id.

        Errors: NoSuchPerson.
        """
        raise NotImplementedError

    def create(self, source: str, chat: int, name: str, at: datetime) -> Person:
        """A new person, an athlete at first; the one already there when the chat is known.

        Inbox rows of the chat become hers.
        """
        raise NotImplementedError

    def rename(self, athlete: AthleteId, name: str) -> None:
        """Nothing; the person is called `name` from now on."""
        raise NotImplementedError

    def set_roles(self, athlete: AthleteId, roles: Sequence[Role]) -> Person:
        """The person with exactly these roles."""
        raise NotImplementedError

    def everyone(self, after: AthleteId = AthleteId(0), limit: int = 1000) -> tuple[Person, ...]:
        """Up to `limit` people with an id above `after`, by id: walk all of them page by page."""
        raise NotImplementedError

    def gone(self, athlete: AthleteId) -> None:
        """Nothing; the person blocked the bot: unsent messages are dropped, due rows cancelled, records kept."""
        raise NotImplementedError

    def back(self, athlete: AthleteId) -> None:
        """Nothing; the person can be reached again."""
        raise NotImplementedError

    def lock(self, *athletes: AthleteId) -> None:
        """Nothing; until the transaction ends no other worker changes these people's records.

        Take all the locks a transaction needs in one call: they are taken in one order, so none waits for ever.
        On SQLite the transaction already excludes every other writer.
        """
        raise NotImplementedError
