"""A count of sets told ahead of the one set that it counts, behind other sets: "140x3, 2 sets at 110x5".

counted = ( "," | "then" | LINE ) NUMBER "sets" [ "at" | "of" ] ( LOAD "x" REPS | REPS "at" LOAD )
The count is of what stands right behind it, and not of the set before it. Where as many sets follow as it counts, it
may be told ahead of each of them: asked.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.words.pieces import MOST_LOADED_REPS, Role


def count_ahead(chunks: Chunks) -> None:
    """Puts each such count to the set behind it."""
    found = chunks.found
    told = len(found)
    for at in reversed(range(len(found) - 1)):
        if _counts(found, at) and (at or len(found) < told):
            several = _sets_behind(found, at)
            chunks.dangling = chunks.dangling or (several > 1 and several == found[at].factors[0][0].value)
            counted = found[at + 1].as_often(int(found[at].factors[0][0].value))
            counted.before = found[at].before
            found[at : at + 2] = [counted]


def _counts(found: Sequence[Chunk], at: int) -> bool:
    count, told = found[at], found[at + 1]
    alone = count.size == 1 and not count.at and count.factors[0][0].role is Role.SETS
    if not alone or (at and count.before is None) or told.before is not None:
        return False
    counted_behind = at + 2 < len(found) and found[at + 2].before is None and _is_count(found[at + 2])
    return not counted_behind and _is_one_set(told)  # "140x3, 2 sets 110x5 3 sets": of which of them


def _is_count(chunk: Chunk) -> bool:
    return chunk.size == 1 and chunk.factors[0][0].role is Role.SETS


def _is_one_set(chunk: Chunk) -> bool:
    """ "110x5", "5 at 110"."""
    if chunk.times is not None:
        return False
    if chunk.size == 1:
        return len(chunk.at) == 1 and len(chunk.factors[0]) == 1 and not chunk.at_of_run
    head = chunk.factors[0] if chunk.size == 2 else ()
    return len(head) == 1 == len(chunk.factors[1]) and (head[0].role is Role.LOAD or head[0].value > MOST_LOADED_REPS)


def _sets_behind(found: Sequence[Chunk], at: int) -> int:
    """How many sets with their own loads follow one another there."""
    behind = found[at + 1 :]
    return next((place for place, chunk in enumerate(behind) if not _is_one_set(chunk)), len(behind))
