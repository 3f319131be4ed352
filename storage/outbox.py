"""Messages to be sent, written in the transaction that causes them, sent after its commit.

A sender claims rows for a while (a lease), sends, and reports. Only the oldest unsent row of a chat can be claimed, so
each chat keeps its order; replies go before what nobody asked for.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from engine.values.ids import AthleteId
from storage.envelopes import Delivery, InboundId, Lane, OutboxId, StoredOutgoing
from storage.work import Work


class Outbox:
    def __init__(self, work: Work) -> None:
        self._work = work

    def add(
        self,
        athlete: AthleteId,
        outgoing: StoredOutgoing,
        at: datetime,
        *,
        lane: Lane = Lane.REPLY,
        inbound: InboundId | None = None,
        dedupe_key: str | None = None,
        not_before: datetime | None = None,
    ) -> OutboxId:
        """The id of the message in the outbox; with a `dedupe_key` used before, the id of the one already there.

        Where the person is not reachable, the row is kept as dropped.
        """
        raise NotImplementedError

    def claim(self, source: str, now: datetime, *, limit: int = 20, lease: timedelta) -> tuple[Delivery, ...]:
        """Messages this sender may send now, at most one for each chat; nobody else gets them until the lease ends.

        A row whose lease ended while sending may have been delivered: it comes back as UNKNOWN, never for resending,
        unless it is an edit or a reaction, which can be repeated safely. Commit before sending.
        """
        raise NotImplementedError

    def mark_sent(self, message: OutboxId, platform_message: int | None, at: datetime) -> None:
        """Nothing; the message is delivered, under this id of the platform's."""
        raise NotImplementedError

    def retry_at(self, message: OutboxId, not_before: datetime, error: str = "") -> None:
        """Nothing; surely not delivered: it may be claimed again from then on."""
        raise NotImplementedError

    def mark_unknown(self, message: OutboxId, error: str = "") -> None:
        """Nothing; it may or may not be delivered, so it is not sent again."""
        raise NotImplementedError

    def mark_failed(self, message: OutboxId, error: str) -> None:
        """Nothing; the platform refused it for good."""
        raise NotImplementedError

    def hold(self, source: str, until: datetime) -> None:
        """Nothing; no message of this source is claimed before then (the platform asked for a pause)."""
        raise NotImplementedError

    def next_at(self, source: str, now: datetime) -> datetime | None:
        """When the next message can be claimed, `now` at the earliest; None when none waits."""
        raise NotImplementedError

    def get(self, message: OutboxId) -> Delivery | None:
        """A message by its id."""
        raise NotImplementedError

    def of_platform(self, source: str, chat: int, platform_message: int) -> Delivery | None:
        """The message that the platform knows under this id in a chat (a tapped button names it so)."""
        raise NotImplementedError

    def latest(self, athlete: AthleteId, count: int = 1) -> tuple[Delivery, ...]:
        """The last messages to a person, newest first, edits and reactions left out."""
        raise NotImplementedError

    def after(self, message: OutboxId, athlete: AthleteId | None = None, limit: int = 1000) -> tuple[Delivery, ...]:
        """Everything put into the outbox after this one, oldest first; to everyone or to one person."""
        raise NotImplementedError
