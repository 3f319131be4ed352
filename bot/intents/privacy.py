"""privacy: what is kept, who sees it, how to take it along or have it erased."""

from __future__ import annotations

from bot.replies.privacy import privacy_card
from bot.turn import Turn
from engine.reading.values import Act


def privacy(turn: Turn, act: Act) -> None:
    """Nothing; the card is shown."""
    turn.say(privacy_card())
