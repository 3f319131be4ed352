"""forget press: a shorthand or a settled doubt is taken back, so that the bot asks again."""

from __future__ import annotations

from bot.intents.pair_order import forgets_order
from bot.replies.small import forgot, knows_nothing
from bot.turn import Turn
from engine.catalogue.catalogue import normalise
from engine.reading.values import Act
from storage.records import ChangeKind


def forget(turn: Turn, act: Act) -> None:
    """Nothing; the word means what it means for everybody."""
    if forgets_order(turn, act.text):
        return
    word = normalise(act.text)
    settled = [one for one in turn.store.taught.settled(turn.athlete) if normalise(one.term) == word]
    if word not in turn.store.taught.shorthands(turn.athlete) and not settled:
        turn.say(knows_nothing(act.text))
        return
    change = turn.begin(ChangeKind.TEACH, f"forgetting “{word}”")
    turn.store.taught.forget(change, word)
    for one in settled:
        turn.store.taught.unsettle(change, one.doubt, one.term)
    turn.forget_lookups()
    turn.say(forgot(word))
