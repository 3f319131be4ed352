"""Whether a number that puts a set right is its load, by the words beside it and by what stands."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.load_or_reps import is_rather_the_load
from engine.reading.corrections.retyped import is_load_retyped
from engine.reading.words.cues import CUES_OF, any_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, texts_in_order
from engine.reading.words.tokens import HALF
from engine.values.load import Basis
from engine.values.sets import SetDone

NEAR_THE_REPS = 3
FAR_FROM_THE_LOAD = 3
"""How many times a half number the load before it must be, so that it is rather of reps. Common practice, no source."""


def is_far_from_load(number: Piece, clause: Sequence[Piece], done: SetDone) -> bool:
    """ "that was 7.5", "last was 7 and a half" behind 60x8: reps, and no load."""
    half = number.role is Role.BARE and number.value % 1 == HALF and done.seconds is None and done.metres is None
    linked = any(piece.kind in (K.AT, K.WITH) or "loadword" in CUES_OF[piece.text] for piece in clause)
    if not half or linked or done.load is None or number.value > MOST_LOADED_REPS:
        return False  # "47.5 i mean" behind 475: a point that was left out
    return done.load.amount == 0 or number.value * FAR_FROM_THE_LOAD < done.load.amount


NEAREST = Decimal("0.5")


def is_load(number: Piece, clause: Sequence[Piece], done: SetDone) -> bool:
    at = clause.index(number)
    if number.role in (Role.REPS, Role.SECONDS, Role.METRES, Role.SETS) or (at and clause[at - 1].kind is K.FOR):
        return False
    if any(piece.kind is K.REPS for piece in clause):
        return False
    linked = any("loadword" in CUES_OF[p.text] for p in clause)
    linked = linked or any(p.kind in (K.AT, K.WITH) for p in clause[:at])  # "7 with rpe 9" is linked to no load
    fits_reps = number.value == int(number.value) and 0 < number.value <= MOST_LOADED_REPS
    body = done.load is not None and done.load.basis is Basis.BODY and done.load.amount == 0
    timed = done.seconds is not None or done.metres is not None
    if (body or timed) and number.role is Role.BARE and not linked:
        return False
    if timed and number.role is Role.PLURAL:
        return False  # "no, 50s" of a hold
    if number.role is Role.PLURAL and done.load is not None and done.load.basis is Basis.PER_HAND:
        if number.value == done.reps:
            return True  # as reps it would change nothing: "those were 12s" behind 3x12 with the 14s
        return abs(number.value - done.load.amount) <= abs(number.value - done.reps)  # "those were the 28s"
    return number.role in (Role.LOAD, Role.CHANGE) or linked or not fits_reps


def weighs(told: Told, clause: Sequence[Piece], number: Piece, done: SetDone) -> bool:
    return (
        is_load(number, clause, done)
        or _is_of_a_stack(told, clause, number, done)
        or (K.REPS not in told.kinds() and is_load_retyped(number, done))
        or is_rather_the_load(told, number, done)
    )


def _is_of_a_stack(told: Told, clause: Sequence[Piece], number: Piece, done: SetDone) -> bool:
    """ "misread the stack, 25": where the words are of what is lifted, so is the number."""
    said = texts_in_order(clause) if len(told.numbers()) > 1 else told.words  # "weight was 82.5, last set 7"
    words = [*said, *(word.rstrip("s") for word in said)]
    bare = number.role is Role.BARE and K.REPS not in told.kinds() and done.load is not None
    return bare and done.seconds is None and done.metres is None and any_cued(words, STACKED)


STACKED = frozenset(("stacked", "loadword"))
