"""Fetches updates and commits them to the inbox before the platform may forget them."""

from __future__ import annotations

import asyncio
import logging
import time
from collections import deque
from collections.abc import Callable, Coroutine, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

from bot.chats import Chats
from bot.delivery import OtherPoller, OutOfReach, WrongToken
from bot.envelopes import wrap_inbound
from bot.telegram_adapter import Telegram
from bot.telegram_updates import Arrived
from bot.writer import Writer
from storage.envelopes import StoredInbound
from storage.store import Store

log = logging.getLogger(__name__)

LONGEST_PAUSE = 30.0
CONFLICTS, WITHIN = 5, 60.0
"""So many refusals in so many seconds: the other process is there to stay. One or two are a hand-over at a restart."""


class Poller:
    def __init__(
        self,
        telegram: Telegram,
        writer: Writer,
        chats: Chats,
        clock: Callable[[], datetime],
        poll_seconds: float,
    ) -> None:
        self._telegram = telegram
        self._writer = writer
        self._chats = chats
        self._clock = clock
        self._wait = timedelta(seconds=poll_seconds)
        self._fresh = True
        self._failures = 0
        self._conflicts: deque[float] = deque(maxlen=CONFLICTS)
        self._errands: set[asyncio.Task[None]] = set()

    async def run(self) -> None:
        """Poll for ever.

        Errors: WrongToken, and OtherPoller where another process keeps polling.
        """
        offset: int | None = None
        while True:
            try:
                batch = await self._telegram.updates(offset, self._wait, self._clock)
                await self._keep(batch)
            except OtherPoller as conflict:
                await self._conflict(conflict)
            except OutOfReach as trouble:
                await self._pause(str(trouble), trouble.seconds)
            except (WrongToken, asyncio.CancelledError):
                raise
            except Exception:
                # Whatever it is (a full disk, say), the batch is not confirmed and comes again.
                log.exception("could not store what came; the platform keeps it")
                await asyncio.sleep(min(LONGEST_PAUSE, 2.0**self._failures))
                self._failures = min(self._failures + 1, 10)
            else:
                self._recovered()
                # An empty answer means that nothing before the offset is left. Asking without one from then on is safe,
                # and the platform may start its numbers anew, lower, after a quiet week. Source: Bot API, Update.
                offset = batch[-1].update + 1 if batch else None

    async def _keep(self, batch: Sequence[Arrived]) -> None:
        for each in batch:
            if each.tap is not None:
                self._errand(self._telegram.answer_tap(each.tap))
            if each.leave is not None:
                self._errand(self._telegram.leave(each.leave))
        events = [wrap_inbound(each.inbound, place=each.update) for each in batch if each.inbound is not None]
        if events:
            self._chats.take(await self._writer.transaction(lambda store: self._put(store, events)))
            self._fresh = False

    def _put(self, store: Store, events: Sequence[StoredInbound]) -> Sequence[StoredInbound]:
        """The events that are new, as stored."""
        if self._fresh:
            # A stopped process left its last batch unconfirmed: it comes again, and a refused insert would cost an id.
            events = [event for event in events if store.inbox.find(event.source, event.key) is None]
        ids = store.inbox.put(events, self._clock())
        if len(ids) == len(events):
            return [replace(event, id=given) for event, given in zip(events, ids, strict=True)]
        return [event for each in ids if (event := store.inbox.get(each)) is not None]

    def _errand(self, errand: Coroutine[Any, Any, None]) -> None:
        task = asyncio.create_task(errand)
        self._errands.add(task)
        task.add_done_callback(self._errands.discard)

    async def _pause(self, why: str, seconds: float) -> None:
        if self._failures == 0:
            log.warning("Telegram is out of reach, trying again until it answers: %s", why)
        pause = max(seconds, min(LONGEST_PAUSE, 2.0**self._failures))
        self._failures = min(self._failures + 1, 10)
        await asyncio.sleep(pause)

    def _recovered(self) -> None:
        if self._failures:
            log.info("Telegram answers again")
        self._failures = 0

    async def _conflict(self, conflict: OtherPoller) -> None:
        log.warning("another process fetches this bot's messages")
        self._conflicts.append(time.monotonic())
        if len(self._conflicts) == CONFLICTS and self._conflicts[-1] - self._conflicts[0] < WITHIN:
            raise conflict
        await asyncio.sleep(1.0)
