"""From the outcome of reading to what is done about it."""

from __future__ import annotations

from typing import assert_never

from bot import asking, corrections, recording, talk
from bot.intents.registry import act_on
from bot.turn import Turn
from engine.reading.values import Act, Asked, Correction, Logged, NoSets, Outcome


def dispatch(turn: Turn, outcome: Outcome) -> None:
    """Nothing; the outcome of reading is acted on."""
    match outcome:
        case Logged():
            recording.log(turn, outcome)
        case Asked():
            asking.ask(turn, outcome)
        case NoSets():
            talk.no_sets(turn, outcome)
        case Act():
            act_on(turn, outcome)
        case Correction():
            corrections.correct(turn, outcome)
        case _:
            assert_never(outcome)
