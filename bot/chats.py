"""Handles what the inbox holds: each chat's events in their order, the chats side by side.

Handling itself is quick and happens in the writer's thread; what may take long, fetching a document, holds up its own
chat alone.
"""

from __future__ import annotations

import asyncio
import logging
import math
from collections import defaultdict
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Protocol

from bot.delivery import OutOfReach
from bot.envelopes import unwrap_inbound
from bot.messages import Document
from bot.writer import Writer
from storage.envelopes import InboundId, StoredInbound

log = logging.getLogger(__name__)

FETCH_TRIES = 5
LONGEST_PAUSE = 30.0
NOT_FETCHED = "Not saved: I could not fetch the file. Send it again in a few minutes."


class Handler(Protocol):
    """The product, as far as this module needs it."""

    def handle_next(self, source: str, chat: int) -> bool: ...


class Files(Protocol):
    """Where the content of documents is fetched."""

    async def fetch(self, document: Document) -> Document: ...


class Chats:
    def __init__(
        self, source: str, files: Files, writer: Writer, handler: Handler, replied: Callable[[], None]
    ) -> None:
        self._source = source
        self._files = files
        self._writer = writer
        self._handler = handler
        self._replied = replied
        self._waiting: dict[int, float] = defaultdict(float)
        self._to_fetch: dict[int, list[tuple[InboundId, Document]]] = defaultdict(list)
        self._busy: dict[int, asyncio.Task[None]] = {}
        self._finishing = False

    async def resume(self) -> None:
        """Take up what an earlier process stored and did not handle."""
        events = await self._writer.transaction(lambda store: store.inbox.pending(limit=1_000_000))
        if events:
            log.info("taking up %d stored messages", len(events))
        self.take(events)
        for chat in {event.chat for event in events if event.source == self._source}:
            self._waiting[chat] = math.inf  # until the inbox says there are no more

    def take(self, events: Sequence[StoredInbound]) -> None:
        """These events are in the inbox now: see that they are handled."""
        for event in events:
            if event.source != self._source:
                continue
            document = unwrap_inbound(event).document
            if document is not None and document.reference and document.content is None and not document.trouble:
                self._to_fetch[event.chat].append((event.id, document))
            self._waiting[event.chat] += 1
            if event.chat not in self._busy:
                self._busy[event.chat] = asyncio.create_task(self._work_off(event.chat))

    async def finish(self) -> None:
        """Finish the events in hand; the others stay in the inbox."""
        self._finishing = True
        for task in self._busy.values():
            task.cancel()
        await asyncio.gather(*self._busy.values(), return_exceptions=True)

    async def _work_off(self, chat: int) -> None:
        tries = 0
        try:
            while self._waiting[chat] > 0 and not self._finishing:
                if await self._handle(chat):
                    tries = 0
                else:
                    tries += 1
                    await asyncio.sleep(min(LONGEST_PAUSE, 2.0**tries))
        finally:
            del self._busy[chat]
            del self._waiting[chat]

    async def _handle(self, chat: int) -> bool:
        """Whether all went well, events or none; otherwise the event still waits."""
        try:
            await self._fetch_documents(chat)
            # Shielded: told to stop, we still wait for the transaction in hand.
            handled = await asyncio.shield(self._writer.call(lambda: self._handler.handle_next(self._source, chat)))
        except Exception:
            log.exception("a stored message could not be handled yet; it waits")
            return False
        if handled:
            self._waiting[chat] -= 1
            self._replied()
        else:
            self._waiting[chat] = 0
        return True

    async def _fetch_documents(self, chat: int) -> None:
        while self._to_fetch[chat]:
            inbound, document = self._to_fetch[chat][0]
            fetched = await self._fetched(document)
            await self._writer.transaction(
                lambda store, inbound=inbound, fetched=fetched: store.inbox.attach(  # type: ignore[misc]
                    inbound, fetched.content, fetched.trouble
                )
            )
            self._to_fetch[chat].pop(0)
        del self._to_fetch[chat]

    async def _fetched(self, document: Document) -> Document:
        for tries in range(FETCH_TRIES):
            try:
                return await self._files.fetch(document)
            except OutOfReach as error:
                log.warning("document not fetched yet: %s", error)
                await asyncio.sleep(min(LONGEST_PAUSE, max(error.seconds, 2.0**tries)))
        return replace(document, trouble=NOT_FETCHED)
