"""help: ten lines of examples."""

from __future__ import annotations

from bot.replies.help import help_text
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import Role


def help_(turn: Turn, act: Act) -> None:
    """Nothing; the examples for her roles are said."""
    turn.say(help_text(coach=Role.COACH in turn.me.roles))
