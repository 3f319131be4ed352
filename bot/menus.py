"""Shows each coach the commands of a coach; everybody else sees the athlete's, which are the platform's default.

Roles change rarely and the list is only shown, never a right, so a look once an hour is enough.
"""

from __future__ import annotations

from typing import Protocol

from bot.telegram_commands import commands_for
from bot.writer import Writer
from engine.values.ids import AthleteId
from storage.records import Person, Role
from storage.store import Store

PAGE = 1000


class Board(Protocol):
    """Where commands are shown."""

    async def show_commands(self, chat: int, commands: tuple[tuple[str, str], ...]) -> bool: ...


class Menus:
    def __init__(self, source: str, board: Board, writer: Writer) -> None:
        self._source = source
        self._board = board
        self._writer = writer
        self._shown: dict[int, tuple[tuple[str, str], ...]] = {}

    async def refresh(self) -> None:
        """Show those whose commands changed their new ones."""
        wanted = await self._writer.transaction(self._wanted)
        for chat in self._shown.keys() - wanted.keys():
            wanted[chat] = ()  # no coach any more: back to the default
        for chat, commands in wanted.items():
            if self._shown.get(chat, ()) != commands and await self._board.show_commands(chat, commands):
                self._shown[chat] = commands

    def _wanted(self, store: Store) -> dict[int, tuple[tuple[str, str], ...]]:
        found: dict[int, tuple[tuple[str, str], ...]] = {}
        page: tuple[Person, ...] = store.people.everyone(limit=PAGE)
        while page:
            for person in page:
                if person.source == self._source and person.reachable and Role.COACH in person.roles:
                    found[person.chat] = commands_for(athlete=Role.ATHLETE in person.roles, coach=True)
            page = store.people.everyone(after=AthleteId(page[-1].id), limit=PAGE) if len(page) == PAGE else ()
        return found
