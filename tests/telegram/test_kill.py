"""Killed between any two steps and started again, the bot ends where an undisturbed one ends.

A step is a commit or an HTTP request, before and after (see bot_process). At a step of a short story the process is
killed, started again, killed once more after as many steps, and started again. Then every message has been handled
once, nothing was recorded twice, and no answer was sent twice.

The steps are drawn, one from each twelfth of the story and the same ones each time; with CHALKWIRE_TEST_THOROUGH set,
every step there is.
"""

from __future__ import annotations

import os
import random
import time
from collections import Counter
from collections.abc import Callable, Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest

from tests.telegram.forked import MortalBot
from tests.telegram.standin import StandIn

IRIS, OLE = 7, 8
STORY: tuple[Callable[[StandIn], object], ...] = (
    lambda server: (server.says(IRIS, "row 3x12 55"), server.says(OLE, "squat 5x5 100"), server.says(IRIS, "same")),
    lambda server: (server.edits(IRIS, 1, "row 3x12 57.5"), server.says(OLE, "react")),
    lambda server: server.taps_data(IRIS, 100_001, "v1:keep"),
    lambda server: (server.sends_file(OLE, "plan.csv", b"mon,row"), server.says(IRIS, "long 500")),
)
"""What happens at once, then what happens when all of that is handled and answered."""


class Run(MortalBot):
    """The story, played on a bot that may die."""

    def play(self) -> None:
        self.start()
        for part in STORY:
            part(self.server)
            self._settle()

    def _settle(self) -> None:
        limit = time.monotonic() + 30
        while not self.is_settled():
            assert time.monotonic() < limit, (self.rows("SELECT * FROM inbound"), self.rows("SELECT * FROM outbox"))
            self.revive()
            time.sleep(0.01)

    def kept(self) -> list[tuple[Any, ...]]:
        """All that was recorded. Two chats are handled side by side, so only the order within each is fixed."""
        return self.rows(
            "SELECT person.chat, note.text, note.message FROM note"
            " JOIN person ON person.id = note.athlete_id ORDER BY person.chat, note.id"
        )


@pytest.fixture(autouse=True)
def _database_once(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("NO_PROXY", "127.0.0.1")


def _played(folder: Path, deaths: tuple[int, ...]) -> Iterator[Run]:
    with StandIn() as server:
        run = Run(server, folder, iter(deaths))
        try:
            run.play()
            yield run
        finally:
            run.end()


@pytest.fixture(scope="module")
def undisturbed(tmp_path_factory: pytest.TempPathFactory) -> tuple[int, list[tuple[Any, ...]]]:
    """How many steps the story takes, and what is recorded in the end."""
    for run in _played(tmp_path_factory.mktemp("undisturbed"), ()):
        return int(run.steps.read_text()), run.kept()
    raise AssertionError("unreachable")


def test_the_story_is_what_it_seems(undisturbed: tuple[int, list[tuple[Any, ...]]]) -> None:
    steps, kept = undisturbed

    assert [text for _, text, _ in kept] == [
        *("row 3x12 55", "same", "edit: row 3x12 57.5", "tap: v1:keep", "long 500"),
        *("squat 5x5 100", "react", "file plan.csv: 7 bytes"),
    ]
    assert steps > 60


DRAWN, SHARES = 12, 4


def _deaths(steps: int) -> list[int]:
    """The steps at which to kill."""
    if os.environ.get("CHALKWIRE_TEST_THOROUGH"):
        return list(range(1, steps + 1))
    chance = random.Random(19)
    edges = [1 + steps * part // DRAWN for part in range(DRAWN + 1)]
    return [chance.randrange(low, high) for low, high in pairwise(edges)]


@pytest.mark.parametrize("share", range(SHARES))
def test_killed_anywhere_it_ends_at_the_same_place(
    undisturbed: tuple[int, list[tuple[Any, ...]]], tmp_path: Path, share: int
) -> None:
    steps, kept = undisturbed
    deaths = _deaths(steps)[share::SHARES]
    killed = 0
    for death in deaths:
        folder = tmp_path / str(death)
        folder.mkdir()
        for run in _played(folder, (death, death)):
            assert run.kept() == kept, f"killed at step {death}"
            _nothing_twice(run, death)
            killed += run.killed

    # A run that happens to fetch more at once has fewer steps and ends before a late death; the early ones happen.
    assert killed > len(deaths) // 2


def _nothing_twice(run: Run, death: int) -> None:
    texts = Counter(text for chat in (IRIS, OLE) for shown in run.server.chats[chat] for text in shown.versions)
    twice = {text[:40]: times for text, times in texts.items() if times > 1 and text != "heard again: row 3x12 57.5"}

    assert not twice, f"killed at step {death}"
    assert {state for (state,) in run.rows("SELECT state FROM outbox")} <= {"sent", "unknown"}
