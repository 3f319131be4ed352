"""A request with what people put around it: words that ask for leave or tell a wish, and a reason in front or behind.

message = [ clause cut ] [ lead ] request [ cut clause ]
cut     = "," | "." | ";" | "!" | "?" | " - " | bracket | BECAUSE
lead    = LEAD | WISH | DOING a verb in -ing     "could we", "i'd like to", "i'm"

The words in capitals are cues of the language files. What stands around a request tells no sets.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace

from engine.reading.days.when import day_told
from engine.reading.entries.names import narrowed
from engine.reading.prepare import Prepared
from engine.reading.talk.talk import without_talk
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import Phrasebook
from engine.reading.words.pieces import COUNTED, Piece
from engine.reading.words.spoken_clauses import Words, clauses_of

Recognise = Callable[[Words, str, Sequence[Piece], Context], Act | None]
"""Reads the words of a clause as a request; the text keeps the places that its pieces have."""

MOST_CLAUSES = 5
LONGEST_LEAD = 7
MOST_NUMBERS = 3
"""Whoever counts more tells sets. Common practice, no source."""

BENDING = ("short", "lighten", "elsewhere", "cannot")
"""What is wrong with the day: rather the reason of another request in the same message."""

BEHIND_A_REASON = frozenset(
    ("swap", "skip", "undo", "redo", "next", "today", "done", "repeat", "why", "rest", "pause", "snooze", "resume",
     "move", "remind", "help", "week", "history", "best", "plan", *BENDING)
)  # fmt: skip
BEFORE_A_REASON = BEHIND_A_REASON - {"why", "rest", "resume", "snooze"}
ALONE = frozenset(("done", "undo", "skip"))
"""Requests of one word that a reason may follow: "today, bench felt heavy" asks for nothing."""
ASKED_FOR = frozenset(("today", "next", "week", "history", "best", "plan", "help"))
"""Requests that say what the talk behind them is about, unless they ask: "this week, squats went well"."""
NOT_WISHED = frozenset(("done", "repeat"))
"""What is told when it was done, and not when somebody is about to do it: "need to finish"."""
CUTTING = frozenset((K.COMMA, K.STOP, K.DASH, K.OPEN))
FELT = frozenset((K.NOTE, K.FILLER, K.ONLY, K.AND, K.COMMA, K.STOP))


def without_lead(words: Words, book: Phrasebook) -> tuple[Words, bool]:
    """The words behind those that ask for leave or tell a wish, and whether it was a wish; all where none do."""
    wished = False
    at = 0
    while at < len(words) - 1 and words[at][0] in book.lead_openers:
        step, wish = _lead_at(words, at, book)
        if not step and not (at and words[at][0] in book.cues["polite"]):
            break
        wished, at = wished or wish, at + (step or 1)
    return words[at:], wished


def _lead_at(words: Words, at: int, book: Phrasebook) -> tuple[int, bool]:
    for length in range(min(LONGEST_LEAD, len(words) - at - 1), 0, -1):
        phrase = " ".join([word for word, _ in words[at : at + length]])
        if phrase in book.cues["lead"]:
            return length, False
        if phrase in book.cues["wish"]:
            return length, True
        if phrase in book.cues["doing"] and words[at + length][0].endswith("ing"):
            return length, True
    return 0, False


def led(
    words: Words, cleaned: str, pieces: Sequence[Piece], context: Context, book: Phrasebook, recognise: Recognise
) -> Act | None:
    """The request behind "could we", "i'd like to"; None where none stands there."""
    bare, wished = without_lead(words, book)
    if len(bare) == len(words) or not bare:
        return None
    start = bare[0][1].start
    found = recognise(bare, cleaned, [piece for piece in pieces if piece.start >= start], context)
    return None if found is not None and wished and found.name in NOT_WISHED else found


def among_reasons(
    prepared: Prepared, words: Words, context: Context, book: Phrasebook, recognise: Recognise
) -> Act | None:
    """ "rack is taken, swap squat for leg press", "skip curls, no time": the request among clauses that tell why."""
    if K.TIMES in prepared.told or sum(piece.kind in COUNTED for piece in prepared.spoken) > MOST_NUMBERS:
        return None
    clauses = clauses_of(prepared.cleaned, words, book)
    if not 1 < len(clauses) <= MOST_CLAUSES:
        return None
    bent = back = None
    for first, last in _stretches(len(clauses)):
        start, end = clauses[first][0], clauses[last][1]
        found = _asked_between(prepared, words, start, end, context, book, recognise)
        if found is not None and found.name == "redo" and not context.undone:
            back = back or found  # "undo that, it did count": nothing was undone that could come back
        elif found is not None and found.name not in BENDING and (back is None or found.name == "undo"):
            return found
        else:
            bent = bent or found
    return back or bent


def _stretches(count: int) -> Iterator[tuple[int, int]]:
    """All runs of clauses but the whole, the longest first, the later of equal ones first."""
    for length in range(count - 1, 0, -1):
        for first in range(count - length, -1, -1):
            yield first, first + length - 1


def _asked_between(
    prepared: Prepared, words: Words, start: int, end: int, context: Context, book: Phrasebook, recognise: Recognise
) -> Act | None:
    inside = [(word, token) for word, token in words if start <= token.start < end]
    if not inside or not _tells_no_sets(prepared, start, end):
        return None
    # The clause keeps its place in the text, so that the pieces still fit it.
    clause = " " * start + prepared.cleaned[start:end]
    spoken = [piece for piece in prepared.spoken if start <= piece.start < end]
    around = [piece for piece in prepared.spoken if not start <= piece.start < end]
    pointed = _pointed_at(inside, around, context)
    found = recognise(inside, clause, spoken, pointed)
    if found is None:
        return None
    behind = any(piece.start >= end for piece in around)
    if found.name not in (BEFORE_A_REASON if behind else BEHIND_A_REASON):
        return None
    if behind and not _stands_before(found, inside, [p for p in around if p.start >= end], book):
        return None
    if found.name == "remind" and found.when is None:
        return None
    if any(piece.kind is K.PAIN for piece in around) and inside[0][0] in book.cues["nottoday"]:
        return None  # "no bench today, shoulder hurts" tells of pain, and asks for nothing
    return _with_reason(found, inside, around, context)


def _tells_no_sets(prepared: Prepared, start: int, end: int) -> bool:
    """Whether the message in front of the clause and behind it holds no number that could be a set's."""
    for low, high in ((0, start), (end, len(prepared.cleaned))):
        side = [piece for piece in prepared.pieces if low <= piece.start < high]
        if any(piece.kind in COUNTED for piece in side):
            left, _ = without_talk(side)
            if any(piece.kind in COUNTED for piece in left):
                return False
    return True


