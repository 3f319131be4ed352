"""The answer to: a line of the plan, or sets you did?"""

from __future__ import annotations

from dataclasses import replace

from bot import mending
from bot.context import context_of
from bot.dispatch import dispatch
from bot.replies.trouble import stale_button
from bot.turn import Turn
from engine.reading import read
from storage.records import Question, QuestionId, QuestionState

SETS = frozenset(("sets", "set", "sets i did", "i did it", "did it", "done", "log it", "training"))
PLAN = frozenset(("plan", "plan line", "the plan", "line", "line of the plan", "it is the plan"))


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words said which; anything else goes its own way and the question stays."""
    said = " ".join(text.casefold().split()).rstrip(".!")
    if said in SETS or said in PLAN:
        _settle(turn, question, as_plan=said in PLAN)
    return said in SETS or said in PLAN


def tapped(turn: Turn, arguments: list[str]) -> None:
    """Nothing; the button says which."""
    number = int(arguments[0]) if len(arguments) == 2 and arguments[0].isdecimal() else 0
    question = turn.store.questions.get(turn.athlete, QuestionId(number))
    kind = question.payload.get("kind") if question is not None else ""
    if question is None or kind != mending.CHOICE or question.state is QuestionState.ANSWERED:
        turn.say(stale_button())
    else:
        _settle(turn, question, as_plan=arguments[1] == "plan")


def _settle(turn: Turn, question: Question, *, as_plan: bool) -> None:
    turn.store.questions.close(question, QuestionState.ANSWERED)
    if as_plan:
        if not mending.take(turn, question):
            turn.say(stale_button())
        return
    # Recorded as if just said, against the message that told the sets.
    turn.inbound = replace(turn.inbound, text=str(question.payload["text"]), message=question.message)
    dispatch(turn, read(turn.inbound.text, context_of(turn), turn.catalogue))
