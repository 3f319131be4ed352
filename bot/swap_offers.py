"""A swap that comes too close to the days around it is offered before it is made; any other is made at once.

The offer waits for a button or a word: swap anyway, take a lift that adds no caution, or leave it. Sets go their own
way meanwhile; once the planned lift is done after all, the offer is over.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import timedelta

from bot.replies.choices import swap_left, swap_offered, swap_over, swapped
from bot.replies.trouble import stale_button
from bot.sessions import forget_plan, session_of, swap_advice_on
from bot.turn import Turn
from engine.reading.words.phrasebook import phrasebook, spoken_words
from engine.reading.words.tokens import clean, tokenize
from engine.values.ids import ExerciseName
from engine.volume.spacing import Caution
from storage.records import ChangeKind, ChoiceKind, Question, QuestionId, QuestionState

OFFER = "swap offer"
OPEN_FOR = timedelta(minutes=30)
MOST_OFFERED = 1
"""Lifts to take instead that are offered: one answer too many is none in the middle of a session."""
ANYWAY = frozenset(("anyway", "swap anyway", "swap it anyway", "do it", "do it anyway", "swap", "swap it", "go ahead"))
LEAVE = frozenset(("leave", "keep it", "keep", "not now", "stay", "no swap", "dont swap", "dont"))
TAKE = re.compile(
    r"^(?:ok |okay |yes |no )?(?:(?:i'?ll )?(?:take|do|use)|then|rather|with|swap (?:for|to|with)) (?:the )?"
)
OTHER = frozenset(("other", "the other", "other one", "the other one", "other lift", "the other lift", "take other"))


def swap_or_offer(turn: Turn, exercise: ExerciseName, to: ExerciseName) -> None:
    """Nothing; `to` stands in for `exercise` today, or the caution that this brings is said and waits for an answer."""
    advice = swap_advice_on(turn, _planned_as(turn, exercise), to)
    if not advice.cautions:
        make(turn, exercise, to)
        return
    instead = advice.instead[:MOST_OFFERED]
    payload = {"kind": OFFER, "exercise": exercise, "to": to, "instead": list(instead)}
    opened = turn.store.questions.ask(
        turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR, message=turn.inbound.message
    )
    turn.say(swap_offered(exercise, advice.cautions[0], instead, opened.id))


def make(turn: Turn, exercise: ExerciseName, to: ExerciseName, caution: Caution | None = None) -> None:
    """Nothing; `to` stands in for `exercise` today, with what to mind where a caution was heard."""
    change = turn.begin(ChangeKind.SWAP, f"swapping {exercise} for {to}")
    planned_as = _planned_as(turn, exercise)
    turn.store.choices.add(change, ChoiceKind.SWAP, on=turn.today, at=turn.at, exercise=planned_as, to=to)
    forget_plan(turn)
    prescription = session_of(turn).prescription_of(to)
    if prescription is not None:
        turn.say(swapped(prescription, exercise, caution))


def _planned_as(turn: Turn, exercise: ExerciseName) -> ExerciseName:
    slot = session_of(turn).slot_of(exercise)
    return slot.exercise if slot is not None else exercise


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words chose; sets and requests go their own way and the offer stays."""
    said = " ".join(word for word, _ in spoken_words(tokenize(clean(text))))
    cues, instead = phrasebook().cues, _instead(question)
    if _is_over(turn, question):
        if said in ANYWAY or said in OTHER:
            turn.say(swap_over(ExerciseName(question.payload["exercise"])))
        return said in ANYWAY or said in OTHER
    if said in ANYWAY or said in cues["yes"]:
        _settle(turn, question, ExerciseName(question.payload["to"]))
    elif said in LEAVE or said in cues["no"] or said in cues["forget"]:
        _settle(turn, question, None)
    elif said in OTHER and len(instead) == 1:
        _settle(turn, question, instead[0])
    else:
        return _named(turn, question, TAKE.sub("", said))
    return True


def _named(turn: Turn, question: Question, said: str) -> bool:
    """Whether the words are the name of a lift of the offer, or of another that may stand in: that one is looked at."""
    planned, to = ExerciseName(question.payload["exercise"]), ExerciseName(question.payload["to"])
    owners = turn.catalogue.closest(said) if not any(letter.isdigit() for letter in said) else ()
    known = turn.catalogue.get(planned)
    wider = (planned, to, *_instead(question), *(known.swaps if known is not None else ()))
    fits = [name for name in dict.fromkeys((to, *_instead(question))) if name in owners]
    fits = fits or [name for name in dict.fromkeys(wider) if name in owners]
    if len(fits) != 1:
        return False
    if fits[0] in (planned, to, *_instead(question)):
        _settle(turn, question, None if fits[0] == planned else fits[0])
    else:
        turn.store.questions.close(question, QuestionState.ANSWERED)
        swap_or_offer(turn, planned, fits[0])
    return True


def tapped(turn: Turn, arguments: list[str]) -> None:
    """Nothing; the button chose, unless the offer is settled or over."""
    number, choice = [*arguments, "", ""][:2]
    found = turn.store.questions.get(turn.athlete, QuestionId(int(number))) if _is_count(number) else None
    if found is None or found.payload.get("kind") != OFFER or found.state is not QuestionState.OPEN:
        turn.say(stale_button())
        return
    chosen = {"yes": ExerciseName(found.payload["to"]), "no": None}
    chosen |= {str(place): name for place, name in enumerate(_instead(found))}
    if choice not in chosen or found.expires_at <= turn.at:
        turn.say(stale_button())
    elif _is_over(turn, found):
        turn.say(swap_over(ExerciseName(found.payload["exercise"])))
    else:
        _settle(turn, found, chosen[choice])


def _is_count(number: str) -> bool:
    return number.isascii() and number.isdecimal()


def _instead(question: Question) -> Sequence[ExerciseName]:
    return [ExerciseName(name) for name in question.payload["instead"]]


def _settle(turn: Turn, question: Question, to: ExerciseName | None) -> None:
    turn.store.questions.close(question, QuestionState.DROPPED if to is None else QuestionState.ANSWERED)
    exercise = ExerciseName(question.payload["exercise"])
    if to is None:
        turn.say(swap_left(session_of(turn).prescription_of(exercise), exercise))
        return
    advice = swap_advice_on(turn, _planned_as(turn, exercise), to)
    make(turn, exercise, to, advice.cautions[0] if advice.cautions else None)


def _is_over(turn: Turn, question: Question) -> bool:
    """Whether the planned lift was begun, or is no longer asked for, since the offer was made."""
    exercise = question.payload["exercise"]
    session = session_of(turn)
    begun = any(one.done.exercise == exercise and one.at > question.asked_at for one in session.sets_today)
    return begun or session.slot_of(ExerciseName(exercise)) is None
