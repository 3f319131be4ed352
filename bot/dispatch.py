"""From the outcome of reading to what is done about it."""

from __future__ import annotations

from typing import assert_never

from bot import asking, corrections, pain, recording, talk
from bot.intents.registry import act_on
from bot.replies.talk import did_you_mean, read_as
from bot.turn import Turn
from engine.reading.values import Act, Asked, Correction, Logged, NoSets, Outcome

NEVER_GUESSED = frozenset(("erase", "quiet", "forget", "accept"))
"""What takes something away, or ends something, is not done on a mistyped word: it is asked. A mistyped undo is done:
redo brings it back, and the reply says so."""


def dispatch(turn: Turn, outcome: Outcome) -> None:
    """Nothing; the outcome of reading is acted on."""
    match outcome:
        case Logged():
            recording.log(turn, outcome)
        case Asked():
            asking.ask(turn, outcome)
        case NoSets():
            talk.no_sets(turn, outcome)
        case Act(mended=mended) if mended and outcome.name in NEVER_GUESSED:
            turn.say(did_you_mean(mended))
        case Act(mended=mended):
            if outcome.pain:
                pain.take_note(turn)  # ahead of what is asked for, so that undo takes that back
            turn.heading = "\n".join(filter(None, (turn.heading, read_as(mended) if mended else "")))
            act_on(turn, outcome)
        case Correction():
            corrections.correct(turn, outcome)
        case _:
            assert_never(outcome)
