"""The whole product behind one door: an event comes in, replies go into the outbox, all in one transaction.

Adapters store what came, call `handle_next` until nothing waits, and send what the outbox holds. An event that came
before changes nothing. An event whose handling fails is rolled back whole, and the person is told that nothing was
saved.
"""

from __future__ import annotations

import logging
from dataclasses import replace
from datetime import datetime
from typing import Any

from bot.conversation import respond
from bot.envelopes import unwrap_inbound, wrap_inbound, wrap_outgoing
from bot.memory import Memory
from bot.messages import Inbound, Outgoing, OutgoingKind
from bot.recording import PLAIN_SETS
from bot.replies.trouble import broke
from bot.schedule import run_due
from bot.turn import Turn
from storage.database import Database
from storage.envelopes import OutboxId, StoredInbound
from storage.errors import Contended
from storage.records import Person
from storage.store import Store

log = logging.getLogger(__name__)


class Product:
    """One per process. `default_zone` is the clock of people who have not told theirs."""

    def __init__(self, database: Database, default_zone: str = "UTC", memory: Memory | None = None) -> None:
        self.database = database
        self.default_zone = default_zone
        self.memory = memory or Memory()

    def receive(self, inbound: Inbound) -> tuple[OutboxId, ...]:
        """The outbox ids of the replies to an event, given now or, where it came before, then.

        For adapters whose events cannot be lost on the way: stored and handled in one transaction.
        """
        try:
            with self.database.transaction() as store:
                row = wrap_inbound(inbound)
                fresh = store.inbox.put([row], inbound.at)
                if not fresh:
                    known = store.inbox.find(inbound.source, inbound.key)
                    return tuple(reply.id for reply in store.inbox.replies(known.id)) if known is not None else ()
                event = replace(row, id=fresh[0])
                turn = self._answer(store, event)
                store.inbox.done(event.id, event.at)
                looked_up = self._looked_up(turn)
            self.memory.keep_looked_up(turn.athlete, looked_up)
            return tuple(turn.said)
        except Contended:
            raise
        except Exception:
            log.exception("could not handle an event")
        with self.database.transaction() as store:
            fresh = store.inbox.put([wrap_inbound(inbound)], inbound.at)
            refused = store.inbox.get(fresh[0]) if fresh else None
        return self._admit(refused) if refused is not None else ()

    def handle_next(self, source: str, chat: int) -> bool:
        """Whether an event of the chat waited; it is handled and its replies wait in the outbox."""
        event: StoredInbound | None = None
        try:
            with self.database.transaction() as store:
                event = store.inbox.take_next(source, chat)
                if event is None:
                    return False
                turn = self._answer(store, event)
                store.inbox.done(event.id, event.at)
                looked_up = self._looked_up(turn)
            self.memory.keep_looked_up(turn.athlete, looked_up)
        except Contended:
            # Another worker was in the way: nothing is kept, and the event is tried again.
            return True
        except Exception:
            # Whatever went wrong, the event must neither block the chat nor be half saved; the log has the traceback.
            if event is None:
                raise
            log.exception("could not handle an event")
            self._admit(event)
        return True

    def tick(self, now: datetime) -> int:
        """How many things were due and are done: reminders, summaries, digests and their like."""
        return run_due(self.database, self.memory, self.default_zone, now)

    def _looked_up(self, turn: Turn) -> tuple[int, dict[str, Any]] | None:
        """What the next message may take over: only behind plain sets, which change nothing but the log of the day."""
        return self.memory.take_out(turn.store, turn.athlete) if turn.kept.get(PLAIN_SETS) else None

    def _answer(self, store: Store, event: StoredInbound) -> Turn:
        inbound = unwrap_inbound(event)
        me = _person(store, inbound)
        store.people.lock(me.id)
        self.memory.bring_in(store, me.id)
        turn = Turn(store, me, inbound, event.id, self.memory, self.default_zone)
        respond(turn)
        return turn

    def _admit(self, event: StoredInbound) -> tuple[OutboxId, ...]:
        with self.database.transaction() as store:
            store.inbox.failed(event.id, "could not be handled", event.at)
            me = _person(store, unwrap_inbound(event))
            apology = wrap_outgoing(Outgoing(OutgoingKind.SEND, broke().text))
            return (store.outbox.add(me.id, apology, event.at, inbound=event.id),)


def _person(store: Store, inbound: Inbound) -> Person:
    known = store.people.find(inbound.source, inbound.chat)
    return known or store.people.create(inbound.source, inbound.chat, inbound.name or "athlete", inbound.at)
