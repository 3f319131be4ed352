"""redo: brings back what the latest undo took away."""

from __future__ import annotations

from bot import steps
from bot.corrections import refresh_day
from bot.replies.correction import difference, nothing_to_undo, redone
from bot.turn import Turn
from engine.reading.values import Act


def redo(turn: Turn, act: Act) -> None:
    """Nothing; the change of the latest undo is in force again."""
    step = steps.latest_undone(turn)
    change = turn.store.changes.redo(step.athlete, by=turn.athlete) if step is not None else None
    if change is None:
        turn.say(nothing_to_undo("bring back"))
        return
    steps.settled(turn, change)
    touched = turn.store.changes.touched(change)
    turn.say(redone(change.label, difference((), touched.added, turn.today)))
    refresh_day(turn, (*touched.added, *touched.removed))
