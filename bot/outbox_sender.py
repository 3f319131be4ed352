"""Sends what waits in the outbox: answers before broadcasts, each chat in its order, at the platform's pace.

A row is claimed and committed before it is sent, and what became of it is written with the next claim. A crash in
between leaves the row claimed: it may have arrived, so storage reports it as unknown and only edits and reactions go
again.
"""

from __future__ import annotations

import asyncio
import logging
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import assert_never

from bot.delivery import Blocked, Carrier, Delivered, Outcome, Parcel, Refused, TryLater, Unsure
from bot.envelopes import unwrap_outgoing
from bot.pace import Limits, Pace
from bot.writer import Writer
from storage.envelopes import Delivery, Lane, OutboxId
from storage.store import Store

log = logging.getLogger(__name__)

LEASE = timedelta(seconds=60)  # longer than the slowest send, an upload with its own timeout of 20 s among them
LONGEST_PAUSE = 60.0
LOOK_AGAIN = 30.0
"""Seconds between looks at the outbox when nobody says that something waits."""

TRIES = 10
"""A message that the platform fails on this often, while it takes others, is given up."""


@dataclass(frozen=True, slots=True)
class Report:
    row: Delivery
    outcome: Outcome


class Sender:
    def __init__(
        self,
        source: str,
        carrier: Carrier,
        writer: Writer,
        clock: Callable[[], datetime],
        limits: Limits = Limits(),  # noqa: B008 (frozen)
    ) -> None:
        self._source = source
        self._carrier = carrier
        self._writer = writer
        self._clock = clock
        self._limits = limits
        self._pace = Pace(limits)
        self._flying: set[asyncio.Task[None]] = set()
        self._reports: list[Report] = []
        self._parts: dict[OutboxId, int] = {}
        self._something = asyncio.Event()
        self._stopping = False
        self._inherits = True  # rows that an earlier process had claimed
        self._open = True  # something may wait that can be sent now
        self._behind = False  # something waits for a message to land
        self._next_at: datetime | None = None  # something waits for its time

    def wake(self) -> None:
        """Something new waits in the outbox."""
        self._open = True
        self._something.set()

    def stop(self) -> None:
        """Claim nothing more; `run` ends when what is being sent has been sent."""
        self._stopping = True
        self._something.set()

    async def run(self) -> None:
        """Send until stopped."""
        while not self._stopping:
            self._something.clear()
            pause = await self._turn()
            if pause > 0:
                await self._something_or(pause)
        while self._flying:
            await asyncio.wait(self._flying)
        reports = self._reports
        await self._writer.transaction(lambda store: self._exchange(store, reports, 0))

    async def _turn(self) -> float:
        """Write down what became of the last rows, start the next; the seconds until it is worth looking again."""
        reports, self._reports = self._reports, []
        room = self._room(landed=bool(reports))
        if room > 0:
            self._open = False
        elif not reports:
            return self._rest()
        try:
            rows, next_at = await self._writer.transaction(lambda store: self._exchange(store, reports, room))
        except Exception:
            log.exception("the outbox could not be read or written")
            self._reports = [*reports, *self._reports]  # nothing was written: say it again next time
            self._open = True
            return 1.0
        if room > 0:
            self._start(rows)
            self._learn(len(rows) == room, next_at)
        return self._rest()

    def _room(self, *, landed: bool) -> int:
        """How many rows to claim now; none where nothing can be waiting."""
        now = self._clock()
        self._open |= (landed and self._behind) or (self._next_at is not None and now >= self._next_at)
        if not self._open:
            return 0
        return min(self._limits.at_once - len(self._flying), self._pace.allowed(time.monotonic()))

    def _exchange(self, store: Store, reports: list[Report], room: int) -> tuple[tuple[Delivery, ...], datetime | None]:
        """The rows to send now; where there are fewer than asked for, also when the next may be sent."""
        for report in reports:
            self._write(store, report)
        if room <= 0:
            return (), None
        now = self._clock()
        if self._inherits:
            # What an earlier process had claimed is nobody's now: look at it as if its lease had ended.
            store.outbox.claim(self._source, now + LEASE, limit=0, lease=LEASE)
            self._inherits = False
        rows = store.outbox.claim(self._source, now, limit=room, lease=LEASE, expire=False)
        return rows, store.outbox.next_at(self._source, now) if len(rows) < room else None

    def _start(self, rows: Sequence[Delivery]) -> None:
        self._pace.spend(len(rows))
        for row in rows:
            task = asyncio.create_task(self._deliver(row))
            self._flying.add(task)
            task.add_done_callback(self._landed)

    def _learn(self, may_be_more: bool, next_at: datetime | None) -> None:
        """Remember what the look at the outbox told: what waits, and for what."""
        self._open |= may_be_more
        waits = next_at is not None and next_at > self._clock()
        self._next_at = next_at if waits else None
        self._behind = next_at is not None and not waits  # behind a message of its chat that is under way

    def _rest(self) -> float:
        """Seconds to rest; a message that lands or a wake ends the rest early."""
        if self._reports:
            return 0.0
        if self._open:
            full = len(self._flying) >= self._limits.at_once
            return LOOK_AGAIN if full else self._pace.wait(time.monotonic())
        if self._behind and not self._flying:
            return 0.25  # its chat's message waits for its own time, or another process has it
        if self._next_at is None:
            return LOOK_AGAIN
        return min(LOOK_AGAIN, max(0.02, (self._next_at - self._clock()).total_seconds()))

    async def _something_or(self, seconds: float) -> None:
        try:
            async with asyncio.timeout(seconds):
                await self._something.wait()
        except TimeoutError:
            self._open = True

    async def _deliver(self, row: Delivery) -> None:
        outcome: Outcome
        try:
            parcel = Parcel(
                row.chat, unwrap_outgoing(row), row.edits_platform_message, parts=self._parts.get(row.id, 0)
            )
            await asyncio.sleep(self._pace.turn(row.chat, time.monotonic(), unprompted=row.lane is not Lane.REPLY))
            outcome = await self._carrier.deliver(parcel)
        except Exception as error:
            log.exception("message %d could not be sent", row.id)
            outcome = Unsure(f"{type(error).__name__}: {error}")
        self._reports.append(Report(row, outcome))

    def _landed(self, task: asyncio.Task[None]) -> None:
        self._flying.discard(task)
        self._something.set()

    def _write(self, store: Store, report: Report) -> None:
        row, outcome = report.row, report.outcome
        match outcome:
            case Delivered(message):
                store.outbox.mark_sent(row.id, message, self._clock())
            case Unsure(why):
                log.warning("message %d may or may not have arrived: %s", row.id, why)
                store.outbox.mark_unknown(row.id, why)
            case Refused(why):
                log.error("message %d was refused: %s", row.id, why)
                store.outbox.mark_failed(row.id, why)
            case Blocked():
                store.outbox.mark_failed(row.id, "blocked")
                store.people.gone(row.athlete)
            case TryLater():
                self._postpone(store, row, outcome)
                return
            case _:
                assert_never(outcome)
        self._parts.pop(row.id, None)

    def _postpone(self, store: Store, row: Delivery, later: TryLater) -> None:
        if not later.everyone and row.attempts >= TRIES:
            log.error("message %d given up after %d tries: %s", row.id, row.attempts, later.why)
            store.outbox.mark_failed(row.id, later.why)
            return
        self._parts[row.id] = later.parts
        seconds = later.seconds if later.exact else min(LONGEST_PAUSE, later.seconds * 2 ** (min(row.attempts, 7) - 1))
        again = self._clock() + timedelta(seconds=seconds)
        store.outbox.retry_at(row.id, again, later.why)
        self._next_at = again if self._next_at is None else min(again, self._next_at)
        if later.everyone:
            log.warning("nothing is sent for %.0f s: %s", seconds, later.why)
            store.outbox.hold(self._source, again)
