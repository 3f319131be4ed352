"""The bot as a process of its own, for tests: the real `serve`; clock, product and moment of death are given.

    python -m tests.telegram.bot_process --database URL --api URL [--product echo|real] [--clock FILE] [--die-at N]

A step is anything that another process could see: an HTTP request (before it leaves, after its answer) and a commit
(before and after). `--die-at N` kills the process at its N-th step, as hard as a power cut kills it; `--steps FILE`
says how many there were. The clock file holds the story's time; FILE with the ending `.ticked` says for which time the
last tick was done.
"""

from __future__ import annotations

import argparse
import os
import signal
import sys
import threading
from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Any

import httpx
from sqlalchemy.engine.default import DefaultDialect

from bot.pace import Limits
from bot.serve import ServeSettings, run
from storage.database import Database
from tests.telegram.echo_product import EchoProduct
from tests.telegram.standin_values import TOKEN


class Steps:
    """Counts steps, and dies at one."""

    def __init__(self, die_at: int | None, log: Path | None) -> None:
        self._die_at = die_at
        self._log = log
        self._count = 0
        self._one_at_a_time = threading.Lock()

    def step(self) -> None:
        # Commits come from several threads: each must see its own number, or the one to die at is passed over.
        with self._one_at_a_time:
            self._count += 1
            if self._log is not None:
                self._log.write_text(str(self._count))
            if self._count == self._die_at:
                os.kill(os.getpid(), signal.SIGKILL)

    def watch(self) -> None:
        self._watch_commits()
        self._watch_requests()

    def _watch_commits(self) -> None:
        commit = DefaultDialect.do_commit

        def watched(dialect: DefaultDialect, connection: Any) -> None:
            self.step()
            commit(dialect, connection)
            self.step()

        DefaultDialect.do_commit = watched  # type: ignore[method-assign]

    def _watch_requests(self) -> None:
        request = httpx.AsyncClient.request

        async def watched(client: httpx.AsyncClient, *args: Any, **named: Any) -> httpx.Response:
            self.step()
            response = await request(client, *args, **named)
            self.step()
            return response

        httpx.AsyncClient.request = watched  # type: ignore[method-assign, assignment]


class StoryClock:
    """The time that stands in a file."""

    def __init__(self, file: Path) -> None:
        self._file = file

    def __call__(self) -> datetime:
        return datetime.fromisoformat(self._file.read_text())


class Ticked:
    """A product that writes down for which time it was asked what is due."""

    def __init__(self, product: Any, file: Path) -> None:
        self._product = product
        self._file = file

    def handle_next(self, source: str, chat: int) -> bool:
        return bool(self._product.handle_next(source, chat))

    def tick(self, now: datetime) -> int:
        done = int(self._product.tick(now))
        if not done:  # while something was due, more may be
            whole = self._file.with_suffix(".part")
            whole.write_text(now.isoformat())
            whole.rename(self._file)
        return done


def real_product(database: Database) -> Any:
    from bot.handle import Product
    from bot.memory import Memory

    return Product(database, "UTC", Memory(secret=b"story"))


def main(arguments: list[str]) -> int:
    parser = argparse.ArgumentParser()
    parser.add_argument("--database", required=True)
    parser.add_argument("--api", required=True)
    parser.add_argument("--token", default=TOKEN)
    parser.add_argument("--product", choices=("echo", "real"), default="echo")
    parser.add_argument("--clock", type=Path)
    parser.add_argument("--tick", type=float, default=20.0)
    parser.add_argument("--poll-seconds", type=float, default=30.0)
    parser.add_argument("--call-seconds", type=float, default=10.0)
    parser.add_argument("--fast", action="store_true", help="no pause between messages")
    parser.add_argument("--die-at", type=int)
    parser.add_argument("--steps", type=Path)
    given = parser.parse_args(arguments)
    if given.die_at or given.steps:
        Steps(given.die_at, given.steps).watch()
    settings = ServeSettings(
        token=given.token,
        database=given.database,
        api=given.api,
        poll_seconds=given.poll_seconds,
        tick_seconds=given.tick,
        call_seconds=given.call_seconds,
        limits=Limits(10_000.0, 8, 0.0) if given.fast else Limits(),
    )
    product: Callable[[Database], Any] = EchoProduct if given.product == "echo" else real_product
    if given.clock is None:
        return run(settings, product)
    ticked = given.clock.with_suffix(".ticked")
    return run(settings, lambda database: Ticked(product(database), ticked), StoryClock(given.clock))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
