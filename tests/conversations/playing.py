"""Plays a story of this folder and hands back what went out: shared by the conversation tests and by accept.py."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from bot.replay import as_json, as_text
from bot.story_player import StoryPlayer
from tests.databases import in_memory

HERE = Path(__file__).parent
STORIES = tuple(sorted(HERE.glob("*/story.txt")))


class Played:
    """One story played on a fresh database in memory."""

    def __init__(self, story: Path) -> None:
        database = in_memory()
        files = {path.name: path.read_bytes() for path in story.parent.iterdir() if path.is_file()}
        player = StoryPlayer(database, files)
        self.lines: list[dict[str, Any]] = []
        self.text = ""
        names: dict[int, str] = {}
        for delivery in player.play(story.read_text("utf-8")):
            names |= {one.chat: one.name for one in player.players.values()}
            at = player.wall_time(delivery)
            self.lines.append(as_json(delivery, names[delivery.chat], at))
            self.text += as_text(delivery, names[delivery.chat], at)
        with database.transaction() as store:
            self.failures = [row.text for row in store.inbox.failures()]
        database.close()

    def to(self, who: str) -> Iterator[dict[str, Any]]:
        """Everything that went to one person."""
        return (line for line in self.lines if line["to"] == who)
