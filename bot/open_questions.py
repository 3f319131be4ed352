"""The question open with a person, whatever it is about: who answers it in words."""

from __future__ import annotations

from bot.turn import Turn
from storage.records import Question, QuestionState


def open_question(turn: Turn) -> Question | None:
    """The question open now."""
    return turn.store.questions.open(turn.athlete, turn.at)


def open_of_kind(turn: Turn, kind: str) -> Question | None:
    """The question open now, if it is of this kind."""
    question = open_question(turn)
    return question if question is not None and question.payload.get("kind") == kind else None


def close_of_kind(turn: Turn, *kinds: str) -> bool:
    """Whether the question open now was of one of these kinds; it is answered. Any other stays open."""
    question = open_question(turn)
    if question is None or question.payload.get("kind") not in kinds:
        return False
    turn.store.questions.close(question, QuestionState.ANSWERED)
    return True


def close(turn: Turn) -> None:
    """Nothing; the open question, if any, is answered."""
    question = open_question(turn)
    if question is not None:
        turn.store.questions.close(question, QuestionState.ANSWERED)
