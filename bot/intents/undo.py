"""undo: takes back exactly one change, the latest, and names it."""

from __future__ import annotations

from bot import steps
from bot.corrections import refresh_day
from bot.open_question import waiting
from bot.replies.correction import already_undone, difference, not_the_latest, nothing_to_undo, undone
from bot.replies.question import still_open
from bot.turn import Turn
from engine.reading.values import Act
from engine.values.ids import AthleteId
from storage.records import ChangeId


def undo_own(turn: Turn, athlete: AthleteId, wanted: ChangeId) -> None:
    """Nothing; the change of a button is out of force, if it is the latest; else why not is said."""
    known = turn.store.changes.get(athlete, wanted)
    latest = steps.latest_undoable(turn)
    if known is None or known.by != turn.athlete or known.undone_at is not None:
        turn.say(already_undone())
    elif latest is None or (latest.athlete, latest.id) != (athlete, wanted):
        turn.say(not_the_latest(known.label, latest.label if latest is not None else ""))
    else:
        undo(turn, Act("undo"))


def undo(turn: Turn, act: Act) -> None:
    """Nothing; the latest change is out of force, or so many of them as she says."""
    for place in range(act.count or 1):
        if not _undo_one(turn) and place == 0:
            turn.say(nothing_to_undo("undo"))
            return


def _undo_one(turn: Turn) -> bool:
    """Whether there was a change to take back."""
    step = steps.latest_undoable(turn)
    change = turn.store.changes.undo(step.athlete, turn.at, by=turn.athlete) if step is not None else None
    if change is None:
        return False
    steps.settled(turn, change)
    touched = turn.store.changes.touched(change)
    lines = difference((), touched.removed, turn.today)
    # A message that is asked about is no change: undo goes past it, and says that it waits.
    if (question := waiting(turn)) is not None:
        lines.append(still_open(question.payload["text"]))
    turn.say(undone(change.label, lines))
    refresh_day(turn, (*touched.added, *touched.removed))
    return True
