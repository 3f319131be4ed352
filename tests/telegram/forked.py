"""Bots that start quickly, die at a given step, and are started again: for tests that kill them many times."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from multiprocessing.process import BaseProcess
from pathlib import Path
from typing import Any

from tests.telegram.forks import fork
from tests.telegram.running import rows_of
from tests.telegram.standin import StandIn


class MortalBot:
    """One bot and its database; `deaths` are the steps at which it dies, start by start, then it lives on."""

    def __init__(self, server: StandIn, folder: Path, deaths: Iterator[int], *options: str) -> None:
        self.server = server
        self.database = folder / "log.db"
        self.steps = folder / "steps"
        self.output = folder / "output.txt"
        self.killed = 0
        self._deaths = deaths
        self._options = options
        self._process: BaseProcess | None = None

    def start(self) -> None:
        options = ["--database", f"sqlite:///{self.database}", "--api", self.server.url, "--fast", *self._options]
        if death := next(self._deaths, 0):
            options += ["--die-at", str(death)]
        self._process = fork([*options, "--steps", str(self.steps)], self.output)

    def revive(self) -> None:
        """Start it again if it died, as it was meant to."""
        assert self._process is not None
        if not self._process.is_alive():
            assert self._process.exitcode == -signal.SIGKILL, self.output.read_text()[-3000:]
            self.killed += 1
            self.start()

    def end(self) -> None:
        if self._process is not None:
            self._process.kill()
            self._process.join()

    def rows(self, query: str) -> list[tuple[Any, ...]]:
        return rows_of(self.database, query)

    def is_settled(self) -> bool:
        """Everything that people did is stored (or else not confirmed), handled, and answered.

        Asked in this order: each is told by the one before it, so that nothing slips past between two questions.
        """
        if not self.server.idle:
            return False
        states = {state for (state,) in self.rows("SELECT state FROM inbound")}
        return states <= {"done", "failed"} and not self.rows("SELECT id FROM outbox WHERE state IN ('new', 'sending')")
