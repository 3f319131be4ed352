"""A message while a plan waits for a line: the mended line, or something of its own. Sets are never swallowed.

A message is the mended line where it says so ("line 4: chin-up 3x8"), or where the plan can read it and the set reader
cannot, or where it is the broken line told again in full. Where both could be meant she is asked. Everything else goes
its own way and the plan waits on.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from enum import Enum
from typing import assert_never

from bot import planning
from bot.plan_drafts import Draft, draft_of, mark_told, settle
from bot.replies.mending import all_problems, needs_mending, no_such_line, plan_or_sets, waits
from bot.replies.plans import dropped
from bot.turn import Turn
from engine.catalogue.catalogue import normalise
from engine.plan.names import Named, exercise_named
from engine.plan.text import ParsedPlan, mend, read_lines
from engine.reading.values import Act, Asked, Correction, Logged, NoSets, Outcome
from engine.values.ids import ExerciseName
from storage.records import Question

CHOICE = "plan or sets"
NUMBERED = re.compile(r"(?:line|row)\s+(\d{1,4})\s*(?:[:=,.)-]|\bis\b|\s)\s*(\S.*)", re.IGNORECASE)
CANCEL = ("cancel", "/cancel", "forget it", "never mind", "cancel plan", "drop plan", "drop it", "cancel the plan")
PROBLEMS = ("problems", "all problems", "show problems", "plan problems", "all lines", "what is wrong")
HEADS = ("plan", "block", "week", "day", "target", "targets", "deload")
TAIL = re.compile(r"(?<![\w-])(?:at\b|\d|then\b|rest\b|max\b)", re.IGNORECASE)
PLAN_WORDS = re.compile(
    r"\b(?:then|rest|swap|cue|standard|max|superset|back-?offs?|no progression|load for|in all|find the load)\b"
    r"|\d\s*[x×]\s*\d+\s*[-–]\s*\d+|%|\+\s*\d",
    re.IGNORECASE,
)


def mended(turn: Turn, outcome: Outcome) -> bool:
    """Whether the message was about the plan that waits, and is answered."""
    draft = draft_of(turn)
    if draft is None:
        return False
    said = turn.inbound.text.strip()
    told = _numbered(said)
    plain = said.casefold().rstrip(".!")
    if plain in CANCEL:
        settle(turn, draft)
        turn.say(dropped())
    elif plain in PROBLEMS:
        turn.say(all_problems(_read(turn, draft).errors, draft.warnings))
    elif told:
        _by_number(turn, draft, told)
    else:
        return _unnumbered(turn, draft, outcome, said)
    return True


def remind(turn: Turn) -> None:
    """Nothing; once after another message it is said that the plan waits."""
    draft = draft_of(turn)
    if draft is not None and not draft.told and draft.question.asked_at < turn.at:
        turn.say(waits(draft.name, draft.line), silent=True)
        mark_told(turn, draft)


def show(turn: Turn, draft: Draft) -> None:
    """Nothing; what the plan that waits still needs is said."""
    errors = _read(turn, draft).errors
    turn.say(needs_mending(errors, planning.example(turn, _read(turn, draft)), whole=False))


def _numbered(said: str) -> list[tuple[int, str]]:
    """The lines told by number, one a line of the message; empty where a line has no number."""
    found = [NUMBERED.fullmatch(line.strip()) for line in said.splitlines() if line.strip()]
    return [(int(match[1]), match[2]) for match in found if match] if all(found) else []


def _by_number(turn: Turn, draft: Draft, told: Sequence[tuple[int, str]]) -> None:
    parsed = _read(turn, draft)
    for number, words in told:
        if number not in {line.number for line in draft.lines}:
            turn.say(no_such_line(number, parsed.errors))
            return
        parsed = mend(parsed, number, words, turn.catalogue, turn.unit)
    planning.go_on(turn, parsed, planning.client_of(turn, draft), draft.name, mends=draft)


class _Meant(Enum):
    LINE = "the mended line"
    EITHER = "a line or sets"
    OTHER = "something of its own"


def _unnumbered(turn: Turn, draft: Draft, outcome: Outcome, said: str) -> bool:
    if _is_its_own(outcome) and not _heads_alike(draft, said):
        return False
    after = mend(_read(turn, draft), draft.line, said, turn.catalogue, turn.unit)
    meant = _what_is_meant(turn, draft, outcome, said)
    if meant is _Meant.OTHER or any(problem.line == draft.line for problem in after.errors):
        return False
    if meant is _Meant.EITHER:
        ask(turn, draft, said)
    else:
        planning.go_on(turn, after, planning.client_of(turn, draft), draft.name, mends=draft)
    return True


def _what_is_meant(turn: Turn, draft: Draft, outcome: Outcome, said: str) -> _Meant:
    """For words that would mend the line: whether the set reader has a claim on them too."""
    fits = _fits(turn, draft, said)
    match outcome:
        case Act() | Correction():
            return _Meant.LINE
        case NoSets():
            return _Meant.LINE if fits or any(sign.isdigit() for sign in said) else _Meant.OTHER
        case Asked(readings=()):
            return _Meant.LINE
        case Logged() | Asked():
            if _repeats(draft, said) or (isinstance(outcome, Asked) and PLAN_WORDS.search(said)):
                return _Meant.LINE if fits else _Meant.OTHER
            return _Meant.EITHER if fits else _Meant.OTHER
        case _:
            assert_never(outcome)


def _is_its_own(outcome: Outcome) -> bool:
    """Whether the message asks for something, corrects sets, or tells of pain."""
    return isinstance(outcome, Act | Correction) or outcome.pain


def _heads_alike(draft: Draft, said: str) -> bool:
    """Whether the broken line is a heading and the message begins with the same word: "target", "day"."""
    first = (_old(draft).split() or [""])[0].casefold().rstrip(":")
    return first in HEADS and said.casefold().split()[0].rstrip(":") == first


def ask(turn: Turn, draft: Draft, said: str) -> None:
    """Nothing; she is asked whether she told a line of the plan or sets."""
    payload = {"kind": CHOICE, "text": said}
    question = turn.store.questions.ask(
        turn.athlete, payload, at=turn.at, expires_at=draft.question.expires_at, message=turn.inbound.message
    )
    turn.say(plan_or_sets(draft.line, said, question.id))


def take(turn: Turn, question: Question) -> bool:
    """Whether the plan still waited, and has the words of the question as its line now."""
    draft = draft_of(turn)
    if draft is None:
        return False
    _by_number(turn, draft, [(draft.line, str(question.payload["text"]))])
    return True


def _repeats(draft: Draft, said: str) -> bool:
    """Whether the message is the broken line in full: it holds all that the line says behind the exercise."""
    old = _old(draft)
    tail = TAIL.search(old)
    words = old[tail.start() :].casefold().replace(",", " ").split() if tail else []
    has_plan_word = any(word.isalpha() and word not in ("kg", "lb", "x") for word in words)
    return has_plan_word and set(words) <= set(said.casefold().replace(",", " ").split())


def _fits(turn: Turn, draft: Draft, said: str) -> bool:
    """Whether the exercise told could be the one of the broken line, and is no slip of the thumb for it."""
    old = _old(draft)
    name = _name_in(said)
    named = exercise_named(name, turn.catalogue)
    if not isinstance(named, Named):
        return False
    asked_for = exercise_named(_name_in(old), turn.catalogue)
    could_be: tuple[ExerciseName, ...] = (asked_for.exercise,) if isinstance(asked_for, Named) else asked_for.candidates
    if named.exercise in could_be:
        return True
    shared = set(normalise(name).split()) & set(normalise(_name_in(old)).split())
    return not named.typo and (bool(shared) or not could_be)


def _old(draft: Draft) -> str:
    return next((line.text for line in reversed(draft.lines) if line.number == draft.line), "")


def _name_in(line: str) -> str:
    tail = TAIL.search(line)
    return (line[: tail.start()] if tail else line).strip(" ,:;")


def _read(turn: Turn, draft: Draft) -> ParsedPlan:
    return read_lines(draft.lines, turn.catalogue, turn.unit)
