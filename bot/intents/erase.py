"""erase: really erases all of hers, after the one confirmation in this product."""

from __future__ import annotations

from datetime import timedelta

from bot.replies.privacy import CONFIRM, confirm_erase, erased, kept
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import Question, QuestionState

OPEN_FOR = timedelta(minutes=30)
ERASE = "erase"
KEEP = ("keep my data", "keep", "keep it", "no", "cancel", "/cancel")


def erase(turn: Turn, act: Act) -> None:
    """Nothing; she is asked to type the words that do it."""
    turn.store.questions.ask(turn.athlete, {"kind": ERASE}, at=turn.at, expires_at=turn.at + OPEN_FOR)
    turn.say(confirm_erase(turn.store.sets.count(turn.athlete)))


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words were the confirmation, or that all be kept; anything else leaves all as it is."""
    said = " ".join(text.casefold().split()).rstrip(".!")
    if said != CONFIRM:
        turn.store.questions.close(question, QuestionState.DROPPED)
        if said in KEEP:
            turn.say(kept())
        return said in KEEP
    turn.erase_me(erased())
    return True
