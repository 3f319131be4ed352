"""Answers where words beside the sets that are shown are in doubt: "1" of the one choice, or the load as it was.

answer = "1"                                        the sets as they are shown
       | { said } NUMBER [ unit ] { said }          "92.5" to "3x8 at ninety something": the load as it was

A bare number is no set in the place of several that were told, so that other numbers leave the question open.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from engine.reading.answers.answering import Answering, settled
from engine.reading.answers.loads import load_alone
from engine.reading.answers.words import PLACE_FILLERS, place_of
from engine.reading.marks.roughly import is_rough, tells_roughly
from engine.reading.values import Answer, Doubt, StillOpen
from engine.reading.words.pieces import Piece, Role
from engine.values.load import Load
from engine.values.sets import SetDone

BESIDE_THE_SETS = (Doubt.WORDS, Doubt.UNKNOWN_NAME, Doubt.NO_REPS)
MOST_APART = Decimal("0.3")
"""How far the load as it was is from the one told roughly at most. Common practice, no source."""
NEAR_THE_REPS = 3


def words_in_doubt(told: Answering) -> Answer | None:
    """What the words settle of such a question; None where they may be the sets told again."""
    if told.asked.doubt not in BESIDE_THE_SETS or len(told.asked.readings) != 1:
        return None
    sets = told.asked.readings[0].sets
    if place_of(" ".join(word for word in told.words if word not in PLACE_FILLERS)) == 0:
        return settled(told, sets)
    if told.names() or told.tells_sets() or len(told.numbers()) != 1:
        return None
    number = load_alone(told)
    if number is not None and is_rough(told.asked.typed) and all(_may_be_its_load(number, one) for one in sets):
        return settled(told, [_at(one, number) for one in sets])
    return StillOpen(told.asked, again=True) if len(sets) > 1 else None


def leaves_it_open(told: Answering) -> bool:
    """Whether the answer tells its number roughly in its turn: "4 or so", "55ish"."""
    return bool(told.numbers()) and tells_roughly(told.prepared.pieces, told.prepared.cleaned)


def _may_be_its_load(number: Piece, done: SetDone) -> bool:
    load = done.load
    if load is None or not load.amount or abs(number.value - load.amount) > MOST_APART * load.amount:
        return False
    return number.role is Role.LOAD or abs(number.value - done.reps) > NEAR_THE_REPS


def _at(done: SetDone, number: Piece) -> SetDone:
    if done.load is None:
        return done
    return replace(done, load=Load(number.value, number.unit or done.load.unit, done.load.basis))
