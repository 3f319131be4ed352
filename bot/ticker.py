"""Calls what is due, every few seconds, however late: what is due is in the database, this only looks."""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from datetime import UTC, datetime

from apscheduler.schedulers.asyncio import AsyncIOScheduler


def ticking(*looks: tuple[Callable[[], Awaitable[None]], float]) -> AsyncIOScheduler:
    """A scheduler, not started, that makes each call at once and then every so many seconds.

    A late call is made all the same (the library's default drops one that is a second late), several missed ones
    are made as one, and no call starts while the same one runs.
    """
    scheduler = AsyncIOScheduler(timezone=UTC)
    for look, seconds in looks:
        scheduler.add_job(
            look,
            "interval",
            seconds=seconds,
            next_run_time=datetime.now(UTC),
            misfire_grace_time=None,
            coalesce=True,
            max_instances=1,
        )
    return scheduler
