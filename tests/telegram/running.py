"""A bot in a process of its own, talking to a stand-in; and what its database holds in the end."""

from __future__ import annotations

import os
import signal
import sqlite3
import time
from collections.abc import Sequence
from multiprocessing.process import BaseProcess
from pathlib import Path
from typing import Any

from tests.telegram.forks import fork
from tests.telegram.standin import StandIn


def rows_of(database: Path, query: str, values: Sequence[Any] = ()) -> list[tuple[Any, ...]]:
    """What a database holds; nothing while it is not there yet."""
    if not database.exists():
        return []
    connection = sqlite3.connect(f"file:{database}?mode=ro", uri=True, timeout=10)
    try:
        return connection.execute(query, values).fetchall()
    except sqlite3.OperationalError as trouble:
        if "no such table" in str(trouble) or "unable to open" in str(trouble):
            return []
        raise
    finally:
        connection.close()


class BotProcess:
    """Started on entering, killed on leaving; `output` is everything it printed."""

    def __init__(self, server: StandIn, folder: Path, *options: str, api: str | None = None) -> None:
        self.database = folder / "log.db"
        self._log = folder / "output.txt"
        self._options = ("--database", f"sqlite:///{self.database}", "--api", api or server.url, *options)

    def __enter__(self) -> BotProcess:
        self._process: BaseProcess = fork(self._options, self._log)
        return self

    def __exit__(self, *_: object) -> None:
        self._process.kill()
        self._process.join()

    def stop(self, name: int = signal.SIGTERM) -> int | None:
        """The exit code."""
        assert self._process.pid is not None
        os.kill(self._process.pid, name)
        return self.exit_code(15.0)

    def exit_code(self, seconds: float = 20.0) -> int | None:
        """The exit code once it ends; None while it runs on."""
        self._process.join(seconds)
        return self._process.exitcode

    @property
    def output(self) -> str:
        return self._log.read_text("utf-8", "replace") if self._log.exists() else ""

    def wait_for_output(self, words: str, seconds: float = 15.0) -> None:
        limit = time.monotonic() + seconds
        while words not in self.output:
            assert time.monotonic() < limit, self.output[-3000:]
            time.sleep(0.05)

    def rows(self, query: str, values: Sequence[Any] = ()) -> list[tuple[Any, ...]]:
        """What the database holds; nothing while it is not there yet."""
        return rows_of(self.database, query, values)

    def notes(self) -> list[tuple[Any, ...]]:
        return self.rows("SELECT text, message FROM note ORDER BY athlete_id, id")

    def outbox(self) -> list[tuple[Any, ...]]:
        return self.rows("SELECT state, text FROM outbox ORDER BY id")
