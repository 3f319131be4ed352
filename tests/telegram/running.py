"""A bot in a process of its own, talking to a stand-in; and what its database holds in the end."""

from __future__ import annotations

import signal
import sqlite3
import subprocess
import sys
import time
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from tests.telegram.standin import StandIn

ROOT = Path(__file__).resolve().parents[2]


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
        self._command = [
            *(sys.executable, "-m", "tests.telegram.bot_process"),
            *("--database", f"sqlite:///{self.database}", "--api", api or server.url),
            *options,
        ]
        self.server = server
        self.process: subprocess.Popen[bytes] | None = None

    def __enter__(self) -> BotProcess:
        self.start()
        return self

    def __exit__(self, *_: object) -> None:
        if self.process is not None and self.process.poll() is None:
            self.process.kill()
            self.process.wait()

    def start(self) -> None:
        with self._log.open("ab") as log:
            self.process = subprocess.Popen(self._command, cwd=ROOT, stdout=log, stderr=log)

    def kill(self) -> None:
        assert self.process is not None
        self.process.kill()
        self.process.wait()

    def stop(self, name: int = signal.SIGTERM) -> int:
        """The exit code."""
        assert self.process is not None
        self.process.send_signal(name)
        return self.process.wait(15)

    def exit_code(self, seconds: float = 20.0) -> int:
        assert self.process is not None
        return self.process.wait(seconds)

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
