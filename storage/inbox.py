"""Events as they came, stored before they are acknowledged and handled once.

Put a batch and commit; only then confirm the offset to the platform. A worker then takes the events of a chat one by
one, each in the transaction that handles it. Order inside a chat: `place`, then arrival.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from storage.envelopes import Delivery, InboundId, StoredInbound
from storage.work import Work


class Inbox:
    def __init__(self, work: Work) -> None:
        self._work = work

    def put(self, events: Sequence[StoredInbound], received_at: datetime) -> tuple[InboundId, ...]:
        """The ids of the events that are new, in the order given; one that came before (source, key) is passed over."""
        raise NotImplementedError

    def waiting(self) -> tuple[tuple[str, int], ...]:
        """The chats (source, chat) with events to handle, the one waiting longest first."""
        raise NotImplementedError

    def pending(self, limit: int = 1000) -> tuple[StoredInbound, ...]:
        """Events still to handle, chat by chat in their order (without documents' content)."""
        raise NotImplementedError

    def take_next(self, source: str, chat: int) -> StoredInbound | None:
        """The next event of a chat, its chat locked until the transaction ends; None when all are handled.

        Mark it done or failed in the same transaction.
        """
        raise NotImplementedError

    def get(self, inbound: InboundId) -> StoredInbound | None:
        """An event by its id, with its document."""
        raise NotImplementedError

    def find(self, source: str, key: str) -> StoredInbound | None:
        """The event with this key, if it ever came."""
        raise NotImplementedError

    def of_message(self, source: str, chat: int, message: int) -> tuple[StoredInbound, ...]:
        """A message and its edits, in their order (taps excluded)."""
        raise NotImplementedError

    def done(self, inbound: InboundId, at: datetime) -> None:
        """Nothing; the event is handled, once and for all."""
        raise NotImplementedError

    def attach(self, inbound: InboundId, content: bytes | None, trouble: str) -> None:
        """Nothing; the document at `document_reference` was fetched, or never will be and `trouble` says why."""
        raise NotImplementedError

    def failed(self, inbound: InboundId, error: str, at: datetime) -> None:
        """Nothing; the event could not be handled and is not tried again by itself."""
        raise NotImplementedError

    def replies(self, inbound: InboundId) -> tuple[Delivery, ...]:
        """What was answered to an event, in order."""
        raise NotImplementedError

    def offset(self, source: str) -> int | None:
        """The offset up to which a source has been stored."""
        raise NotImplementedError

    def set_offset(self, source: str, offset: int) -> None:
        """Nothing; the source is stored up to here. Call in the transaction that puts the batch."""
        raise NotImplementedError
