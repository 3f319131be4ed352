"""The reps of all sets told by parts, in their order: "first three 5, then 4 and 3", "first two were 8, then 7, 6".

parts = "first" NUMBER [ "was" ] reps { ( "," | "then" | "and" ) reps }      as many as sets stand; else it is unclear
"""

from __future__ import annotations

from dataclasses import replace

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.said_to_be import is_be
from engine.reading.latest_sets import latest_of_it
from engine.reading.values import Correction
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Role, kinds_of

BETWEEN = frozenset((K.NUMBER, K.COMMA, K.THEN, K.AND, K.FILLER, K.STOP, K.DASH, K.REPS))
REPS = frozenset((Role.BARE, Role.REPS))
LEAST = 3
"""Numbers: so many sets, their reps, and those of one set more."""


def reps_by_parts(told: Told) -> list[int] | None:
    """The reps of each set that the message tells by parts; None where it tells none so."""
    pieces = [piece for piece in told.pieces if not is_be(piece)]
    kinds = [piece.kind for piece in pieces]
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    if kinds[:3] != [K.FIRST, K.NUMBER, K.NUMBER] or len(numbers) < LEAST or not kinds_of(pieces[3:]) <= BETWEEN:
        return None
    if any(piece.role not in REPS or piece.value % 1 or piece.value > MOST_LOADED_REPS for piece in numbers):
        return None
    first, *reps = [int(piece.value) for piece in numbers]
    return [reps[0]] * first + reps[1:]


def told_by_parts(told: Told) -> Correction | None:
    """The latest sets, with the reps told of each."""
    reps, group = reps_by_parts(told), latest_of_it(told.context)
    if reps is None or len(reps) != len(group) or any(record.done.seconds is not None for record in group):
        return None
    for record, count in zip(group, reps, strict=True):
        told.set_to(record, replace(told.now(record), reps=count))
    return told.correction()
