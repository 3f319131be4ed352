"""A demo: an invented athlete three weeks into an eight-week block, her coach, and a log with the usual bumps.

The story is told in days before today, and the plan's weekdays are turned so that today is its first training day.
"""

from __future__ import annotations

from datetime import date, datetime, timedelta
from importlib import resources

from bot import zones
from bot.story_player import StoryPlayer
from storage.database import Database

DEMO_ATHLETE = "tove"
DAY_NAMES = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")


def seed(database: Database, now: datetime, zone: str, source: str = "terminal") -> None:
    """Nothing; the database holds the demo's three weeks."""
    today = zones.local(now, zone).date()
    files = resources.files("bot.demo")
    plan = turned(files.joinpath("plan.txt").read_text("utf-8"), today)
    story = dated(files.joinpath("story.txt").read_text("utf-8"), today)
    player = StoryPlayer(database, {"plan.txt": plan.encode("utf-8")}, source=source, zone=zone)
    for _ in player.play(turned(story, today)):
        pass


def turned(text: str, today: date) -> str:
    """The text with its weekdays turned so that its Monday is today's weekday."""
    by_name = {name: DAY_NAMES[(place + today.weekday()) % 7] for place, name in enumerate(DAY_NAMES)}
    return "\n".join(_turned_line(line, by_name) for line in text.splitlines())


def _turned_line(line: str, by_name: dict[str, str]) -> str:
    if not line.startswith("day ") and "remind me" not in line:
        return line
    head, colon, rest = line.rpartition(": ") if line.startswith("day ") else ("", "", line)
    words = (head or rest).split(" ")
    turned_words = " ".join(by_name.get(word, word) for word in words)
    return f"{turned_words}{colon}{rest}" if head else turned_words


def dated(story: str, today: date) -> str:
    """The transcript with the day of each line in place of its distance from today."""
    lines = []
    for line in story.splitlines():
        away, _, rest = line.partition(" ")
        lines.append(f"{today + timedelta(days=int(away))} {rest}" if away.lstrip("-").isdecimal() else line)
    return "\n".join(lines)
