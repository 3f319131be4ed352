"""How things stand for a person."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from bot.messages import Button
from bot.preferences import Preferences
from bot.replies.dates import DAYS, clock
from bot.replies.names import listed
from bot.replies.reply import UNDO, Reply, row
from bot.replies.screen import fitting
from bot.replies.small import order_words
from engine.progression.words import counted

SHOWN = 4


@dataclass(frozen=True, slots=True)
class Known:
    """`words` pairs a shorthand or settled word with what it means for her."""

    preferences: Preferences
    now: datetime
    coaches: Sequence[str]
    words: Sequence[tuple[str, str]]


def settings_card(known: Known) -> Reply:
    """One line a setting, each with the words that change it."""
    own = known.preferences
    times = ", ".join(f"{DAYS[day.value]} {clock(at)}" for day, at in own.training_times.items())
    lines = [
        f"Unit: {own.unit.value} (units lb)",
        f"Clock: {own.zone}, now {clock(known.now)} (zone London)",
        f"Reminders: {times or 'none'} (remind me 18:00 mon wed)",
        f"Quiet: {clock(own.quiet[0])} to {clock(own.quiet[1])} (quiet 22:00 7:30)",
        f"Sunday summary: {'on' if own.summary else 'off'} (summary off)",
        f"Receipts: {'reaction' if own.reactions else 'text'} (reactions off)",
    ]
    if own.load_first is not None:
        order = order_words(own.load_first)
        lines.append(f"Open pairs: {order} (forget {order})")
    if known.coaches:
        lines.append(f"Coach: {listed(known.coaches)} (leave coach)")
    shown = fitting(lambda most: [*lines, *_words(known.words, most)], 1, SHOWN)
    return Reply("\n".join(shown), row(Button("kg", "v1:unit:kg"), Button("lb", "v1:unit:lb")))


def _words(words: Sequence[tuple[str, str]], most: int) -> list[str]:
    told = [f"“{term}” means {answer} (forget {term})" for term, answer in words[:most]]
    return [*told, f"and {counted(len(words) - most, 'more word')}"] if len(words) > most else told


def switched(name: str, on: bool) -> Reply:
    """A setting switched."""
    return Reply(f"{name.capitalize()} {'on' if on else 'off'}.", row(UNDO))
