"""erase: really erases all of hers, after the one confirmation in this product."""

from __future__ import annotations

from datetime import timedelta

from bot.replies.privacy import CONFIRM, confirm_erase, erased
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import Question, QuestionState

OPEN_FOR = timedelta(minutes=30)
ERASE = "erase"


def erase(turn: Turn, act: Act) -> None:
    """Nothing; she is asked to type the words that do it."""
    turn.store.questions.ask(turn.athlete, {"kind": ERASE}, at=turn.at, expires_at=turn.at + OPEN_FOR)
    turn.say(confirm_erase(turn.store.sets.count(turn.athlete)))


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words were the confirmation; anything else leaves all as it is."""
    if " ".join(text.casefold().split()) != CONFIRM:
        turn.store.questions.close(question, QuestionState.DROPPED)
        return False
    turn.erase_me(erased())
    return True
