"""The conversations of tests/conversations, played for other tests than those of their wording."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from bot.story_player import StoryPlayer
from storage.database import Database, open_database
from storage.envelopes import Delivery

FOLDER = Path(__file__).parents[1] / "conversations"
NAMES = tuple(sorted(path.parent.name for path in FOLDER.glob("*/story.txt")))


def play_story(database: Database, name: str) -> list[Delivery]:
    """Everything that went out while the story was played."""
    folder = FOLDER / name
    files = {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}
    return list(StoryPlayer(database, files).play((folder / "story.txt").read_text("utf-8")))


@cache
def outgoing(name: str) -> tuple[Delivery, ...]:
    """The same on a database of its own, played once for all tests."""
    database = open_database("sqlite://")
    out = tuple(play_story(database, name))
    database.close()
    return out
