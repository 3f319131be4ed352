"""Events as they came, stored before they are acknowledged and handled once.

Put a batch and commit; only then confirm the offset to the platform. A worker then takes the events of a chat one by
one, each in the transaction that handles it. Order inside a chat: `place`, then arrival.
"""

from __future__ import annotations

import zlib
from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, func, select, text, tuple_, update
from sqlalchemy.dialects import postgresql, sqlite

from engine.values.ids import AthleteId
from storage.envelopes import TAP, Delivery, InboundId, InboundState, StoredInbound
from storage.queue_mapping import DELIVERIES, delivery, inbound_columns, stored_inbound
from storage.tables.people import PEOPLE
from storage.tables.queues import INBOUND, OUTBOX, SOURCES
from storage.work import Work

BATCH = 100
LOCK_CHAT = text("SELECT pg_advisory_xact_lock(1667785076, :chat)")
IN_ORDER = (INBOUND.c.place, INBOUND.c.id)
NEXT = (
    select(INBOUND)
    .where(
        INBOUND.c.state == InboundState.NEW.value,
        INBOUND.c.source == bindparam("source"),
        INBOUND.c.chat == bindparam("chat"),
    )
    .order_by(*IN_ORDER)
    .limit(1)
)


class Inbox:
    def __init__(self, work: Work) -> None:
        self._work = work

    def put(self, events: Sequence[StoredInbound], received_at: datetime) -> tuple[InboundId, ...]:
        """The ids of the events that are new, in the order given; one that came before (source, key) is passed over."""
        ids: list[InboundId] = []
        for start in range(0, len(events), BATCH):
            ids += self._put(events[start : start + BATCH], received_at)
        return tuple(ids)

    def waiting(self) -> tuple[tuple[str, int], ...]:
        """The chats (source, chat) with events to handle, the one waiting longest first."""
        query = (
            select(INBOUND.c.source, INBOUND.c.chat)
            .where(INBOUND.c.state == InboundState.NEW.value)
            .group_by(INBOUND.c.source, INBOUND.c.chat)
            .order_by(func.min(INBOUND.c.id))
        )
        return tuple((row.source, row.chat) for row in self._work.connection.execute(query))

    def pending(self, limit: int = 1000) -> tuple[StoredInbound, ...]:
        """Events still to handle, chat by chat in their order (without documents' content)."""
        columns = [column for column in INBOUND.c if column.name != "document"]
        query = (
            select(*columns)
            .where(INBOUND.c.state == InboundState.NEW.value)
            .order_by(INBOUND.c.source, INBOUND.c.chat, *IN_ORDER)
            .limit(limit)
        )
        return tuple(stored_inbound(row) for row in self._work.connection.execute(query))

    def take_next(self, source: str, chat: int) -> StoredInbound | None:
        """The next event of a chat, its chat and person locked until the transaction ends; None when all are handled.

        Mark it done or failed in the same transaction.
        """
        if self._work.is_postgres:
            # Signed 32 bits, as the lock wants; chats that share a value only wait for each other.
            number = zlib.crc32(f"{source}:{chat}".encode()) - 2**31
            self._work.connection.execute(LOCK_CHAT, {"chat": number})
        row = self._work.connection.execute(NEXT, {"source": source, "chat": chat}).one_or_none()
        if row is None:
            return None
        if row.athlete_id is not None:
            self._work.lock(AthleteId(row.athlete_id))
        return stored_inbound(row)

    def newest(self) -> InboundId:
        """The id of the event stored last; 0 where none is."""
        return InboundId(self._work.connection.execute(select(func.max(INBOUND.c.id))).scalar() or 0)

    def get(self, inbound: InboundId) -> StoredInbound | None:
        """An event by its id, with its document."""
        row = self._work.connection.execute(select(INBOUND).where(INBOUND.c.id == inbound)).one_or_none()
        return None if row is None else stored_inbound(row)

    def find(self, source: str, key: str) -> StoredInbound | None:
        """The event with this key, if it ever came."""
        query = select(INBOUND).where(INBOUND.c.source == source, INBOUND.c.key == key)
        row = self._work.connection.execute(query).one_or_none()
        return None if row is None else stored_inbound(row)

    def of_message(self, source: str, chat: int, message: int) -> tuple[StoredInbound, ...]:
        """A message and its edits, in their order (taps excluded: they name a message of the bot's)."""
        query = select(INBOUND).where(
            INBOUND.c.source == source,
            INBOUND.c.chat == chat,
            INBOUND.c.message == message,
            INBOUND.c.kind != TAP,
        )
        return tuple(stored_inbound(row) for row in self._work.connection.execute(query.order_by(*IN_ORDER)))

    def attach(self, inbound: InboundId, content: bytes | None, trouble: str) -> None:
        """Nothing; the document at `document_reference` was fetched, or never will be and `trouble` says why."""
        self._set(inbound, document=content, document_trouble=trouble)

    def done(self, inbound: InboundId, at: datetime) -> None:
        """Nothing; the event is handled, once and for all."""
        self._set(inbound, state=InboundState.DONE.value, handled_at=at)

    def failed(self, inbound: InboundId, error: str, at: datetime) -> None:
        """Nothing; the event could not be handled and is not tried again by itself."""
        self._set(inbound, state=InboundState.FAILED.value, handled_at=at, error=error)

    def failures(self) -> tuple[StoredInbound, ...]:
        """The events that could not be handled, oldest first."""
        query = select(INBOUND).where(INBOUND.c.state == InboundState.FAILED.value).order_by(INBOUND.c.id)
        return tuple(stored_inbound(row) for row in self._work.connection.execute(query))

    def replies(self, inbound: InboundId) -> tuple[Delivery, ...]:
        """What was answered to an event, in order."""
        query = DELIVERIES.where(OUTBOX.c.inbound == inbound).order_by(OUTBOX.c.id)
        return tuple(delivery(row) for row in self._work.connection.execute(query))

    def offset(self, source: str) -> int | None:
        """The offset up to which a source has been stored."""
        query = select(SOURCES.c.poll_offset).where(SOURCES.c.source == source)
        offset: int | None = self._work.connection.execute(query).scalar_one_or_none()
        return offset

    def set_offset(self, source: str, offset: int) -> None:
        """Nothing; the source is stored up to here. Call in the transaction that puts the batch."""
        self._work.set_source(source, poll_offset=offset)

    def _put(self, events: Sequence[StoredInbound], received_at: datetime) -> list[InboundId]:
        owners = self._owners(events)
        rows = [
            {
                **inbound_columns(event),
                "received_at": received_at,
                "athlete_id": owners.get((event.source, event.chat)),
            }
            for event in events
        ]
        insert = postgresql.insert if self._work.is_postgres else sqlite.insert
        statement = insert(INBOUND).on_conflict_do_nothing(index_elements=["source", "key"])
        added = self._work.connection.execute(statement.returning(INBOUND.c.id, INBOUND.c.source, INBOUND.c.key), rows)
        ids = {(row.source, row.key): InboundId(row.id) for row in added}
        # A key given twice in one batch is one event.
        return [ids.pop(name) for event in events if (name := (event.source, event.key)) in ids]

    def _owners(self, events: Sequence[StoredInbound]) -> dict[tuple[str, int], int]:
        chats = sorted({(event.source, event.chat) for event in events})
        query = select(PEOPLE.c.source, PEOPLE.c.chat, PEOPLE.c.id).where(
            tuple_(PEOPLE.c.source, PEOPLE.c.chat).in_(chats)
        )
        return {(row.source, row.chat): row.id for row in self._work.connection.execute(query)}

    def _set(self, inbound: InboundId, **values: Any) -> None:
        self._work.connection.execute(update(INBOUND).where(INBOUND.c.id == inbound).values(values))
