"""erase: really erases all of hers, after the one confirmation in this product."""

from __future__ import annotations

from datetime import timedelta

from bot.due_kind import Moment
from bot.preferences import preferences
from bot.replies.privacy import CONFIRM, confirm_erase, erased, kept
from bot.scheduled import digest
from bot.turn import Turn
from engine.reading.values import Act
from storage.envelopes import Delivery, Lane, OutboxState
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
    waiting = [told for told in turn.store.belongings.told_beside(turn.athlete) if told.state is OutboxState.NEW]
    turn.erase_me(erased())
    for told in waiting:
        _tell_anew(turn, told)
    return True


def _tell_anew(turn: Turn, told: Delivery) -> None:
    """A weekly digest that waited to be sent with her in it is made again without her."""
    if told.lane is Lane.UNPROMPTED:
        coach = turn.store.people.get(told.athlete)
        own = preferences(turn.store.settings.all(coach.id), turn.default_zone)
        moment = Moment(turn.store, turn.memory, coach, own, told.at)
        digest.send(moment, moment.today)
