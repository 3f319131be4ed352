"""undo: takes back exactly one change, the latest, and names it."""

from __future__ import annotations

from collections.abc import Sequence

from bot import pain, steps, zones
from bot.corrections import refresh_day
from bot.messages import InboundKind
from bot.open_question import waiting
from bot.replies.correction import (
    already_undone,
    days_of,
    difference,
    not_the_latest,
    nothing_to_undo,
    undo_again,
    undone,
)
from bot.replies.question import left_out, still_open
from bot.sets_back import gone_already
from bot.turn import LEFT_OUT, TOLD, Turn
from engine.reading.values import Act
from engine.values.ids import AthleteId
from engine.values.sets import SetRecord
from storage.records import Change, ChangeId, QuestionState


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
    """Nothing; the latest change is out of force, or so many of them as she says.

    Where nothing was changed today, what she takes back is the message that is asked about: it is left out. A pain told
    last is taken back alone: it holds the load of its lift, and no set was told with it.
    """
    if not act.count and (_left_out(turn) or _says_it_is_gone(turn) or _no_pain_after_all(turn)):
        return
    for place in range(act.count or 1):
        if not _undo_one(turn) and place == 0:
            turn.say(nothing_to_undo("undo"))
            return


def _left_out(turn: Turn) -> bool:
    """Whether a question waits and no change of today stands before it: its message is left out, and nothing else."""
    question, step = waiting(turn), steps.latest_undoable(turn)
    if question is None or (step is not None and zones.local(step.at, turn.preferences.zone).date() >= turn.today):
        return False
    turn.store.questions.close(question, QuestionState.DROPPED)
    pain.take_back(turn)  # told in the same message, if it was told last
    turn.kept[LEFT_OUT] = TOLD
    turn.say(left_out(question.payload["text"], step.label if step is not None else ""))
    return True


def _no_pain_after_all(turn: Turn) -> bool:
    note = None if turn.inbound.kind is InboundKind.TAP else pain.take_back(turn)
    if note is None:
        return False
    step = steps.latest_undoable(turn)
    turn.say(undone(note.label, [undo_again(step.label)] if step is not None else [], _waits(turn)))
    return True


def _says_it_is_gone(turn: Turn) -> bool:
    """Whether "delete it" was said of what is gone already: nothing is done, and that is said."""
    gone = None if turn.inbound.kind is InboundKind.TAP else gone_already(turn)
    if gone is not None:
        turn.say(gone)
    return gone is not None


def _undo_one(turn: Turn) -> bool:
    """Whether there was a change to take back."""
    step = steps.latest_undoable(turn)
    change = turn.store.changes.undo(step.athlete, turn.at, by=turn.athlete) if step is not None else None
    if change is None:
        return False
    steps.settled(turn, change)
    touched = turn.store.changes.touched(change)
    lines = difference((), touched.removed, turn.today)
    turn.say(undone(change.label, lines, _waits(turn), "" if lines else _days(turn, change, touched.added)))
    refresh_day(turn, (*touched.added, *touched.removed))
    return True


def _days(turn: Turn, change: Change, added: Sequence[SetRecord]) -> str:
    """The days of the sets, or when the step was taken; what stands again says its own."""
    taken = zones.local(change.at, turn.preferences.zone).date()
    return days_of([one.on for one in added] or [taken], turn.today)


def _waits(turn: Turn) -> str:
    """A message that is asked about is no change: undo goes past it, and says that it waits."""
    question = waiting(turn)
    return still_open(question.payload["text"]) if question is not None else ""
