"""Drives the whole product through its one door, on a real database, with a clock that only the test moves."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from typing import Any

from bot.handle import Product
from bot.memory import Memory
from bot.messages import Document, Inbound, InboundKind
from storage.database import Database
from storage.envelopes import Delivery, OutboxId
from storage.records import Person
from storage.store import Store

SOURCE = "test"
MONDAY = datetime(2026, 3, 2, 18, 0, tzinfo=UTC)
BEGINNING = date(2000, 1, 1)
PLAN = """plan: short and plain, 8 weeks
day mon: legs
barbell back squat 3x5 at 90 kg, +2.5 kg when all reps are made
leg extension 3x12 at 50 kg, +2.5 kg when all reps are made, swap leg press
day thu: pull
barbell row 3x12 at 55 kg, +2.5 kg when all reps are made
"""


@dataclass(slots=True)
class Party:
    """One person: her chat and the numbers of her messages so far."""

    chat: int
    messages: list[int] = field(default_factory=list)


class Chats:
    """Everybody's chats with one product. Each deed takes a minute unless the test says otherwise."""

    def __init__(
        self, database: Database, *, at: datetime = MONDAY, zone: str = "UTC", memory: Memory | None = None
    ) -> None:
        self.database = database
        self.product = Product(database, zone, memory or Memory(secret=b"test"))
        self.at = at
        self.parties: dict[str, Party] = {}
        self._number = 0
        self._seen = OutboxId(0)

    def join(self) -> list[Delivery]:
        """What went out before; the people known already talk on in their own chats."""
        with self.database.transaction() as store:
            for person in store.people.everyone():
                self.parties[person.name] = Party(person.chat)
        self._number = 1_000_000
        return self.fresh()

    def inbound(self, who: str, kind: InboundKind, text: str, message: int | None = None, **more: Any) -> Inbound:
        """What she did, as the product gets it; a new message where none is named."""
        party = self.parties.setdefault(who, Party(len(self.parties) + 1))
        self._number += 1
        if message is None:
            message = self._number
            party.messages.append(message)
        return Inbound(SOURCE, party.chat, str(self._number), kind, message, text, self.at, who, **more)

    def give(self, inbound: Inbound) -> list[Delivery]:
        """What went out because of it, to anyone."""
        self.product.receive(inbound)
        self.at += timedelta(minutes=1)
        return self.fresh()

    def says(self, who: str, *texts: str) -> list[Delivery]:
        """What went out because of her last words."""
        out: list[Delivery] = []
        for text in texts:
            out = self.give(self.inbound(who, InboundKind.MESSAGE, text))
        return out

    def edits(self, who: str, text: str, message: int = -1) -> list[Delivery]:
        """Her last message, or the one at a place of hers, edited."""
        number = self.parties[who].messages[message]
        return self.give(self.inbound(who, InboundKind.EDIT, text, number))

    def taps(self, who: str, data: str) -> list[Delivery]:
        """A button with this data tapped."""
        return self.give(self.inbound(who, InboundKind.TAP, data, 1))

    def sends(self, who: str, name: str, content: bytes) -> list[Delivery]:
        """A document sent."""
        return self.give(self.inbound(who, InboundKind.DOCUMENT, "", document=Document(name, content)))

    def leaves(self, who: str) -> list[Delivery]:
        """She blocks the bot."""
        return self.give(self.inbound(who, InboundKind.GONE, "", 0))

    def returns(self, who: str) -> list[Delivery]:
        """She unblocks it."""
        return self.give(self.inbound(who, InboundKind.BACK, "", 0))

    def tick(self, at: datetime | None = None) -> list[Delivery]:
        """What one look at what is due sends, at this instant."""
        self.at = at or self.at
        self.product.tick(self.at)
        return self.fresh()

    def until(self, at: datetime, every: timedelta | None = None) -> list[Delivery]:
        """What goes out until then, looking at what is due every so often, or whenever something falls due."""
        out = self.fresh()
        while self.at < at:
            out += self.tick(min(at, self.at + every if every is not None else self._next_look(at)))
        return out

    def _next_look(self, at: datetime) -> datetime:
        with self.database.transaction() as store:
            due = store.due.next_at()
        if due is None:
            return at
        return due if due > self.at else self.at + timedelta(minutes=5)

    def fresh(self) -> list[Delivery]:
        """What went into the outbox since last asked, in order."""
        with self.database.transaction() as store:
            out = list(store.outbox.after(self._seen))
        self._seen = out[-1].id if out else self._seen
        return out

    @contextmanager
    def store(self) -> Iterator[Store]:
        with self.database.transaction() as store:
            yield store

    def person(self, who: str) -> Person:
        with self.database.transaction() as store:
            found = store.people.find(SOURCE, self.parties[who].chat)
        assert found is not None
        return found

    def log(self, who: str) -> list[tuple[str, int, str]]:
        """Exercise, reps and load of each set that stands, in the order of the log."""
        return [(name, reps, load) for name, reps, load, _ in self.dated(who)]

    def dated(self, who: str) -> list[tuple[str, int, str, date]]:
        """The same with each set's day."""
        me = self.person(who).id
        with self.database.transaction() as store:
            records = sorted(store.sets.since(me, BEGINNING), key=lambda one: (one.place, one.id))
        return [(one.done.exercise, one.done.reps, str(one.done.load), one.on) for one in records]

    def standing(self, who: str) -> Mapping[str, Any]:
        """Everything of hers that undo can reach, as it stands now."""
        me = self.person(who).id
        dated = self.dated(who)
        with self.database.transaction() as store:
            return {
                "sets": dated,
                "notes": [(note.text, note.shared, note.pain) for note in store.notes.latest(me, 1000)],
                "weights": [str(one.load) for one in store.body_weights.between(me, BEGINNING, date(2100, 1, 1))],
                "plans": [(plan.text, plan.starts_on) for plan in store.plans.all(me)],
                "choices": [
                    (one.kind, one.on, one.exercise, one.to, one.to_day)
                    for one in store.choices.between(me, BEGINNING, date(2100, 1, 1))
                ],
                "settings": dict(store.settings.all(me)),
                "shorthands": dict(store.taught.shorthands(me)),
                "exercises": [one.name for one in store.taught.own_exercises(me)],
                "settled": sorted((one.term, one.answer) for one in store.taught.settled(me)),
            }


def to(deliveries: list[Delivery], chat: int) -> list[Delivery]:
    """Those that went to one chat."""
    return [one for one in deliveries if one.chat == chat]


def texts(deliveries: list[Delivery]) -> list[str]:
    """The words of what went out; reactions have none."""
    return [one.outgoing.text for one in deliveries if one.outgoing.kind != "react"]


def said(deliveries: list[Delivery]) -> str:
    """All the words of what went out."""
    return "\n".join(texts(deliveries))


def buttons(deliveries: list[Delivery]) -> dict[str, str]:
    """Label to data of every button that went out."""
    return {label: data for one in deliveries for row in one.outgoing.buttons for label, data in row}
