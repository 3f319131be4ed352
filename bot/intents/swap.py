"""swap A for B: another exercise today; the plan and its progression stay as they are."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import timedelta

from bot.intents import skip
from bot.replies.choices import (
    ALIKE,
    LISTED_BY_PLAN,
    NAMED,
    much_the_same,
    no_plan_to_change,
    nothing_like_it,
    same_lift,
    swap_options,
    unknown_exercise,
    which_lift,
)
from bot.sessions import Session, session_of
from bot.swap_offers import swap_or_offer
from bot.turn import Turn
from engine.reading.values import Act
from engine.values.ids import ExerciseName
from storage.records import Question, QuestionState

OPEN_FOR = timedelta(minutes=30)
SWAP = "swap"
ONLY, BODY = "only ", "body weight"
SKIP = ("skip it", "skip", "skip this")
UNKNOWN = re.compile(r"\b(?:for|with|to)\s+(\S.*)")


def swap(turn: Turn, act: Act) -> None:
    """Nothing; the other exercise stands in today, or what could is offered."""
    session = session_of(turn)
    planned = [one.exercise for one in session.prescriptions]
    if not planned:
        lone = turn.catalogue.get(act.exercise) if act.exercise is not None else None
        turn.say(much_the_same(lone.name, lone.swaps) if lone and lone.swaps else no_plan_to_change(SWAP))
        return
    exercise = act.exercise or _current(session)
    known = turn.catalogue.get(exercise) if exercise is not None else None
    if act.to is None and known is not None and session.slot_of(known.name) is None and known.swaps:
        turn.say(much_the_same(known.name, known.swaps, planned))
    elif exercise is None or session.slot_of(exercise) is None:
        turn.say(which_lift(SWAP, planned))
    elif act.to is None and act.also:
        offer_of(turn, exercise, act.also, NAMED)
    elif act.to is None and (unknown := UNKNOWN.search(act.text)):
        turn.say(unknown_exercise(unknown[1]))
    elif act.to is None:
        offer(turn, exercise, act.text.removeprefix(ONLY) if act.text.startswith(ONLY) else "")
    elif act.to == exercise:
        turn.say(same_lift(exercise))
    else:
        swap_or_offer(turn, exercise, act.to)


def _current(session: Session) -> ExerciseName | None:
    following = session.following(session.latest_exercise)
    return following.prescription.exercise if following else None


def offer(turn: Turn, exercise: ExerciseName, equipment: str = "") -> None:
    """Nothing; what may stand in is offered, each as a button: with this equipment alone where it is named."""
    slot = session_of(turn).slot_of(exercise)
    listed_by_plan = slot.swaps if slot is not None else ()
    known = turn.catalogue.get(exercise)
    options: Sequence[ExerciseName] = listed_by_plan or (known.swaps if known is not None else ())
    if equipment:
        options = [one for one in options if _is_of(turn, one, equipment)] or _alike(turn, exercise, equipment)
        listed_by_plan = ()
    if not options:
        turn.say(nothing_like_it(exercise))
    else:
        offer_of(turn, exercise, options, LISTED_BY_PLAN if listed_by_plan else ALIKE)


def offer_of(turn: Turn, exercise: ExerciseName, options: Sequence[ExerciseName], whose: str) -> None:
    """Nothing; these lifts are offered in place of it, and the answer may name any. `whose`: who says so."""
    payload = {"kind": SWAP, "exercise": exercise, "options": list(options[:3])}
    turn.store.questions.ask(
        turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR, message=turn.inbound.message
    )
    turn.say(swap_options(exercise, options, whose))


def _alike(turn: Turn, exercise: ExerciseName, equipment: str) -> Sequence[ExerciseName]:
    """Lifts of the same movement that this equipment does."""
    known = turn.catalogue.get(exercise)
    found = [one for one in turn.catalogue.exercises.values() if known is not None and one.pattern is known.pattern]
    others = [one for one in found if one.name != exercise and known is not None and set(one.prime) & set(known.prime)]
    with_it = [one.name for one in others if one.equipment.value == equipment]
    return (with_it or [one.name for one in others if one.equipment.value == BODY])[:MOST_ALIKE]


MOST_ALIKE = 4


def _is_of(turn: Turn, exercise: ExerciseName, equipment: str) -> bool:
    known = turn.catalogue.get(exercise)
    return known is not None and known.equipment.value in (equipment, BODY)


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words named what stands in; a set or another intent goes its own way."""
    exercise = ExerciseName(question.payload["exercise"])
    if text.strip().casefold().rstrip(".!") in SKIP:
        turn.store.questions.close(question, QuestionState.ANSWERED)
        skip.skip_lift(turn, exercise)
        return True
    named = turn.catalogue.closest(text)
    offered = [ExerciseName(option) for option in question.payload["options"]]
    fits = [name for name in named if name in offered] or list(named)
    if len(fits) != 1:
        return False
    turn.store.questions.close(question, QuestionState.ANSWERED)
    swap_or_offer(turn, exercise, fits[0])
    return True
