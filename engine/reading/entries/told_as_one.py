"""Lifts by a name and a way of it that stand apart: "kniebeuge 3x5 100, front", "sentadilla 3x5 100 frontal"."""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.entry import Entry
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName

LEAST_AHEAD_OF_A_WAY = 2


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
    """ "sentadilla 3x5 100 frontal": the lift known by its name and by an unknown word behind its sets; none else."""
    if len(entry.pieces) < LEAST_AHEAD_OF_A_WAY or entry.pieces[-1].kind is not K.PLAIN:
        return ()
    last, before = entry.pieces[-1], entry.pieces[-2].kind
    return together(entry.phrase, last.text, catalogue) if before is K.NUMBER or before is K.COMMA else ()


def together(lift: str, way: str, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """Whose both are told as one: "peso muerto rumano", "frontkniebeuge"."""
    told = (f"{lift} {way}", f"{way} {lift}", f"{way}{lift}")
    return next((owners for phrase in told if (owners := catalogue.owners(phrase))), ())
