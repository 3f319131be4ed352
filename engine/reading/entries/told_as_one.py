"""Lifts by a name and a way of it that stand apart: "kniebeuge 3x5 100, front", "sentadilla 3x5 100 frontal"."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.entry import Entry
from engine.reading.lexing.name_words import tells_a_pause
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, is_one_word
from engine.values.ids import ExerciseName


def of_the_lift(variant: str, name: ExerciseName, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lifts that this one is with the variant, by as many words of its name as one is known for."""
    words = name.split()
    for start in range(len(words)):
        if owners := catalogue.owners(" ".join((variant, *words[start:]))):
            return owners
    return ()


def plainly(lift: ExerciseName, catalogue: Catalogue) -> str:
    """What the plain lift is called, in as few words as possible: "squat" of the back squat; its name, where its last
    words are another lift's.
    """
    words = lift.split()
    tails = (" ".join(words[at:]) for at in range(len(words) - 1, -1, -1))
    return next((tail for tail in tails if lift in catalogue.owners(tail)), lift)


def abroad(way: Piece, entry: Entry, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "kniebeuge 3x5 100, front": the lift of that way, where its name is of another language; none elsewhere."""
    known = {word for name in entry.names for word in name.split()}
    if len(entry.names) != 1 or not known.isdisjoint(entry.phrase.split()):
        return ()
    owners = catalogue.owners(f"{way.text} {plainly(entry.names[0], catalogue)}")
    return owners or together(entry.phrase, way.text, catalogue)


def told_behind(entry: Entry, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "sentadilla 3x5 100 frontal", "squat 3x5 100 to a box": the lift of that movement that is known by the words
    behind its sets; none else, and none where they may be of the last of several groups, tell a pause or what was worn.
    """
    start = _words_behind(entry.pieces)
    if not start or entry.pieces[start - 1].kind not in AHEAD_OF_A_WAY:
        return ()
    told = entry.pieces[start:]
    remarks = any(piece.kind is K.NOTE and not is_cued(piece.text, WAY_BEHIND) for piece in told)
    if remarks or _counts_groups(entry.pieces) > 1:
        return ()
    while told:
        owners = _known_so(" ".join([piece.text for piece in told]), entry, catalogue)
        if owners or told[0].kind in OF_CONTENT:
            return owners
        told = told[1:]
    return ()


def _known_so(way: str, entry: Entry, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    if any(tells_a_pause(word) or is_cued(word, WORN) for word in way.split()):
        return ()
    if (owners := together(entry.phrase, way, catalogue)) or len(entry.names) != 1:
        return owners
    moved = catalogue.exercises[entry.names[0]].pattern
    owners = of_the_lift(way, entry.names[0], catalogue)
    return tuple(name for name in owners if catalogue.exercises[name].pattern is moved)


def _words_behind(pieces: list[Piece]) -> int:
    """The place where the words at the end begin, without articles; 0 where there are none, or too many."""
    start = len(pieces)
    while start and (pieces[start - 1].kind is K.VARIANT or _is_a_word(pieces[start - 1])):
        start -= 1
    return start if 1 < start < len(pieces) <= start + MOST_WORDS_OF_A_WAY else 0


def _is_a_word(piece: Piece) -> bool:
    return piece.kind in WORDS and is_one_word(piece)


def _counts_groups(pieces: list[Piece]) -> int:
    """How many loads or counts the sets are told with, "3x5 100" once, "80x5 70x8" twice."""
    return sum(
        1 for at, piece in enumerate(pieces) if piece.kind is K.TIMES and (not at or pieces[at - 1].kind is K.NUMBER)
    )


MOST_WORDS_OF_A_WAY = 3
WORDS = frozenset((K.PLAIN, K.NOTE, K.FILLER, K.WITH, K.OF, K.NOT_DATE, K.FOR, K.AND))
OF_CONTENT = frozenset((K.PLAIN, K.NOTE, K.VARIANT))
AHEAD_OF_A_WAY = frozenset((K.NUMBER, K.COMMA, K.KG, K.LB))
WORN, WAY_BEHIND = frozenset(("worn",)), frozenset(("waybehind",))
"""What is on the lifter; remarks that are ways, where a lift is known by them: "box", "close grip"."""


def together(lift: str, way: str, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """Whose both are told as one: "peso muerto rumano", "frontkniebeuge"."""
    told = (f"{lift} {way}", f"{way} {lift}", f"{way}{lift}")
    return next((owners for phrase in told if (owners := catalogue.owners(phrase))), ())
