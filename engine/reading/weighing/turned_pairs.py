"""Sets and reps that may stand the other way round: "cable crunch 10x3 50" is ten triples or three tens.

Sets stand first with most writers, and in a lift of many joints ten triples are a scheme of their own. In a lift of one
joint nobody does them, and a plan of three tens makes three tens of it whatever the lift: there both are weighed. So
they are where an x stands apart from the reps of a load: "60 8 x3".
"""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.choices import ON_THE_BODY
from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.weighing.history import Known
from engine.reading.words.pieces import Role
from engine.values.exercise import Exercise, Pattern
from engine.values.plan import RepRange, Reps, Target

OF_ONE_JOINT = frozenset((Pattern.ISOLATION, Pattern.TRUNK))
PERHAPS_REPS = range(8, 11)
PERHAPS_SETS = range(2, 5)
"""So many sets of so few reps nobody does of a lift of one joint. Common practice, no source."""
PERHAPS_TIMES = range(2, 6)
"""So often at most a set is told to have been done in figures behind an x. Common practice, no source."""


def may_be_turned(sets: Decimal | int, reps: Decimal | int, exercise: Exercise, known: Known) -> bool:
    """Whether so many sets of so many reps may be as many reps in as many sets."""
    if sets <= reps:
        return False
    loaded = exercise.pattern in OF_ONE_JOINT and exercise.loading not in ON_THE_BODY
    if loaded and sets in PERHAPS_REPS and reps in PERHAPS_SETS:
        return True
    slot = known.planned
    return slot is not None and slot.sets == reps and slot.sets != sets and _holds(slot.target, sets)


def _holds(target: Target, reps: Decimal | int) -> bool:
    match target:
        case Reps(count):
            return count == reps
        case RepRange(low, high):
            return low <= reps <= high
        case _:
            return False


def with_pairs_turned(chunks: Chunks, exercise: Exercise, known: Known) -> Chunks | None:
    """The chunks with the pairs that may be turned the other way round; None where none may be."""
    ahead = [None, *chunks.found]
    turned = [
        _is_turned(chunk, exercise, known) or _is_behind_its_load(before, chunk)
        for before, chunk in zip(ahead, chunks.found, strict=False)
    ]
    if True not in turned:
        return None
    return chunks.with_found([_turned(one) if is_ else one for one, is_ in zip(chunks.found, turned, strict=True)])


def _is_behind_its_load(before: Chunk | None, chunk: Chunk) -> bool:
    """ "bench 60 8 x3", "8 x3" of the lift in hand: eight reps three times, as the x stands apart from them."""
    if not chunk.x_apart or chunk.of_each or chunk.of_sides:
        return False
    if before is not None and (before.size != 1 or before.at):
        return False
    if before is not None and chunk.before is not None:
        return False
    if [len(factor) for factor in chunk.factors] != [1, 1]:
        return False
    (first,), (second,) = chunk.factors
    return first.role is second.role is Role.BARE and second.value in PERHAPS_TIMES and second.value < first.value


def _is_turned(chunk: Chunk, exercise: Exercise, known: Known) -> bool:
    if len(chunk.factors) != 2 or chunk.counted or chunk.spoken_for:
        return False
    left, right = chunk.factors
    if len(left) != 1 or len(right) != 1:
        return False
    (first,), (second,) = left, right
    return first.role is second.role is Role.BARE and may_be_turned(first.value, second.value, exercise, known)


def _turned(chunk: Chunk) -> Chunk:
    other = chunk.copy()
    other.factors = chunk.factors[::-1]
    return other
