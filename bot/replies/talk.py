"""Replies to what holds no sets."""

from __future__ import annotations

from bot.replies.reply import Reply
from bot.replies.trouble import EXAMPLE


def kept() -> Reply:
    """Kept as a note."""
    return Reply(f"Kept as a note, no sets saved. A set looks like {EXAMPLE}")


def lost() -> Reply:
    """A question that no intent answers."""
    return Reply(
        f"I only log sets and tell what is next. Nothing saved. A set looks like {EXAMPLE}. /help shows the rest."
    )
