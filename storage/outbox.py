"""Messages to be sent, written in the transaction that causes them, sent after its commit.

A sender claims rows for a while (a lease), sends, and reports. Only the oldest unsent row of a chat can be claimed, so
each chat keeps its order; replies go before what nobody asked for.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Select, func, select, update
from sqlalchemy.dialects import postgresql, sqlite

from engine.values.ids import AthleteId
from storage import outbox_queries as queries
from storage.envelopes import BESIDE, Delivery, InboundId, Lane, OutboxId, OutboxState, StoredOutgoing
from storage.queue_mapping import DELIVERIES, delivery, outgoing_columns
from storage.tables.queues import OUTBOX, SOURCES
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
        about: AthleteId | None = None,
        beside: Sequence[AthleteId] = (),
        dedupe_key: str | None = None,
        not_before: datetime | None = None,
    ) -> OutboxId:
        """The id of the message in the outbox; with a `dedupe_key` used before, the id of the one already there.

        `about`: another person whose records the text tells (a client, in a coach's digest): erased with them;
        `beside`: several such people, with any of whom it is erased.
        Where the person is not reachable, the row is kept as dropped.
        """
        contact = self._work.contact(athlete)
        row = {
            **outgoing_columns(outgoing),
            "extras": {**outgoing.extras, BESIDE: list(beside)} if beside else dict(outgoing.extras),
            "athlete_id": athlete,
            "about": about,
            "source": contact.source,
            "chat": contact.chat,
            "lane": self._lane(outgoing, lane),
            "dedupe_key": dedupe_key,
            "inbound": inbound,
            "at": at,
            "state": (OutboxState.NEW if contact.reachable else OutboxState.DROPPED).value,
            "not_before": not_before,
            "attempts": 0,
            "error": "",
        }
        if dedupe_key is not None:
            same = (OUTBOX.c.athlete_id == athlete) & (OUTBOX.c.dedupe_key == dedupe_key)
            self._add_once(row)
            return OutboxId(self._work.connection.execute(select(OUTBOX.c.id).where(same)).scalar_one())
        return OutboxId(self._work.connection.execute(queries.ADD, row).scalar_one())

    def claim(
        self, source: str, now: datetime, *, limit: int = 20, lease: timedelta, expire: bool = True
    ) -> tuple[Delivery, ...]:
        """Messages this sender may send now, at most one for each chat; nobody else gets them until the lease ends.

        A row whose lease ended while it was being sent may have been delivered, so it becomes UNKNOWN and is not sent
        again; an edit or a reaction does no harm twice and is claimed again. A busy sender may leave out the look for
        ended leases (`expire`) most of the time. Commit before sending.
        """
        if expire:
            self._work.connection.execute(queries.GIVE_UP_EXPIRED, {"of_source": source, "now": now})
            self._work.connection.execute(queries.REPEAT_EXPIRED, {"of_source": source, "now": now})
        if self._held(source, now):
            return ()
        claimable = queries.CLAIMABLE
        if self._work.is_postgres:
            claimable = claimable.with_for_update(of=queries.ONE, skip_locked=True)
        ids = self._work.connection.execute(claimable, {"of_source": source, "now": now, "most": limit}).scalars().all()
        if not ids:
            return ()
        self._work.connection.execute(
            update(OUTBOX)
            .where(OUTBOX.c.id.in_(ids))
            .values(state=OutboxState.SENDING.value, claimed_until=now + lease, attempts=OUTBOX.c.attempts + 1)
        )
        return self._deliveries(DELIVERIES.where(OUTBOX.c.id.in_(ids)).order_by(OUTBOX.c.lane, OUTBOX.c.id))

    def mark_sent(self, message: OutboxId, platform_message: int | None, at: datetime) -> None:
        """Nothing; the message is delivered, under this id of the platform's."""
        self._report(message, OutboxState.SENT, platform_message=platform_message, sent_at=at, error="")

    def retry_at(self, message: OutboxId, not_before: datetime, error: str = "") -> None:
        """Nothing; surely not delivered: it may be claimed again from then on."""
        self._report(message, OutboxState.NEW, not_before=not_before, error=error)

    def mark_unknown(self, message: OutboxId, error: str = "") -> None:
        """Nothing; it may or may not be delivered, so it is not sent again."""
        self._report(message, OutboxState.UNKNOWN, error=error)

    def mark_failed(self, message: OutboxId, error: str) -> None:
        """Nothing; the platform refused it for good."""
        self._report(message, OutboxState.FAILED, error=error)

    def hold(self, source: str, until: datetime) -> None:
        """Nothing; no message of this source is claimed before then (the platform asked for a pause)."""
        self._work.set_source(source, held_until=until)

    def next_at(self, source: str, now: datetime) -> datetime | None:
        """When the next message may be claimed, `now` at the earliest; None when none waits."""
        query = select(func.count(), func.min(func.coalesce(OUTBOX.c.not_before, now))).where(
            OUTBOX.c.state == OutboxState.NEW.value, OUTBOX.c.source == source
        )
        waiting, soonest = self._work.connection.execute(query).one()
        if waiting == 0:
            return None
        earliest: datetime = max(now, soonest, self._held(source, now) or now)
        return earliest

    def newest(self) -> OutboxId:
        """The id of the message put in last; 0 where none is."""
        return OutboxId(self._work.connection.execute(select(func.max(OUTBOX.c.id))).scalar() or 0)

    def get(self, message: OutboxId) -> Delivery | None:
        """A message by its id."""
        return self._one(OUTBOX.c.id == message)

    def of_platform(self, source: str, chat: int, platform_message: int) -> Delivery | None:
        """The message that the platform knows under this id in a chat (a tapped button names it so)."""
        return self._one(
            OUTBOX.c.source == source,
            OUTBOX.c.chat == chat,
            OUTBOX.c.platform_message == platform_message,
            OUTBOX.c.kind == queries.SEND,
        )

    def latest(self, athlete: AthleteId, count: int = 1) -> tuple[Delivery, ...]:
        """The last messages to a person, newest first, edits and reactions left out."""
        query = DELIVERIES.where(OUTBOX.c.athlete_id == athlete, OUTBOX.c.kind == queries.SEND)
        return self._deliveries(query.order_by(OUTBOX.c.id.desc()).limit(count))

    def after(self, message: OutboxId, athlete: AthleteId | None = None, limit: int = 1000) -> tuple[Delivery, ...]:
        """Everything put into the outbox after this one, oldest first; to everyone or to one person."""
        query = DELIVERIES.where(OUTBOX.c.id > message)
        if athlete is not None:
            query = query.where(OUTBOX.c.athlete_id == athlete)
        return self._deliveries(query.order_by(OUTBOX.c.id).limit(limit))

    def _add_once(self, row: dict[str, Any]) -> None:
        insert = postgresql.insert if self._work.is_postgres else sqlite.insert
        once = insert(OUTBOX).on_conflict_do_nothing(index_elements=["athlete_id", "dedupe_key"])
        self._work.connection.execute(once, row)

    def _lane(self, outgoing: StoredOutgoing, lane: Lane) -> int:
        """An edit never overtakes the message it changes."""
        if outgoing.edits is None:
            return lane.value
        edited = self._work.connection.execute(queries.LANE_OF_WAITING, {"message": outgoing.edits}).scalar()
        return lane.value if edited is None else max(lane.value, edited)

    def _held(self, source: str, now: datetime) -> datetime | None:
        query = select(SOURCES.c.held_until).where(SOURCES.c.source == source, SOURCES.c.held_until > now)
        until: datetime | None = self._work.connection.execute(query).scalar_one_or_none()
        return until

    def _report(self, message: OutboxId, state: OutboxState, **values: Any) -> None:
        self._work.connection.execute(
            update(OUTBOX).where(OUTBOX.c.id == message).values(state=state.value, claimed_until=None, **values)
        )

    def _one(self, *which: ColumnElement[bool]) -> Delivery | None:
        return next(iter(self._deliveries(DELIVERIES.where(*which).order_by(OUTBOX.c.id.desc()).limit(1))), None)

    def _deliveries(self, query: Select[Any]) -> tuple[Delivery, ...]:
        return tuple(delivery(row) for row in self._work.connection.execute(query))
