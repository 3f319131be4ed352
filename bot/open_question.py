"""The question about sets that waits for an answer."""

from __future__ import annotations

from bot.turn import Turn
from storage.records import Question

SETS = "sets"


def waiting(turn: Turn) -> Question | None:
    """The question about sets that is open now."""
    known = turn.store.questions.open(turn.athlete, turn.at)
    return known if known is not None and known.payload["kind"] == SETS else None
