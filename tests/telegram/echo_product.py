"""A product of the same shape as the real one that keeps a note of every message and says it back.

Small enough to know exactly what must stand in the database; the tests of the adapter need no more.
"""

from __future__ import annotations

from datetime import datetime

from bot.envelopes import lane_of, unwrap_inbound, wrap_outgoing
from bot.messages import Attachment, Button, Inbound, InboundKind, Outgoing, OutgoingKind
from storage.database import Database
from storage.envelopes import OutboxId, StoredInbound
from storage.records import ChangeKind, Person, Role
from storage.store import Store

KEEP = Button("Keep", "v1:keep")
PICTURE = bytes.fromhex("89504e470d0a1a0a") + b"not much of a picture"


class EchoProduct:
    def __init__(self, database: Database) -> None:
        self._database = database

    def handle_next(self, source: str, chat: int) -> bool:
        with self._database.transaction() as store:
            event = store.inbox.take_next(source, chat)
            if event is None:
                return False
            me = store.people.find(source, chat) or store.people.create(source, chat, event.name, event.at)
            _Answer(store, event, me).give()
            store.inbox.done(event.id, event.at)
        return True

    def tick(self, now: datetime) -> int:
        return 0


class _Answer:
    def __init__(self, store: Store, event: StoredInbound, me: Person) -> None:
        self.store = store
        self.event = event
        self.me = me
        self.inbound: Inbound = unwrap_inbound(event)

    def give(self) -> None:
        match self.inbound.kind:
            case InboundKind.MESSAGE:
                self._message()
            case InboundKind.EDIT:
                self._edit()
            case InboundKind.TAP:
                self._tap()
            case InboundKind.DOCUMENT:
                self._document()
            case InboundKind.GONE:
                self.store.people.gone(self.me.id)
            case InboundKind.BACK:
                self.store.people.back(self.me.id)
                self.say("welcome back")

    def _message(self) -> None:
        text = self.inbound.text
        self._note(text)
        word, _, rest = text.partition(" ")
        match word:
            case "react":
                self.put(Outgoing(OutgoingKind.REACT, rest, message=self.inbound.message))
            case "long":
                self.say("\n".join(f"line {number}" for number in range(int(rest))))
            case "picture":
                self.put(Outgoing(OutgoingKind.SEND, rest, attachment=Attachment("week.png", PICTURE, picture=True)))
            case "export":
                self.put(Outgoing(OutgoingKind.SEND, rest, attachment=Attachment("log.csv", b"date,exercise\n")))
            case "remind":
                for number in range(int(rest)):
                    self.put(Outgoing(OutgoingKind.SEND, f"reminder {number}", silent=True, reply=False))
            case "coach":
                self.store.people.set_roles(self.me.id, [Role.ATHLETE, Role.COACH])
                self.say("you coach")
            case _:
                self.put(Outgoing(OutgoingKind.SEND, f"heard: {text}", buttons=((KEEP,),)))

    def _edit(self) -> None:
        self._note(f"edit: {self.inbound.text}")
        self.put(Outgoing(OutgoingKind.EDIT, f"heard again: {self.inbound.text}", edits=self._last()))

    def _tap(self) -> None:
        known = self.store.outbox.of_platform(self.inbound.source, self.inbound.chat, self.inbound.message)
        self._note(f"tap: {self.inbound.text}")
        if known is None:
            self.say("kept")
        else:
            self.put(Outgoing(OutgoingKind.EDIT, known.outgoing.text + "\nkept", edits=known.id))

    def _document(self) -> None:
        document = self.inbound.document
        assert document is not None
        self._note(f"file {document.name}: {len(document.content or b'')} bytes")
        self.say(document.trouble or f"{document.name}: {len(document.content or b'')} bytes")

    def _note(self, text: str) -> None:
        at = self.inbound.at
        change = self.store.changes.begin(self.me.id, ChangeKind.NOTE, "note", at, inbound=self.event.id)
        self.store.notes.add(change, text, on=at.date(), at=at, message=self.inbound.message)

    def _last(self) -> OutboxId | None:
        latest = self.store.outbox.latest(self.me.id)
        return latest[0].id if latest else None

    def say(self, text: str) -> None:
        self.put(Outgoing(OutgoingKind.SEND, text))

    def put(self, outgoing: Outgoing) -> None:
        self.store.outbox.add(
            self.me.id, wrap_outgoing(outgoing), self.inbound.at, lane=lane_of(outgoing), inbound=self.event.id
        )
