"""Pain and warning signs: logging goes on, load is no longer pushed, a professional is named, urgent signs first.

The note is hers alone until she shares it. Until she says that it is over, the movement's load is held.
"""

from __future__ import annotations

from bot.replies.pain import noted
from bot.turn import Turn
from engine.values.ids import ExerciseName


def respond(turn: Turn, exercise: ExerciseName | None) -> None:
    """Nothing; she is told to stop or ease, and where help is."""
    turn.say(noted(exercise, turn.inbound.text))
