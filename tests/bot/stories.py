"""The conversations of tests/conversations, played for other tests than those of their wording."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from pathlib import Path

from bot.story_player import NoSuchButton, StoryPlayer
from storage.database import Database
from storage.envelopes import Delivery
from tests.databases import in_memory

FOLDER = Path(__file__).parents[1] / "conversations"
NAMES = tuple(sorted(path.parent.name for path in FOLDER.glob("*/story.txt")))


def play_story(database: Database, name: str) -> list[Delivery]:
    """Everything that went out while the story was played."""
    return list(_playing(database, name))


def _playing(database: Database, name: str) -> Iterator[Delivery]:
    folder = FOLDER / name
    files = {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}
    return StoryPlayer(database, files).play((folder / "story.txt").read_text("utf-8"))


@cache
def outgoing(name: str) -> tuple[Delivery, ...]:
    """The same on a database of its own, played once for all tests."""
    database = in_memory()
    out: list[Delivery] = []
    try:
        for delivery in _playing(database, name):
            out.append(delivery)
    except NoSuchButton:
        pass  # what went out before is looked at all the same; the conversation's own test says what is wrong
    database.close()
    return tuple(out)
