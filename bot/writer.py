"""One thread for all that touches the database, so that the event loop never waits for a disk.

One on purpose: SQLite has one writer at a time anyway, and whoever asks first is served first.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import TypeVar

from storage.database import Database
from storage.errors import Contended
from storage.store import Store

T = TypeVar("T")


class Writer:
    def __init__(self, database: Database) -> None:
        self._database = database
        self._thread = ThreadPoolExecutor(1, thread_name_prefix="writer")

    async def call(self, work: Callable[[], T]) -> T:
        """What `work` returns, done in the writer's thread; it opens its own transactions."""
        return await asyncio.get_running_loop().run_in_executor(self._thread, work)

    async def transaction(self, work: Callable[[Store], T]) -> T:
        """What `work` returns, done in one transaction."""

        return await self.call(lambda: self._attempt(work))

    def _attempt(self, work: Callable[[Store], T], tries: int = 5) -> T:
        """Another process may be in the way (a backup, another worker): nothing was kept then, so begin again."""
        for _ in range(tries - 1):
            try:
                return self._once(work)
            except Contended:
                continue
        return self._once(work)

    def _once(self, work: Callable[[Store], T]) -> T:
        with self._database.transaction() as store:
            return work(store)

    def close(self) -> None:
        """Nothing; what was begun is finished."""
        self._thread.shutdown(wait=True)
