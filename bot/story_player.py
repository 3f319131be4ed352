"""Plays the events of a transcript on a database, with the transcript's own clock.

Whatever falls due between two lines is done in its order before the later one. A person's times are by her own clock.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, assert_never

from bot import zones
from bot.handle import Product
from bot.memory import Memory
from bot.messages import Document, Inbound, InboundKind
from bot.preferences import preferences
from bot.story import Edits, Event, Passes, Says, Sends, StoryError, Taps, read_story
from storage.database import Database
from storage.envelopes import Delivery, OutboxId


@dataclass(slots=True)
class Player:
    """One person of the story: her chat, her messages so far, and the bot's last one with buttons."""

    name: str
    chat: int
    messages: list[int] = field(default_factory=list)


class NoSuchButton(ValueError):
    """A tap on a button that the last reply does not have."""

    def __init__(self, line: int, label: str, offered: list[str]) -> None:
        buttons = ", ".join(offered) or "none"
        super().__init__(f"line {line}: taps {label!r}, but the last reply's buttons are: {buttons}")


class StoryPlayer:
    """One story being played on one database. `files` are the documents beside the transcript, by name."""

    def __init__(
        self, database: Database, files: Mapping[str, bytes], *, source: str = "story", zone: str = "UTC"
    ) -> None:
        self.database = database
        self.product = Product(database, zone, Memory(secret=b"story"))
        self.files = files
        self.source = source
        self.zone = zone
        self.players: dict[str, Player] = {}
        self.now: datetime | None = None
        # On a database that has been used before the story goes on behind what is there.
        with database.transaction() as store:
            self._seen: OutboxId = store.outbox.newest()
            self._next_message = store.inbox.newest() + 1

    def play(self, story: str) -> Iterator[Delivery]:
        """Every outgoing message in order, as the story goes on.

        Errors: StoryError and NoSuchButton name the line.
        """
        for event in read_story(story):
            at = self._instant(event)
            yield from self._pass_time(at)
            if not isinstance(event.deed, Passes):
                self._do(event, at)
                yield from self._sent(at)

    def _instant(self, event: Event) -> datetime:
        zone = self.zone
        player = self.players.get(event.who)
        if player is None and len(self.players) == 1:
            player = next(
                iter(self.players.values())
            )  # where only time passes, by the clock of the one person there is
        if player is not None:
            with self.database.transaction() as store:
                person = store.people.find(self.source, player.chat)
                if person is not None:
                    zone = preferences(store.settings.all(person.id), self.zone).zone
        at = zones.instant(event.at, zone)
        return max(at, self.now) if self.now is not None else at

    def wall_time(self, delivery: Delivery) -> datetime:
        """When a message went out, by the clock of the person it went to, naive."""
        with self.database.transaction() as store:
            own = preferences(store.settings.all(delivery.athlete), self.zone)
        return zones.local(delivery.at, own.zone)

    def _pass_time(self, until: datetime) -> Iterator[Delivery]:
        while (due_at := self._next_due()) is not None and due_at <= until:
            moment = max(due_at, self.now or due_at)
            self.product.tick(moment)
            yield from self._sent(moment)
            if self._next_due() == due_at:  # it could not be done: the rest goes on without it
                self.product.tick(until)
                yield from self._sent(until)
                break
        self.now = until

    def _next_due(self) -> datetime | None:
        with self.database.transaction() as store:
            return store.due.next_at()

    def _do(self, event: Event, at: datetime) -> None:
        player = self.players.setdefault(event.who, Player(event.who, len(self.players) + 1))
        self.product.receive(self._inbound(event, player, at))

    def _inbound(self, event: Event, player: Player, at: datetime) -> Inbound:
        number = self._next_message
        self._next_message += 1
        key = f"{event.line}:{number}"
        match event.deed:
            case Says(text):
                if text.split(" ", 1)[0] != "/start":
                    player.messages.append(number)
                return Inbound(self.source, player.chat, key, InboundKind.MESSAGE, number, text, at, player.name)
            case Edits(text, which):
                message = self._edited(event, player, which)
                return Inbound(self.source, player.chat, key, InboundKind.EDIT, message, text, at, player.name)
            case Taps(label):
                tapped, button = self._button(event, player, label)
                return Inbound(self.source, player.chat, key, InboundKind.TAP, tapped, button, at, player.name)
            case Sends(file):
                document = self._document(event, file)
                player.messages.append(number)
                return Inbound(
                    self.source, player.chat, key, InboundKind.DOCUMENT, number, "", at, player.name, document
                )
            case Passes():
                raise AssertionError("time passing is no deed")
            case _:
                assert_never(event.deed)

    def _edited(self, event: Event, player: Player, which: int | None) -> int:
        place = len(player.messages) if which is None else which
        if not 1 <= place <= len(player.messages):
            raise StoryError(event.line, f"edits {place}", f"a message of hers, 1 to {len(player.messages)}")
        return player.messages[place - 1]

    def _button(self, event: Event, player: Player, label: str) -> tuple[int, str]:
        with self.database.transaction() as store:
            person = store.people.find(self.source, player.chat)
            last = store.outbox.latest(person.id, 8) if person is not None else ()
        for delivery in last:
            rows = self._buttons_now(delivery)
            if not rows:
                continue
            fits = [(text, data) for row in rows for text, data in row if text.casefold().startswith(label.casefold())]
            exact = [pair for pair in fits if pair[0].casefold() == label.casefold()]
            chosen = exact or fits
            if len({data for _, data in chosen}) != 1:
                raise NoSuchButton(event.line, label, [text for row in rows for text, _ in row])
            return delivery.platform_message or delivery.id, chosen[0][1]
        raise NoSuchButton(event.line, label, [])

    def _buttons_now(self, delivery: Delivery) -> Any:
        """The buttons a message shows now: those of its latest edit."""
        with self.database.transaction() as store:
            later = [
                one for one in store.outbox.after(delivery.id, delivery.athlete) if one.outgoing.edits == delivery.id
            ]
        return later[-1].outgoing.buttons if later else delivery.outgoing.buttons

    def _document(self, event: Event, file: str) -> Document:
        if file not in self.files:
            raise StoryError(event.line, f"sends {file}", "a file of that name beside the transcript")
        return Document(file, self.files[file])

    def _sent(self, at: datetime) -> Iterator[Delivery]:
        """What the outbox holds since last time, now delivered."""
        with self.database.transaction() as store:
            fresh = store.outbox.after(self._seen)
            for delivery in fresh:
                store.outbox.mark_sent(delivery.id, delivery.id, at)
        if fresh:
            self._seen = fresh[-1].id
        yield from fresh
