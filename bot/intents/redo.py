"""redo: brings back what the latest undo took away."""

from __future__ import annotations

from bot import steps
from bot.corrections import refresh_day
from bot.intents.undo import undo
from bot.replies.correction import difference, nothing_to_undo, redone
from bot.sets_back import asks_for_a_step, latest_deletion
from bot.turn import Turn
from engine.reading.values import Act


def redo(turn: Turn, act: Act) -> None:
    """Nothing; the change of the latest undo is in force again, or so many of them as she says.

    "Put it back" behind a deletion brings back what was deleted.
    """
    if steps.latest_undone(turn) is None and latest_deletion(turn) is not None and not asks_for_a_step(turn):
        undo(turn, Act("undo"))
        return
    for place in range(act.count or 1):
        if not _redo_one(turn) and place == 0:
            turn.say(nothing_to_undo("bring back"))
            return


def _redo_one(turn: Turn) -> bool:
    """Whether there was a change to bring back."""
    step = steps.latest_undone(turn)
    change = turn.store.changes.redo(step.athlete, by=turn.athlete) if step is not None else None
    if change is None:
        return False
    steps.settled(turn, change)
    touched = turn.store.changes.touched(change)
    turn.say(redone(change.label, difference((), touched.added, turn.today)))
    refresh_day(turn, (*touched.added, *touched.removed))
    return True
