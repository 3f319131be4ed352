"""Replies to what holds no sets."""

from __future__ import annotations

from bot.replies.reply import Reply
from bot.replies.trouble import quoted
from engine.values.ids import ExerciseName


def kept(example: str) -> Reply:
    """Kept as a note."""
    return Reply(f"Kept as a note, no sets saved. A set looks like {example}")


def kept_beside(waits: str) -> Reply:
    """Kept as a note; `waits`: what is still asked about sets."""
    return Reply(f"Kept as a note.\n{waits}")


def announced_lift(exercise: ExerciseName) -> Reply:
    """ "bench": the numbers that follow are of that lift."""
    return Reply(f"{exercise.capitalize()}: send its sets. A set looks like 60x8")


def lost(example: str) -> Reply:
    """A question that no intent answers."""
    return Reply(
        f"I only log sets and tell what is next. Nothing saved. A set looks like {example}. /help shows the rest."
    )


def read_as(mended: str) -> str:
    """What a mistyped request was read as, over its answer."""
    return f"Read as: {mended}"


def did_you_mean(mended: str) -> Reply:
    """A mistyped request that takes something away: nothing was done."""
    return Reply(f"Did you mean {quoted(mended)}? Nothing changed. If so, send: {mended}")
