"""Each golden conversation, live over HTTP, leaves the database that its replay leaves; killed on the way, too.

Compared: every table, but for what only a live bot has (delivery states, the platform's ids, who polls).
"""

from __future__ import annotations

import itertools
import os
import random
import sqlite3
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from bot.story_player import StoryPlayer
from storage.database import open_database
from tests.telegram.play import LiveStory

CONVERSATIONS = Path(__file__).parents[1] / "conversations"
STORIES = sorted(CONVERSATIONS.glob("*/story.txt"))
LIVE_ONLY = {
    "person": {"source"},
    "inbound": {"source", "key", "received_at", "place", "document_reference", "handled_at", "message"},
    "outbox": {"source", "state", "attempts", "claimed_until", "platform_message", "sent_at", "error", "not_before"},
    "due": {"attempts", "claimed_until", "done_at"},
}
UNCOMPARED = {"source", "alembic_version", "sqlite_sequence"}


@pytest.fixture(autouse=True)
def _no_proxy(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("NO_PROXY", "127.0.0.1")


def _tables(database: Path) -> Iterator[tuple[str, list[str], list[tuple[Any, ...]]]]:
    """Every table with its columns and its rows, but for what only a live bot has."""
    connection = sqlite3.connect(f"file:{database}?mode=ro", uri=True)
    names = [
        name for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")
    ]
    for name in names:
        if name in UNCOMPARED:
            continue
        columns = [row[1] for row in connection.execute(f"PRAGMA table_info({name})")]
        kept = [column for column in columns if column not in LIVE_ONLY.get(name, ())]
        yield name, kept, sorted(connection.execute(f"SELECT {', '.join(kept)} FROM {name}"), key=repr)
    connection.close()


def _replayed(story: Path, folder: Path) -> Path:
    files = {path.name: path.read_bytes() for path in story.parent.iterdir() if path.is_file()}
    database = open_database(f"sqlite:///{folder / 'replayed.db'}")
    for _ in StoryPlayer(database, files).play(story.read_text("utf-8")):
        pass
    database.close()
    return folder / "replayed.db"


def _deaths(seed: int) -> Iterator[int]:
    """After how many steps each start dies: ten deaths in four weeks, with CHALKWIRE_TEST_THOROUGH a hundred."""
    chance = random.Random(seed)
    between = (14, 40) if os.environ.get("CHALKWIRE_TEST_THOROUGH") else (60, 150)
    return (chance.randint(*between) for _ in itertools.count())


@pytest.mark.parametrize("story", [pytest.param(story, id=story.parent.name) for story in STORIES])
def test_live_leaves_what_the_replay_leaves(story: Path, tmp_path: Path) -> None:
    _compare(story, tmp_path, LiveStory(story, tmp_path))


@pytest.mark.parametrize("seed", [1, 2])
def test_killed_on_the_way_four_weeks_end_the_same(seed: int, tmp_path: Path) -> None:
    story = CONVERSATIONS / "four_weeks" / "story.txt"
    live = LiveStory(story, tmp_path, _deaths(seed))
    _compare(story, tmp_path, live)

    assert live.bot.killed > 5


def _compare(story: Path, tmp_path: Path, live: LiveStory) -> None:
    live.play()
    expected = list(_tables(_replayed(story, tmp_path)))
    found = list(_tables(live.bot.database))

    assert [(name, columns) for name, columns, _ in found] == [(name, columns) for name, columns, _ in expected]
    for (name, columns, rows), (_, _, wanted) in zip(found, expected, strict=True):
        assert rows == wanted, f"table {name}: {columns}"
