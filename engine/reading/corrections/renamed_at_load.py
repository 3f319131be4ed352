"""Another lift and its load for sets that stand: "those were dumbbells, 28 each", "it was incline at 55".

told = was ( name | equipment ) [ "," | "at" ] load          a load by its unit, "at", "each", a plural, or its size

A bare small number may be reps as well, and then nothing is changed.
"""

from __future__ import annotations

from dataclasses import replace

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.names import new_exercise
from engine.reading.corrections.renaming import renamed
from engine.reading.corrections.said_to_be import is_be
from engine.reading.entries.names import EQUIPMENT
from engine.reading.values import Correction
from engine.reading.words.cues import is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

COMPANY = frozenset((K.AT, K.WITH, K.KG, K.LB, K.EACH))
SAYING_A_LOAD = frozenset((Role.LOAD, Role.PLURAL))


def renamed_at_load(told: Told) -> Correction | None:
    """The sets of the latest message under the other name, at the load told beside it."""
    numbers = told.numbers()
    if len(numbers) != 1 or K.TIMES in told.kinds() or not (any(map(is_be, told.pieces)) or told.slipped):
        return None
    number = numbers[0]
    if not _is_load(number, told) or any(_is_spoken_of(told, at) for at in range(1, len(told.pieces))):
        return None
    bare = [piece for piece in told.pieces if piece is not number and piece.kind not in COMPANY]
    if new_exercise(replace(told, pieces=bare)) is None:
        return None
    for record, done in list(told.changes.values()):
        told.set_to(record, told.at_load(done, number))
    return told.correction()


def _is_spoken_of(told: Told, at: int) -> bool:
    """ "squat was 105 and bench was fine", "it was 105, no bench today": another lift, and no name of this one."""
    piece, behind = told.pieces[at], told.pieces[at + 1 : at + 2]
    if piece.kind is not K.NAME or not any(map(is_be, told.pieces[:at])):
        return False
    return told.pieces[at - 1].kind is K.DENY or any(is_be(one) or one.kind is K.NOTE for one in behind)


def _is_load(number: Piece, told: Told) -> bool:
    beside = told.kinds() & COMPANY
    return number.unit is not None or number.role in SAYING_A_LOAD or bool(beside) or number.value > MOST_LOADED_REPS


def is_of_another_lift(told: Told) -> bool:
    """Whether other equipment is told behind "was", so that a number beside it is no value of the lift that stands."""
    verb = next((at for at, piece in enumerate(told.pieces) if is_be(piece)), None)
    behind = [piece for piece in told.pieces[verb:] if piece.kind in EQUIPMENT] if verb is not None else []
    old = told.context.recent[-1].done.exercise
    return bool(behind) and K.NOT not in told.kinds() and renamed(behind, old, told.context, told.catalogue) is not None


def is_of_which_lift(told: Told) -> bool:
    """ "db, 28 each", "that was front squat, 8": of the sets before, or of those to come; no set more."""
    kinds = [piece.kind for piece in told.pieces]
    if _was_a_new_lift(told):
        return True
    alone = kinds[0] in EQUIPMENT and {*kinds[1:]} <= COMPANY | {K.NUMBER, K.COMMA, K.STOP} and len(told.numbers()) == 1
    return alone and (K.EACH in kinds or told.numbers()[0].role is Role.PLURAL)


def _was_a_new_lift(told: Told) -> bool:
    """ "that was front squat, 8" behind a bench press: its reps, or a set of its own."""
    pieces, done = told.pieces, {record.done.exercise for record in told.context.recent}
    if len(pieces) < FEWEST or not is_cued(pieces[0].text, BACK) or not is_be(pieces[1]):
        return False
    named = [piece for piece in pieces if piece.kind is K.NAME]
    return len(named) == 1 and done.isdisjoint(named[0].names) and len(told.numbers()) == 1 and pieces[2] is named[0]


BACK = frozenset(("that", "those"))
FEWEST = 4
"""Pieces: "that", "was", a lift and its reps."""
