"""note ...: words kept beside the log."""

from __future__ import annotations

from bot.replies.small import note_kept
from bot.replies.trouble import needs
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import ChangeKind

LONGEST = 1_000


def note(turn: Turn, act: Act) -> None:
    """Nothing; the note is kept."""
    text = act.text.strip()
    if not text:
        turn.say(needs("words to keep", "note: grip slipped on the last set"))
        return
    change = turn.begin(ChangeKind.NOTE, "the note")
    exercise = act.exercise or session_of(turn).latest_exercise
    turn.store.notes.add(
        change, text[:LONGEST], on=turn.today, at=turn.at, exercise=exercise, message=turn.inbound.message
    )
    turn.say(note_kept(exercise))
