"""Whether a reading accounts for the whole message: every number and sign has its place, and nothing in it is odd.

A set is never recorded beside a number that found no place, nor with a number that no lifter means; such a message is
asked about, or left unread with its reason. Places are sets, reps, load, effort, time, distance, or a word that says
what else a number is: rest, tempo, seat, date, body weight, a label, a scale.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.chunks import Chunks, numbers_in
from engine.reading.kinds import K
from engine.reading.pieces import Piece, Role
from engine.reading.scales import is_bare_tempo
from engine.reading.values import Doubt
from engine.values.exercise import Exercise, Loading, Measure
from engine.values.sets import SetDone

MOST_LOADED_REPS_RECORDED = 100
"""More reps than this with a load are asked about. Common practice, no source."""

MOST_BODY_REPS_RECORDED = 300
"""More reps than this in one set without a load are asked about. Common practice, no source."""

MOST_SETS_RECORDED = 40
"""More sets than this of one exercise in one message are asked about. Common practice, no source."""

MOST_SETS_OF_A_MESSAGE = 120
"""More sets than this in one message are asked about. Common practice, no source."""

MOST_NUMBERS_OF_A_LIFT = 150
"""More numbers than this behind one name are not read: no list of sets is as long. Common practice, no source."""

LONGEST_HOLD_RECORDED = 3_600
"""Seconds; a longer hold is asked about. Common practice, no source."""

TOLD_LOADS = frozenset((Role.LOAD, Role.PLURAL, Role.BAR, Role.BODY))
HELD_IN_ONE_HAND = frozenset((Loading.PER_HAND, Loading.IMPLEMENT, Loading.BODY, Loading.BAND))


def unreadable(pieces: Sequence[Piece]) -> str:
    """The first number that cannot be read ("1?5", "1e309", "80qq"), as typed; empty where there is none."""
    return next(iter([piece.text for piece in pieces if piece.role is Role.UNREADABLE]), "")


def left_over(pieces: Sequence[Piece], chunks: Chunks, exercise: Exercise) -> bool:
    """Whether a number or a sign of these pieces found no place in the sets."""
    if chunks.loose or chunks.pins or chunks.dangling:
        return True
    if any([_is_day_or_code(piece) for piece in pieces if piece.text[0] == "0"]):
        return True
    if chunks.sides and not exercise.one_sided and exercise.loading not in HELD_IN_ONE_HAND:
        return True  # "squat 80 5 each leg"
    return exercise.measure is Measure.REPS and _is_wordless_tempo(pieces, chunks, exercise)


def _is_day_or_code(piece: Piece) -> bool:
    """ "02": nobody writes reps or loads with a zero in front."""
    return piece.kind is K.NUMBER and len(piece.text) > 1 and piece.text[0] == "0" and piece.text.isdigit()


def _is_wordless_tempo(pieces: Sequence[Piece], chunks: Chunks, exercise: Exercise) -> bool:
    """Four digits taken for a tempo with no word to them, where no load was told: they may be anything."""
    if exercise.loading is Loading.BODY or not any([is_bare_tempo(p) for p in pieces if p.kind is K.NOTE]):
        return False
    told = any(number.role in TOLD_LOADS or number.value > MOST_LOADED_REPS_RECORDED for number in numbers_in(chunks))
    return not told and not any(chunk.at for chunk in chunks.found) and len(numbers_in(chunks)) < LEAST_WITH_A_LOAD


LEAST_WITH_A_LOAD = 3
"""Sets, reps and a load are three numbers; fewer do not hold a load of their own."""


def odd(sets: Sequence[SetDone]) -> Doubt | None:
    """What is so unlikely about the sets that they are asked about first; None where nothing is."""
    for one in sets:
        loaded = one.load is not None and one.load.amount > 0
        if one.reps > (MOST_LOADED_REPS_RECORDED if loaded else MOST_BODY_REPS_RECORDED):
            return Doubt.NUMBERS
        if one.seconds is not None and one.seconds > LONGEST_HOLD_RECORDED:
            return Doubt.NUMBERS
    return None
