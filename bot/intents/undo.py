"""undo: takes back exactly one change, the latest, and names it."""

from __future__ import annotations

from bot import steps
from bot.corrections import refresh_day
from bot.replies.correction import difference, nothing_to_undo, undone
from bot.turn import Turn
from engine.reading.values import Act


def undo(turn: Turn, act: Act) -> None:
    """Nothing; the latest change is out of force."""
    step = steps.latest_undoable(turn)
    change = turn.store.changes.undo(step.athlete, turn.at, by=turn.athlete) if step is not None else None
    if change is None:
        turn.say(nothing_to_undo("undo"))
        return
    steps.settled(turn, change)
    touched = turn.store.changes.touched(change)
    turn.say(undone(change.label, difference((), touched.removed, turn.today)))
    refresh_day(turn, (*touched.added, *touched.removed))
