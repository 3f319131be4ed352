"""What holds no sets: pain is answered, set-like slips are said back, plain talk is kept as a note or let pass."""

from __future__ import annotations

from bot import pain
from bot.replies.talk import kept, lost
from bot.replies.trouble import not_read
from bot.turn import Turn
from engine.reading.values import NoSets
from storage.records import ChangeKind

LONGEST_NOTE = 1_000


def no_sets(turn: Turn, outcome: NoSets) -> None:
    """Nothing; nothing was logged, and the reply says so where she might think otherwise."""
    if pain.is_over(turn):
        return
    if outcome.pain:
        pain.take_note(turn)
    elif outcome.unread:
        turn.say(not_read(outcome.unread))
    elif turn.inbound.text.rstrip().endswith("?"):
        turn.say(lost())
    else:
        _note(turn)


def _note(turn: Turn) -> None:
    """Nothing typed is thrown away. A note is no step of undo: undo is for sets."""
    change = turn.begin(ChangeKind.ASIDE, "the note")
    text = turn.inbound.text[:LONGEST_NOTE]
    turn.store.notes.add(change, text, on=turn.today, at=turn.at, message=turn.inbound.message)
    turn.say(kept())
