"""The line that plans one exercise.

line     = [ tag ] parts in any order, with commas or without
tag      = "A1" | "A2" | "B1" ... | "1a)" | "1b)" ...    the same letter, or number in front: a superset
parts    = exercise | sets and target | load | effort | rest | progression | cue | swap | superset | standard

barbell overhead press 3x6 at 42.5 kg, add a set each week up to 5, then +2.5 kg, rest 3 min
A1 dumbbell lateral raise 3x12-15 at 8 kg per hand, then +1 kg, rest 90 s, swap cable lateral raise
push-up 2x max, +1 rep each set, standard: chest touches the floor

Here a line becomes its parts, each with the place where it stood; `slot.py` puts them together.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

from engine.catalogue.catalogue import Catalogue
from engine.plan.cursor import SEPARATORS, Cursor
from engine.plan.free_words import read_free
from engine.plan.load_words import read_load, read_pair
from engine.plan.parts import Part, Tag, Words
from engine.plan.progression_words import read_progression
from engine.plan.report import Placed
from engine.plan.set_words import read_effort, read_rest, read_sets

TAG = re.compile(r"([A-Za-z])\d{1,2}(?:[.):]|(?= )) ?|([1-9])[A-Za-z][.)] ?|[A-Za-z][.)] ")
FILLER = re.compile(
    r"(?:then back to (?:\d{1,2}|the start)(?: sets)?(?: (?:with|and|at))?|back to the bottom"
    r"|and then|then|and|of|for|with|[x×✕/&–—-])(?= |$|,) ?",
    re.IGNORECASE,
)
LETTERS = "ABCDEFGHI"
NO_NAME = re.compile(r"(?:then|of|for|with|[x×✕–—-])(?= |$|,)", re.IGNORECASE)
A_WORD = re.compile(r"[^\s,;:()\[\]|]+")
ANYTHING = re.compile(r".", re.DOTALL)


def read_parts(text: str, catalogue: Catalogue) -> tuple[Placed, ...]:
    """The parts of a line, in its order. A line comes here clean: single spaces, no bullets."""
    cursor = Cursor(text)
    found: list[Placed] = []
    if match := cursor.take(TAG):
        letter = match[1] or (LETTERS[int(match[2]) - 1] if match[2] else "")
        found.extend([Placed(Tag(letter.upper()), 0)] if letter else [])
    named = False
    while not cursor.done:
        if cursor.take(SEPARATORS):
            continue
        start = cursor.at
        name = None if named else _known_name(cursor, catalogue)
        parts = () if name else _part_at(cursor)
        if name or not parts:
            words = _words(cursor, start)
            named = named or words is not None
            parts = (Words(words),) if words else ()
        found.extend(Placed(part, start) for part in parts)
    return tuple(found)


def begins_with_a_part(text: str) -> bool:
    """Whether a line goes on with the exercise above it: it begins with a part other than a name."""
    cursor = Cursor(text)
    cursor.take(SEPARATORS)
    return bool(_part_at(cursor))


def _part_at(cursor: Cursor) -> tuple[Part, ...]:
    for reader in READERS:
        start = cursor.at
        parts = reader(cursor)
        if parts:
            return parts
        cursor.at = start
    return ()


def _progression(cursor: Cursor) -> tuple[Part, ...]:
    part = read_progression(cursor)
    return (part,) if part else ()


def _free(cursor: Cursor) -> tuple[Part, ...]:
    return read_free(cursor, _fills_a_clause)


def _fills_a_clause(cursor: Cursor) -> bool:
    """Whether parts reach from the cursor to the next comma or the end, with no words between."""
    while True:
        if not (_measured_part(cursor) or read_free(cursor, lambda _: True)):
            return False
        if cursor.done or cursor.text[cursor.at] in ",;":
            return True
        cursor.take(SEPARATORS)
        cursor.take(FILLER)
        if cursor.done or cursor.text[cursor.at] in ",;":
            return True


def _measured_part(cursor: Cursor) -> bool:
    for reader in READERS[:-1]:
        start = cursor.at
        if reader(cursor):
            return True
        cursor.at = start
    return False


READERS: tuple[Callable[[Cursor], tuple[Part, ...]], ...] = (
    _progression,
    read_effort,
    read_rest,
    read_pair,
    read_sets,
    read_load,
    _free,
)


def _known_name(cursor: Cursor, catalogue: Catalogue) -> bool:
    """Whether the longest run of words from the cursor that names an exercise was found; the cursor is behind it."""
    for end in reversed(tuple(_word_ends(cursor, catalogue.longest_phrase))):
        if catalogue.owners(cursor.text[cursor.at : end]):
            cursor.at = end
            return True
    return False


def _word_ends(cursor: Cursor, most: int) -> Iterator[int]:
    ahead = Cursor(cursor.text, cursor.at)
    for _ in range(most):
        if ahead.take(A_WORD) is None:
            return
        yield ahead.at
        if ahead.text[ahead.at : ahead.at + 1] != " ":
            return
        ahead.at += 1


def _words(cursor: Cursor, start: int) -> str | None:
    """The words from `start` on that are no part; None where only a filler stood there."""
    if cursor.at == start and cursor.take(FILLER):
        return None
    if cursor.at == start:
        _ = cursor.take(A_WORD) or cursor.take(ANYTHING)
    while cursor.text[cursor.at : cursor.at + 1] == " ":
        ahead = Cursor(cursor.text, cursor.at + 1)
        if ahead.done or ahead.sees(NO_NAME) or _part_at(Cursor(ahead.text, ahead.at)) or ahead.take(A_WORD) is None:
            break
        cursor.at = ahead.at
    return cursor.text[start : cursor.at]
