"""First contact: who the bot is and the usual cautions, said once, whatever her first words are."""

from __future__ import annotations

from bot.preferences import WELCOMED
from bot.replies.welcome import cautions
from bot.turn import Turn
from engine.reading.values import Act, Outcome
from storage.records import ChangeKind


def first_contact(turn: Turn, outcome: Outcome | None = None) -> None:
    """Nothing; someone who began without /start has seen the cautions."""
    if turn.preferences.welcomed or (isinstance(outcome, Act) and outcome.name in ("start", "erase")):
        return
    mark(turn)
    turn.say(cautions())


def mark(turn: Turn) -> None:
    """Nothing; the cautions count as said."""
    change = turn.begin(ChangeKind.ASIDE, "the first contact")
    turn.store.settings.put(change, WELCOMED, True)
    turn.forget_lookups()