def _stands_before(found: Act, words: Words, behind: Sequence[Piece], book: Phrasebook) -> bool:
    """Whether the clause is still a request with those pieces behind it."""
    said = {word for word, _ in words}
    if len(words) == 1 and found.name not in ALONE:
        return False
    if found.name == "repeat":
        return behind[0].kind in CUTTING and all(piece.kind in FELT for piece in behind)
    return found.name not in ASKED_FOR or not book.cues["askword"].isdisjoint(said)


def _pointed_at(words: Words, reason: Sequence[Piece], context: Context) -> Context:
    """The context with the only lift of the reason in hand where the request points back: "row is broken, swap it"."""
    named = {narrowed(piece.names, context)[0] for piece in reason if piece.kind is K.NAME}
    points = len(named) == 1 and any(word in POINTING_BACK for word, _ in words)
    return replace(context, doing=named.pop()) if points else context


POINTING_BACK = frozenset(("it", "that", "them", "this", "those", "these"))


def _with_reason(found: Act, words: Words, reason: Sequence[Piece], context: Context) -> Act:
    """The request with what the reason says of it: "no time for curls, skip them", "away until may, pause"."""
    if found.name == "pause" and found.when is None and found.start is None:
        return replace(found, when=day_told(reason, context))
    named = {narrowed(piece.names, context)[0] for piece in reason if piece.kind is K.NAME}
    if found.name == "swap" and len(named) == 1 and found.exercise == context.doing and found.to not in named:
        return replace(found, exercise=named.pop())
    pointing = all(word in POINTING for word, _ in words[1:])
    if found.name == "skip" and pointing and len(named) == 1:
        return replace(found, exercise=named.pop())
    return found


POINTING = frozenset(("it", "them", "this", "that", "these", "those", "today", "please", "now"))
