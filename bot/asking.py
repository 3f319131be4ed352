"""Ask-back: when a message can be read in several ways, nothing is recorded until one is chosen.

The answer may be a tap, a word, or the set told again; it records against the message the question was about. Chat
in between leaves the question open; "forget it", or another set, leaves its message unrecorded.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

from bot.context import context_of
from bot.recording import label_of, receipt, record
from bot.replies.question import dropped, question, too_late
from bot.set_json import asked_from_json, asked_to_json
from bot.turn import Turn
from engine.reading import read, read_answer
from engine.reading.values import Act, Asked, Chosen, Correction, Doubt, Dropped, Logged, NotAnAnswer, StillOpen
from storage.records import ChangeKind, Question, QuestionId, QuestionState

OPEN_FOR = timedelta(minutes=30)
SETS = "sets"


def ask(turn: Turn, asked: Asked, message: int | None = None, replaces: bool = False) -> None:
    """Nothing; the question is said, and what it is about waits for the answer."""
    payload: dict[str, Any] = {"kind": SETS, "asked": asked_to_json(asked), "on": turn.today.isoformat()}
    payload |= {"replaces": replaces, "text": turn.inbound.text}
    about = turn.inbound.message if message is None else message
    opened = turn.store.questions.ask(turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR, message=about)
    turn.say(question(asked, opened.id, turn.inbound.text, stands=replaces))


def answered_sets(turn: Turn, open_question: Question, text: str) -> bool:
    """Whether the words chose a reading, left it out, or narrowed it down; anything else is a message of its own."""
    asked = asked_from_json(open_question.payload["asked"])
    context = context_of(turn)
    answer = read_answer(text, asked, context, turn.catalogue)
    match answer:
        case Chosen(reading=reading):
            settle(turn, open_question, asked, Logged(reading.sets, asked.on, asked.note, asked.pain))
            return True
        case StillOpen(asked=narrower):
            payload = {**open_question.payload, "asked": asked_to_json(narrower)}
            turn.store.questions.update(open_question, payload)
            turn.say(question(narrower, open_question.id, open_question.payload["text"]))
            return True
        case Dropped():
            turn.store.questions.close(open_question, QuestionState.DROPPED)
            turn.say(dropped(open_question.payload["text"]))
            return True
        case NotAnAnswer():
            outcome = read(text, context, turn.catalogue)
            if isinstance(outcome, Logged | Asked | Correction) or (
                isinstance(outcome, Act) and outcome.name == "undo"
            ):
                turn.store.questions.close(open_question, QuestionState.DROPPED)
            return False


def tapped(turn: Turn, question_id: int, place: int) -> None:
    """Nothing; the reading behind a button is recorded, unless the question is settled already."""
    known = turn.store.questions.get(turn.athlete, QuestionId(question_id))
    if known is None or known.state is not QuestionState.OPEN:
        turn.say(too_late(known.payload["text"] if known else ""))
        return
    asked = asked_from_json(known.payload["asked"])
    if place >= len(asked.readings):
        turn.store.questions.close(known, QuestionState.DROPPED)
        turn.say(dropped(known.payload["text"]))
        return
    settle(turn, known, asked, Logged(asked.readings[place].sets, asked.on, asked.note, asked.pain))


def settle(turn: Turn, known: Question, asked: Asked, chosen: Logged) -> None:
    """Nothing; the chosen reading is recorded against the message that raised the question, and taught."""
    turn.store.questions.close(known, QuestionState.ANSWERED)
    change = turn.begin(ChangeKind.ANSWER, label_of(chosen.sets))
    if known.payload["replaces"]:
        standing = turn.store.sets.of_message(turn.athlete, known.message)
        turn.store.sets.remove(change, [record.id for record in standing])
    day = date.fromisoformat(known.payload["on"])
    record(turn, change, chosen, known.message, on=day)
    lines = learn(turn, change, asked, chosen)
    receipt(turn, chosen, known.message, lines)


def learn(turn: Turn, change: Any, asked: Asked, chosen: Logged) -> list[str]:
    """What the bot will take for granted from now on, in words; empty where the answer teaches nothing."""
    match asked.doubt:
        case Doubt.EXERCISE if asked.term:
            exercise = chosen.sets[0].exercise
            turn.store.taught.settle(change, asked.doubt.value, asked.term, exercise)
            return [f"From now on “{asked.term}” means {exercise}. /settings takes it back."]
        case Doubt.NUMBERS if asked.term:
            turn.store.taught.settle(change, asked.doubt.value, asked.term, asked.term)
            return []
        case _:
            return []
