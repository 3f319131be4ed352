"""Plays a transcript through the live bot, over HTTP: the people are the stand-in's, the clock is the story's.

The same rules as the replay: what falls due between two lines is done in its order before the later one; times are by
each person's own clock. The bot reads the story's time from a file; messages carry it as their date. Whoever taps finds
the button as the replay finds it, by label among the last messages, whether or not the answer arrived.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from typing import assert_never

from bot import zones
from bot.preferences import preferences
from bot.schedule import LEASE
from bot.story import Edits, Event, Passes, Says, Sends, Taps, read_story
from bot.telegram_updates import SOURCE
from storage.database import Database, open_database
from tests.telegram.forked import MortalBot
from tests.telegram.standin import StandIn

ZONE = "UTC"
START = datetime.fromisoformat("2000-01-01T00:00:00+00:00")


@dataclass(slots=True)
class Person:
    chat: int
    messages: list[int] = field(default_factory=list)


class LiveStory:
    """One transcript, one bot that may die on the way, one stand-in."""

    def __init__(self, story: Path, folder: Path, deaths: Iterable[int] = ()) -> None:
        self._story = story
        self._clock = folder / "clock"
        self._now = START
        self._clock.write_text(START.isoformat())
        self._people: dict[str, Person] = {}
        self._next_message = 1
        self.server = StandIn(clock=lambda: self._now)
        options = ("--product", "real", "--clock", str(self._clock), "--tick", "0.02")
        self.bot = MortalBot(self.server, folder, iter(deaths), *options)

    def play(self) -> None:
        with self.server:
            self.bot.start()
            try:
                self._until(lambda: self.bot.rows("SELECT version_num FROM alembic_version"))
                database = open_database(f"sqlite:///{self.bot.database}")
                for event in read_story(self._story.read_text("utf-8")):
                    self._event(database, event)
                database.close()
            finally:
                self.bot.end()

    def _event(self, database: Database, event: Event) -> None:
        at = max(self._instant(database, event), self._now)
        self._pass_time(database, at)
        if isinstance(event.deed, Passes):
            return
        self._do(database, event)
        self._until(self.bot.is_settled)

    def _instant(self, database: Database, event: Event) -> datetime:
        person = self._people.get(event.who)
        if person is None and len(self._people) == 1:
            (person,) = self._people.values()
        zone = ZONE
        if person is not None:
            with database.reading() as store:
                known = store.people.find(SOURCE, person.chat)
                if known is not None:
                    zone = preferences(store.settings.all(known.id), ZONE).zone
        return zones.instant(event.at, zone)

    def _pass_time(self, database: Database, until: datetime) -> None:
        while (due_at := self._next_due(database)) is not None and due_at <= until:
            self._tick(max(due_at, self._now))
            if self._next_due(database) == due_at:
                # A bot that died with the row in hand: it is free again when the lease has run out.
                self._tick(min(until, self._now + LEASE + timedelta(seconds=1)))
            if self._next_due(database) == due_at:
                break
        self._tick(until)

    def _next_due(self, database: Database) -> datetime | None:
        with database.reading() as store:
            return store.due.next_at()

    def _tick(self, at: datetime) -> None:
        """Move the clock, and wait until the bot has looked at what is due by then and said it."""
        ticked = self._clock.with_suffix(".ticked")
        ticked.unlink(missing_ok=True)
        self._now = at
        whole = self._clock.with_suffix(".new")
        whole.write_text(at.isoformat())
        whole.rename(self._clock)
        self._until(lambda: ticked.exists() and ticked.read_text() == at.isoformat() and self.bot.is_settled())

    def _do(self, database: Database, event: Event) -> None:
        person = self._people.setdefault(event.who, Person(len(self._people) + 1))
        self.server.names[person.chat] = event.who
        number = self._next_message
        self._next_message += 1
        match event.deed:
            case Says(text):
                if text.split(" ", 1)[0] != "/start":
                    person.messages.append(number)
                self.server.says(person.chat, text, message_id=number)
            case Edits(text, which):
                self.server.edits(person.chat, person.messages[-1 if which is None else which - 1], text)
            case Taps(label):
                self.server.taps_data(person.chat, *self._button(database, person, label))
            case Sends(file):
                person.messages.append(number)
                content = (self._story.parent / file).read_bytes()
                self.server.sends_file(person.chat, file, content, message_id=number)
            case Passes():
                raise AssertionError("time passing is no deed")
            case _:
                assert_never(event.deed)

    def _button(self, database: Database, person: Person, label: str) -> tuple[int, str]:
        """The platform's id of the message and the button's data; 0 where no id is known."""
        with database.reading() as store:
            known = store.people.find(SOURCE, person.chat)
            assert known is not None
            for delivery in store.outbox.latest(known.id, 8):
                later = [one for one in store.outbox.after(delivery.id, known.id) if one.outgoing.edits == delivery.id]
                rows = later[-1].outgoing.buttons if later else delivery.outgoing.buttons
                fits = [data for row in rows for text, data in row if text.casefold().startswith(label.casefold())]
                if rows:
                    assert fits, f"no button {label!r} among {rows}"
                    return delivery.platform_message or 0, fits[0]
        raise AssertionError(f"no buttons to tap {label!r} on")

    def _until(self, condition: Callable[[], object], seconds: float = 60.0) -> None:
        limit = time.monotonic() + seconds
        while not condition():
            assert time.monotonic() < limit, (self._now, self.bot.rows("SELECT state, text FROM inbound"))
            self.bot.revive()
            time.sleep(0.005)
