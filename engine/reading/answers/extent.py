"""Which of the sets something was told of, in an answer: "all of them", "both", "only the last", "just the first".

What is worn at lifting makes no other lift of the sets: "with a belt on" is no belt squat.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.answers.answering import Answering, exercises, settled
from engine.reading.values import Answer, Reading, StillOpen
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

TWO = 2
ONE_OF_THEM = frozenset((K.LAST, K.FIRST, K.NUMBER))


def by_extent(told: Answering) -> Answer | None:
    """The reading in which all sets are alike, or the one in which only the set named has its way or its load."""
    readings = told.asked.readings
    pieces = told.prepared.pieces
    if len(readings) != TWO or any(piece.kind is K.TIMES for piece in pieces):
        return None
    alike = [_sorts(reading) for reading in readings]
    same = [one.reps for one in readings[0].sets] == [one.reps for one in readings[1].sets]
    if not same or alike[0] == alike[1]:
        return None
    every, some = sorted(readings, key=lambda reading: alike[readings.index(reading)])
    if named := told.names():
        alone = not told.numbers() and not any_cued(told.words, WORN)  # "on the belt squat machine"
        alone = alone and named == set(exercises(every)) < set(exercises(some))
        return settled(told, every.sets) if alone and not DENYING & {piece.kind for piece in pieces} else None
    if _is_worn(told.words):
        return StillOpen(told.asked) if DENYING & {piece.kind for piece in pieces} else settled(told, every.sets)
    if any(piece.kind is K.BOTH or EVERY & CUES_OF[piece.text] for piece in pieces):
        return settled(told, every.sets)
    return _by_the_one(told, every, some)


DENYING = frozenset((K.NOT, K.DENY, K.NEVER))


def _by_the_one(told: Answering, every: Reading, some: Reading) -> Answer | None:
    """ "only the last", "just the 5"; "the last" may be the last of the readings, too."""
    pieces = told.prepared.pieces
    only = next((at for at, piece in enumerate(pieces) if piece.kind is K.ONLY), None)
    pointed = [piece for piece in pieces[only:] if piece.kind in ONE_OF_THEM]
    if not pointed:
        return None
    the_one = _is_the_one(pointed[0], every, some)
    if only is None:
        shown = told.asked.readings[0 if pointed[0].kind is K.FIRST else -1]
        either = the_one and pointed[0].kind is not K.NUMBER and shown is not some
        return StillOpen(told.asked, again=True) if either else None
    if the_one and all(_is_its_load(piece, some) for piece in pointed[1:]):
        return settled(told, some.sets)
    return StillOpen(told.asked, again=True)


def _is_worn(words: Sequence[str]) -> bool:
    """ "with a belt", "wore a belt", "belt on"."""
    worn = next((at for at, word in enumerate(words) if is_cued(word, WORN)), None)
    if worn is None:
        return False
    return words[worn + 1 :] == ("on",) or any(is_cued(word, WEARING) for word in words[:worn])


WORN, WEARING = frozenset(("worn",)), frozenset(("wearing",))
EVERY = frozenset(("all", "every"))


def _is_its_load(piece: Piece, some: Reading) -> bool:
    """ "only the 5 had 10"."""
    return piece.kind is K.NUMBER and any(one.load is not None and one.load.amount == piece.value for one in some.sets)


def _sorts(reading: Reading) -> tuple[int, int]:
    """How many lifts the sets are of, and how many loads they have."""
    return len({one.exercise for one in reading.sets}), len({(one.exercise, one.load) for one in reading.sets})


def _is_the_one(pointed: Piece, every: Reading, some: Reading) -> bool:
    """Whether the set that both readings tell alike is the one that the answer points at."""
    meant = [at for at, (one, other) in enumerate(zip(every.sets, some.sets, strict=True)) if one == other]
    if len(meant) != 1:
        return False
    if pointed.kind is K.NUMBER:
        return [at for at, one in enumerate(some.sets) if one.reps == pointed.value] == meant
    return meant[0] == (0 if pointed.kind is K.FIRST else len(some.sets) - 1)
