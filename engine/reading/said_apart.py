"""Sets and a request in one message: "squat 3x5 100, skip bench", "did rows as planned, remind me monday 18:00".

message = part { cut part }        cut = "," | "." | ";" | "!" | "?" | " - " | bracket | "and" | "then" | line end

One part is a request told in full, the others tell sets. Each is read on its own; where that leaves anything open, the
message stays whole.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from engine.catalogue.catalogue import Catalogue
from engine.reading.prepare import prepare
from engine.reading.read import read
from engine.reading.values import Act, Asked, Context, Logged, NoSets, Outcome
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook, phrasebook, spoken, spoken_words
from engine.values.ids import ExerciseName
from engine.values.load import Unit

CUT = re.compile(
    r"[,.;!?)]+\s+|\n|\s[-–—(]+\s?|\s(?:and|then|but|und|dann|y|et|puis|e|poi|en|dan|i|и|och)\s", re.IGNORECASE
)
ENDS = " ,.;:!?()-"
MOST_CUTS = 6
LONGEST = 400
OF_LIFTS = frozenset(("skip", "swap"))
SAID_BESIDE = OF_LIFTS | frozenset(("remind", "pause", "snooze", "export"))
SAID_AHEAD = SAID_BESIDE | frozenset(("undo", "units"))
"""What may stand in front of the sets besides: "units lb, bench 135x8" tells of the sets behind it."""
ASKED_BESIDE = frozenset(("today", "next", "week", "history", "best", "why", "help", "plates", "warmup"))
"""Questions; without a question mark or a word that asks they may be remarks."""
LEAST_OF_DONE = 2
"""Words; "done" alone says that the set is."""


def said_apart(text: str, outcome: Outcome, context: Context, catalogue: Catalogue) -> tuple[Outcome, ...]:
    """What the message means, one thing after the other; the outcome alone where it tells one."""
    if len(text) > LONGEST or not _may_be_several(text, outcome):
        return (outcome,)
    by_plan = (
        isinstance(outcome, Asked) and not outcome.readings and K.PLANNED in prepare(text, context, catalogue).told
    )
    for head, tail, is_heading in _halves(text):
        behind = _asked(tail, context, catalogue, SAID_BESIDE)
        if isinstance(behind, NoSets) and isinstance(outcome, NoSets) and behind.why == outcome.why:
            return (outcome,)  # "7, 6, last one 5" is asked about as a whole
        if behind is not None and (told := _told(head, context, catalogue)):
            return (*told, behind)
        ahead = _asked(head, context, catalogue, SAID_AHEAD)
        if is_heading and isinstance(ahead, Act) and ahead.name in ASKED_BESIDE:
            continue  # "today's plan:", and a list below it
        if (
            isinstance(ahead, Act)
            and (ahead.name != "undo" or _is_undone(head, tail, context, catalogue))
            and (told := _told(tail, _after(ahead, context), catalogue))
        ):
            return (ahead, *told)
        if by_plan and (both := _one_by_plan(head, tail, context, catalogue)):
            return both
    return (outcome,)


def _one_by_plan(head: str, tail: str, context: Context, catalogue: Catalogue) -> tuple[Outcome, ...]:
    """ "rows done as planned, curls 12 11 9": one lift by the plan, and sets of another."""
    for by_plan, other in ((head, tail), (tail, head)):
        found = read(by_plan, context, catalogue)
        named = _names_a_lift(by_plan, context, catalogue) and _names_a_lift(other, context, catalogue)
        if isinstance(found, Act) and found.as_planned and named and (told := _told(other, context, catalogue)):
            return (found, *told) if by_plan is head else (*told, found)
    return ()


def _may_be_several(text: str, outcome: Outcome) -> bool:
    """Whether a request may stand beside sets: a word begins one, or the plan is spoken of."""
    if isinstance(outcome, NoSets) and not outcome.unread:
        return False
    parts = _parts(text)
    by_plan = isinstance(outcome, Asked) and not outcome.readings
    return len(parts) > 1 and (by_plan or any(map(_may_ask, parts)))


def _parts(text: str) -> list[str]:
    return [text[start:end] for start, end in _cuts(text)]


def _may_ask(part: str) -> bool:
    """Whether a request may be told: the first word begins one, or it has a word that makes one anywhere."""
    book = phrasebook()
    words = [spoken(word.strip(ENDS)) for word in part.split()]
    return bool(words) and (_opens(words[0], book) or not book.cued.isdisjoint(words))


def _opens(word: str, book: Phrasebook) -> bool:
    if word in book.openers or word in book.lead_openers or word in book.polite_openers:
        return True
    return not book.openers.isdisjoint(book.head_slips.near(word))


def _cuts(text: str) -> list[tuple[int, int]]:
    """Where the parts of the message begin and end."""
    cuts = [(one.start(), one.end()) for one in CUT.finditer(text)][:MOST_CUTS]
    starts, ends = [0, *(end for _, end in cuts)], [*(start for start, _ in cuts), len(text)]
    return [(start, end) for start, end in zip(starts, ends, strict=True) if start < end]


def _halves(text: str) -> Iterator[tuple[str, str, bool]]:
    """The message before and behind each cut, and whether the first part heads the second as a line of its own does."""
    cuts = _cuts(text)
    for (_, end), (start, _) in pairwise(cuts):
        head = text[:end].strip(" ,.;(-\n")
        is_heading = "?" not in text[:start] and ("\n" in text[end:start] or head.endswith(":"))
        yield head, text[start:].strip(" ,;)-\n"), is_heading


def _asked(text: str, context: Context, catalogue: Catalogue, among: frozenset[str]) -> Act | NoSets | None:
    """The request that this part makes, if it is one that may stand beside sets; one not understood in full, too."""
    if not text or not _may_ask(text):
        return None
    prepared = prepare(text, context, catalogue)
    found = None if prepared.is_too_much or K.TIMES in prepared.told else read(text, context, catalogue)
    if isinstance(found, NoSets) and any(one.of_a_request for one in found.unread):
        return found
    if not isinstance(found, Act) or found.as_planned:
        return None
    words = [word for word, _ in spoken_words(prepared.tokens)]
    if found.name in OF_LIFTS:
        return found if K.NAME in prepared.told and found.exercise in _planned(context) else None
    if found.name == "done":
        return found if len(words) >= LEAST_OF_DONE else None
    asks = "?" in text or not phrasebook().cues["askword"].isdisjoint(words)
    return found if found.name in among or (found.name in ASKED_BESIDE and asks) else None


def _planned(context: Context) -> set[ExerciseName]:
    return {slot.exercise for slot in context.plan}


def _is_undone(head: str, tail: str, context: Context, catalogue: Catalogue) -> bool:
    """ "undo, squat 3x5 100"; "oops, squat 3x5 100" may tell of sets that were left out."""
    slips = phrasebook().cues["slip"]
    only_a_slip = spoken(head.strip(ENDS)) in slips
    return not only_a_slip and _names_a_lift(tail, context, catalogue)


def _names_a_lift(text: str, context: Context, catalogue: Catalogue) -> bool:
    """Whether the sets behind an undo are told in full: "undo, 4" puts right what was undone."""
    return K.NAME in prepare(text, context, catalogue).told


def _after(ahead: Act, context: Context) -> Context:
    """What is known once the request in front is done."""
    return replace(context, unit=Unit(ahead.text)) if ahead.name == "units" else context


def _told(text: str, context: Context, catalogue: Catalogue) -> tuple[Outcome, ...]:
    """The sets that the other part tells, and what else it tells; empty where it tells none."""
    outcome = read(text, context, catalogue)
    found = said_apart(text, outcome, context, catalogue)
    told = any(_tells_sets(one) for one in found)
    return found if told and all(isinstance(one, Act) or _tells_sets(one) for one in found) else ()


def _tells_sets(outcome: Outcome) -> bool:
    match outcome:
        case Logged():
            return not outcome.unread
        case Asked():
            return bool(outcome.readings)
        case Act():
            return outcome.as_planned
        case _:
            return False
