"""bp means close grip bench: a shorthand of her own."""

from __future__ import annotations

from bot.replies.choices import unknown_exercise
from bot.replies.small import taught
from bot.turn import Turn
from engine.catalogue.catalogue import normalise
from engine.reading.values import Act
from storage.records import ChangeKind


def teach(turn: Turn, act: Act) -> None:
    """Nothing; the shorthand means this exercise from now on."""
    shorthand = normalise(act.text)
    if act.exercise is None or not shorthand:
        turn.say(unknown_exercise(act.text))
        return
    change = turn.begin(ChangeKind.TEACH, f"“{shorthand}” means {act.exercise}")
    turn.store.taught.shorthand(change, shorthand, act.exercise)
    turn.forget_lookups()
    turn.say(taught(shorthand, act.exercise))
