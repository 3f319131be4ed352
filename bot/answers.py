"""Who answers an open question in words, by what it is about."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from bot import asking, imports, mending, onboarding, plan_or_sets, planning, proposals, swap_offers
from bot.intents import accept, erase, plan_for, swap
from bot.open_question import SETS
from bot.turn import Turn
from storage.records import Question


def answered(turn: Turn, text: str) -> bool:
    """Whether the words were an answer to the open question, and were dealt with as one."""
    open_question = turn.store.questions.open(turn.athlete, turn.at)
    if open_question is None:
        return False
    answerer = ANSWERERS.get(open_question.payload["kind"])
    return answerer is not None and answerer(turn, open_question, text)


ANSWERERS: Mapping[str, Callable[[Turn, Question, str], bool]] = {
    SETS: asking.answered_sets,
    onboarding.ASK_ZONE: onboarding.answered,
    onboarding.ASK_UNIT: onboarding.answered,
    erase.ERASE: erase.answered,
    accept.CONSENT: accept.answered,
    swap.SWAP: swap.answered,
    swap_offers.OFFER: swap_offers.answered,
    mending.CHOICE: plan_or_sets.answered,
    plan_for.PLAN_FOR: planning.plan_text_for,
    proposals.PROPOSAL: proposals.answered,
    imports.IMPORT: imports.answered,
}
"""Who answers an open question in words, by its kind."""
