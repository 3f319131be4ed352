"""Whole workouts pasted, of one day or several: what is clear is read, and what is not is quoted with its reason.

A short message that can be read in two ways is asked. Of a paste the question would have to name every lift of it, and
of one that tells several days the answer would have to know them all: there the parts in doubt are left unread instead.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from itertools import accumulate

from engine.reading.entries.entry import Entry
from engine.reading.prepare import Prepared
from engine.reading.values import Doubt, Unread
from engine.reading.weighing.deciding import Part
from engine.reading.wording import label_of
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

LEAST_OF_A_PASTE = 3
"""Lines from which a message is a pasted workout. Common practice, no source."""
LEAST_CLEAR = 2
PASSED_OVER = "a question, a plan or a story, no set"
IN_DOUBT = {
    Doubt.EXERCISE: "which one: {ways}?",
    Doubt.UNLIKELY_LOAD: "far from what you lift; send it alone with its day",
    Doubt.UNUSUAL_LOAD: "an unusual load; send it alone with its day",
    Doubt.RANGE: "a range: how many did you do?",
    Doubt.EFFORT_OR_LOAD: "is the number behind @ the load or the effort?",
    Doubt.UNKNOWN_NAME: "there is a word in it that I do not know",
    Doubt.NO_REPS: "no reps in it",
    Doubt.WHOSE: "whose sets are these?",
    Doubt.WHETHER: "was it done?",
    Doubt.DAY: "of which day is it?",
    Doubt.MORE: "are these more sets?",
    Doubt.HOW_MANY: "how many sets were that?",
    Doubt.WHICH_LOAD: "at which load?",
    Doubt.NUMBERS: "{ways}?",
    Doubt.WORDS: "there are words in it that may change the sets; send each set with its reps",
}


def lines_of(prepared: Prepared) -> int:
    """How many lines a message has."""
    return prepared.cleaned.strip().count("\n") + 1


def settled(parts: Sequence[Part], told: Sequence[Entry], prepared: Prepared) -> list[Part] | None:
    """The parts with those in doubt left unread; None where the message is to be asked about as a whole."""
    doubtful = [part for part in parts if part.readings and part.doubt is not None]
    if not doubtful:
        return None
    clear = [part for part in parts if part.readings and part.doubt is None]
    lost = [part for part in parts if not part.readings and not part.is_bare_name]
    several_days = len({entry.day for entry in told}) > 1
    paste = lines_of(prepared) >= LEAST_OF_A_PASTE and len(clear) >= LEAST_CLEAR
    if not clear or not (several_days or (paste and len(doubtful) + len(lost) > 1)):
        return None
    return _left_unread(parts)


def _left_unread(parts: Sequence[Part]) -> list[Part]:
    """The parts in doubt without their readings; so too what is told by the load of one of them."""
    kept: list[Part] = []
    before_is_open = False
    for part in parts:
        leans = before_is_open and part.chunks is not None and part.chunks.same_load
        if part.readings and (part.doubt is not None or leans):
            part = part._replace(readings=(), why=_why(part))
            before_is_open = True
        elif part.readings:
            before_is_open = False
        kept.append(part)
    return kept


def _why(part: Part) -> str:
    if part.doubt is None:
        return "by the load of a line that I could not read"
    if part.doubt is Doubt.EXERCISE:
        names = dict.fromkeys(one.exercise for reading in part.readings for one in reading.sets)
        return IN_DOUBT[part.doubt].format(ways=_or(list(names)))
    rivals = [reading.sets for reading in part.readings]
    ways = dict.fromkeys(label_of(sets, rivals) for sets in rivals)
    if part.doubt is Doubt.NUMBERS and len(ways) < LEAST_CLEAR:
        return part.why or "not all of it is clear"
    return IN_DOUBT[part.doubt].format(ways=_or(list(ways)))


def _or(ways: Sequence[str]) -> str:
    return " or ".join(filter(None, (", ".join(ways[:-1]), ways[-1])))


def passed_over(told: Sequence[Entry], prepared: Prepared) -> tuple[Unread, ...]:
    """The lines of a paste that hold set-like numbers and came to no entry: questions, plans, stories."""
    if K.LINE not in prepared.told or lines_of(prepared) < LEAST_OF_A_PASTE:
        return ()
    lines = prepared.cleaned.split("\n")
    starts = list(accumulate((len(line) + 1 for line in lines), initial=0))
    taken = {
        bisect_right(starts, piece.start) - 1 for entry in told for piece in entry.pieces if piece.kind is K.NUMBER
    }
    by_line: dict[int, list[Piece]] = {}
    for piece in prepared.pieces:
        if piece.kind is not K.LINE:
            by_line.setdefault(bisect_right(starts, piece.start) - 1, []).append(piece)
    left = (line for line, pieces in by_line.items() if line not in taken and _is_like_a_set(pieces))
    return tuple(Unread(lines[line].strip(), PASSED_OVER) for line in left)


def _is_like_a_set(pieces: Sequence[Piece]) -> bool:
    kinds = [piece.kind for piece in pieces]
    return K.NAME in kinds and K.NUMBER in kinds and (K.TIMES in kinds or kinds.count(K.NUMBER) > 1)
