"""Ask-back: when a message can be read in several ways, nothing is recorded until one is chosen.

The answer may be a tap, a word, or the set told again; it records against the message the question was about. Chat
in between leaves the question open; "forget it", or another set, leaves its message unrecorded.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date, timedelta
from typing import Any, assert_never

from bot import pain
from bot.context import context_of
from bot.examples import example_for
from bot.intents import pair_order
from bot.open_question import SETS
from bot.recording import label_of, pained_lift, receipt, record
from bot.replies.pain import held
from bot.replies.question import dropped, never_answered, question, too_late
from bot.set_json import asked_from_json, asked_to_json
from bot.turn import LEFT_OUT, TOLD, Turn
from engine.catalogue.catalogue import normalise
from engine.reading import read, read_answer
from engine.reading.answers.answering import numbers_left, taught_by
from engine.reading.answers.one_by_one import first_in_doubt, with_first_settled
from engine.reading.pain_told import pain_is_told
from engine.reading.values import Act, Asked, Correction, Doubt, Dropped, Logged, NotAnAnswer, Settled, StillOpen
from engine.values.ids import ExerciseName
from storage.records import Change, ChangeKind, Question, QuestionId, QuestionState

OPEN_FOR = timedelta(hours=3)
"""As long as a session and the way home take. Common practice, no source."""


def ask(turn: Turn, asked: Asked, message: int | None = None, replaces: bool = False) -> None:
    """Nothing; the question is said, and what it is about waits for the answer."""
    payload: dict[str, Any] = {"kind": SETS, "asked": asked_to_json(asked), "on": turn.today.isoformat()}
    payload |= {"replaces": replaces, "text": turn.inbound.text}
    about = turn.inbound.message if message is None else message
    opened = turn.store.questions.ask(turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR, message=about)
    example = example_for(turn, asked.typed or asked.term) if not asked.readings else ""
    if asked.pain:
        pain.note_on(turn, _only_lift(asked), about, pain.PAIN_NOTE)  # whether it is ever answered or not
    shown = first_in_doubt(asked, turn.catalogue)
    turn.say(question(shown, opened.id, turn.inbound.text, stands=replaces, example=example))


def _only_lift(asked: Asked) -> ExerciseName | None:
    """The lift of all readings; None where they are of several, and where nobody knows."""
    names = {done.exercise for reading in asked.readings for done in reading.sets}
    return names.pop() if len(names) == 1 else None


def answered_sets(turn: Turn, open_question: Question, text: str) -> bool:
    """Whether the words chose a reading, left it out, or narrowed it down; anything else is a message of its own."""
    asked = asked_from_json(open_question.payload["asked"])
    context = context_of(turn)
    if (told := _by_order(turn, open_question, asked, text)) is not None:
        settle(turn, open_question, told, {})
        return True
    answer = read_answer(text, asked, context, turn.catalogue)
    match answer:
        case Settled(logged, teaches):
            hurts = pain_is_told(text, context, turn.catalogue)
            settle(turn, open_question, replace(logged, pain=True) if hurts else logged, teaches)
            return True
        case StillOpen():
            return _left_open(turn, open_question, asked, answer, text)
        case Dropped():
            if pain_is_told(text, context, turn.catalogue):
                pain.take_note(turn)
            turn.store.questions.close(open_question, QuestionState.DROPPED)
            turn.say(dropped(open_question.payload["text"], stands=open_question.payload["replaces"]))
            return True
        case NotAnAnswer() if _only_asks(turn, text):
            return False
        case NotAnAnswer():
            turn.store.questions.close(open_question, QuestionState.DROPPED)
            turn.kept[LEFT_OUT] = open_question.payload["text"]
            return False
        case _:
            assert_never(answer)


def _left_open(turn: Turn, open_question: Question, asked: Asked, answer: StillOpen, text: str) -> bool:
    """Whether the question was asked again, about what is left of it; else the words are a message of their own."""
    if answer.asked != asked:
        payload = {**open_question.payload, "asked": asked_to_json(answer.asked)}
        turn.store.questions.update(open_question, payload)
    elif not answer.again:
        return _asked_again(turn, open_question, asked, text)
    shown = first_in_doubt(answer.asked, turn.catalogue)
    turn.say(question(shown, open_question.id, open_question.payload["text"]))
    return True


def _asked_again(turn: Turn, open_question: Question, asked: Asked, text: str) -> bool:
    """Whether the same was asked again: words that would only be asked about in turn, numbers without a lift."""
    meant = read(text, context_of(turn), turn.catalogue)
    again = isinstance(meant, Asked) and meant.doubt is Doubt.EXERCISE and not meant.readings
    if again and asked.readings:
        shown = first_in_doubt(asked, turn.catalogue)
        turn.say(question(shown, open_question.id, open_question.payload["text"]))
    return again and bool(asked.readings)


def _only_asks(turn: Turn, text: str) -> bool:
    """Whether the words log no sets, as a request or a correction of what stands: the question can wait meanwhile."""
    meant = read(text, context_of(turn), turn.catalogue)
    return isinstance(meant, Correction) or (isinstance(meant, Act) and meant.name != "repeat" and not meant.as_planned)


def tell_lapsed(turn: Turn, before: Question | None) -> None:
    """Nothing; what was asked before this message, and was crowded out by it, is named as not saved."""
    known = turn.store.questions.get(turn.athlete, before.id) if before is not None else None
    if known is not None and known.state is QuestionState.DROPPED and turn.kept.get(LEFT_OUT) != TOLD:
        turn.say(never_answered(known.payload["text"]))


def _by_order(turn: Turn, known: Question, asked: Asked, text: str) -> Logged | None:
    """The reading that "load first" or "reps first" chooses; None for other words, or where the order tells nothing."""
    meant = read(text, context_of(turn), turn.catalogue)
    if asked.doubt is not Doubt.NUMBERS or not isinstance(meant, Act) or meant.name not in ("load_first", "reps_first"):
        return None
    told = pair_order.read_so(turn, known.payload["text"], asked, first=meant.name == "load_first")
    return told if told is not None and told.sets in [reading.sets for reading in asked.readings] else None


def tapped(turn: Turn, question_id: int, place: int) -> None:
    """Nothing; the reading behind a button is recorded, unless the question is settled already."""
    known = turn.store.questions.get(turn.athlete, QuestionId(question_id))
    if known is None or known.state is not QuestionState.OPEN:
        turn.say(too_late(known.payload["text"] if known else ""))
        return
    asked = asked_from_json(known.payload["asked"])
    shown = first_in_doubt(asked, turn.catalogue)
    if place >= len(shown.readings):
        turn.store.questions.close(known, QuestionState.DROPPED)
        turn.say(dropped(known.payload["text"], stands=known.payload["replaces"]))
        return
    chosen = Logged(shown.readings[place].sets, asked.on, asked.note, asked.pain)
    left = with_first_settled(asked, chosen.sets, turn.catalogue) if shown is not asked else None
    if isinstance(left, StillOpen):
        learnt = (*asked.learnt, *taught_by(shown, chosen.sets).items())
        left = replace(left, asked=replace(left.asked, learnt=learnt))
    left = left or numbers_left(asked, chosen.sets) or Settled(chosen)
    if isinstance(left, StillOpen):
        _left_open(turn, known, asked, left, "")
    else:
        settle(turn, known, left.logged, taught_by(shown, chosen.sets))


def settle(turn: Turn, known: Question, chosen: Logged, teaches: Mapping[str, ExerciseName]) -> None:
    """Nothing; the chosen reading is recorded against the message that raised the question, and taught."""
    turn.store.questions.close(known, QuestionState.ANSWERED)
    asked = asked_from_json(known.payload["asked"])
    if asked.pain and not chosen.pain:
        chosen = replace(chosen, pain=True, note=chosen.note or asked.note)
    told = {done.exercise for done in chosen.sets}
    teaches = {**{term: name for term, name in asked.learnt if name in told}, **teaches}
    order = pair_order.order_shown(turn, known.payload["text"], asked, chosen)
    change = turn.begin(ChangeKind.ANSWER, label_of(chosen.sets))
    learnt = [] if order is None else pair_order.keep(turn, change, order)
    place = None
    if known.payload["replaces"]:
        standing = turn.store.sets.of_message(turn.athlete, known.message)
        turn.store.sets.remove(change, [one.id for one in standing])
        place = standing[0].place if standing else None
    noted = turn.store.notes.of_message(turn.athlete, known.message)
    # What is chosen brings the note with its lift; one that she has shared meanwhile stays what the coach was shown.
    turn.store.notes.remove(change, [note.id for note in noted if not note.shared])
    record(turn, change, chosen, known.message, on=date.fromisoformat(known.payload["on"]), place=place)
    receipt(turn, chosen, known.message, [*learn(turn, change, teaches, asked), *learnt])
    lift = pained_lift(turn, chosen)
    if chosen.pain and not asked.pain:
        pain.respond(turn, lift)
    elif chosen.pain and lift is not None and _only_lift(asked) is None:
        turn.say(held(lift))


def learn(turn: Turn, change: Change, teaches: Mapping[str, ExerciseName], asked: Asked) -> list[str]:
    """What the bot will take for granted from now on, in words; empty where the answer teaches nothing."""
    typed = asked.typed.casefold()
    words = {term: typed if normalise(typed) == normalise(term) else term for term in teaches}
    for term, exercise in teaches.items():
        turn.store.taught.settle(change, Doubt.EXERCISE.value, term, exercise)
    return [
        f"“{words[term]}” means {exercise} from now on (forget {words[term]})." for term, exercise in teaches.items()
    ]
