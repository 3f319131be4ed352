"""What holds no sets: pain is answered, set-like slips are said back, plain talk is kept as a note or let pass."""

from __future__ import annotations

from bot import pain
from bot.examples import example_for
from bot.open_question import waiting
from bot.replies.correction import wanted_back
from bot.replies.question import still_open
from bot.replies.talk import announced_lift, kept, kept_beside, lost
from bot.replies.trouble import not_read
from bot.sets_back import latest_deletion
from bot.turn import Turn
from engine.reading.announced_lift import lift_announced
from engine.reading.announced_load import load_told
from engine.reading.corrections.after_all import WAS_FINE
from engine.reading.values import Context, NoSets
from engine.values.ids import ExerciseName
from storage.records import ChangeKind

LONGEST_NOTE = 1_000


def no_sets(turn: Turn, outcome: NoSets) -> None:
    """Nothing; nothing was logged, and the reply says so where she might think otherwise."""
    if pain.is_over(turn):
        return
    if outcome.pain:
        pain.take_note(turn)
    elif outcome.why == WAS_FINE and (deletion := latest_deletion(turn)):
        turn.say(wanted_back(deletion.label))
    elif outcome.unread:
        if _announces(turn) or load_told(turn.inbound.text, Context(turn.unit, turn.now), turn.catalogue):
            keep(turn)
        turn.say(not_read(outcome.unread, example_for(turn, outcome.unread[0].text)))
    elif turn.inbound.text.rstrip().endswith("?"):
        turn.say(lost(example_for(turn)))
    else:
        _note(turn)


def _announces(turn: Turn) -> tuple[ExerciseName, ...]:
    """The lift that the message names, with no sets of it."""
    plain = Context(turn.unit, turn.now)
    return lift_announced(turn.inbound.text, plain, turn.catalogue)


def _note(turn: Turn) -> None:
    """Nothing typed is thrown away."""
    keep(turn)
    announced, question = _announces(turn), waiting(turn)
    if len(announced) == 1:
        turn.say(announced_lift(announced[0]))
    elif question is not None:
        turn.say(kept_beside(still_open(question.payload["text"])))
    else:
        turn.say(kept(example_for(turn)))


def keep(turn: Turn) -> None:
    """The words as a note, which is no step of undo: undo is for sets."""
    change = turn.begin(ChangeKind.ASIDE, "the note")
    text = turn.inbound.text[:LONGEST_NOTE]
    turn.store.notes.add(change, text, on=turn.today, at=turn.at, message=turn.inbound.message)
