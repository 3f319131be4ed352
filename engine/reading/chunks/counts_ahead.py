"""A count of sets told ahead of what it counts: "140x3, 2 sets at 110x5", "3 sets: 8 reps, 8 reps, 6 reps".

counted = ( "," | "then" | LINE ) NUMBER "sets" [ "at" | "of" ] ( LOAD "x" REPS | REPS "at" LOAD )
The count is of what stands right behind it, and not of the set before it. Where as many sets follow as it counts, it
may be told ahead of each of them: asked.

listed = NUMBER "sets" REPS ( [ sign ] REPS )+       as many reps as the count says are one set each; else it is asked
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


def list_counted(chunks: Chunks) -> None:
    """Puts away a count ahead of a list of reps that it counts: "3 sets: 8 reps, 8 reps, 6 reps"."""
    found = chunks.found
    if chunks.result_from is not None or not COUNTED.issubset(chunks.roles):
        return  # "3 sets 8 reps 80 got 8 8 7"
    for at in reversed(range(len(found) - 1)):
        joined = _is_count_of_reps(found[at])
        if not joined and not _is_count(found[at]):
            continue
        behind = _behind_a_count(found, at)
        places = [place for place, chunk in enumerate(behind) if _is_reps(chunk)]
        listed = joined + len(places)
        if not joined and Role.REPS not in [behind[place].factors[0][0].role for place in places[:1]]:
            continue  # "3 sets: 8, 8, 6"
        if listed == found[at].factors[0][0].value > 1:
            found[at : at + 1] = [_without_count(found[at])] if joined else _load_of(found[at])
        elif listed > 1:
            # "3 sets of 8 reps, 6 reps": one more of them, or what one came to; at a load of its own it is one more.
            start = 0 if joined else places[0]
            chunks.dangling = chunks.dangling or places == list(range(start, start + len(places)))


def _load_of(count: Chunk) -> list[Chunk]:
    """ "2 sets at 55, 12 reps, 6 reps": the load that the count was told with heads the list."""
    return [Chunk([(load._replace(role=Role.LOAD),)], before=count.before) for load in count.at[:1]]


def _is_count_of_reps(chunk: Chunk) -> bool:
    """ "3 sets of 8 reps"."""
    if chunk.size != PAIR or chunk.times is not None or not chunk.factors[0]:
        return False
    (sets, *others), reps = chunk.factors
    return not others and sets.role is Role.SETS and len(reps) == 1 and reps[0].role is Role.REPS


def _without_count(group: Chunk) -> Chunk:
    one = group.copy()
    one.factors = group.factors[1:]
    return one


def _behind_a_count(found: Sequence[Chunk], at: int) -> list[Chunk]:
    """What follows a count of sets, up to the next one."""
    behind: list[Chunk] = []
    for chunk in found[at + 1 :]:
        if any(number.role is Role.SETS for factor in chunk.factors for number in factor):
            break
        behind.append(chunk)
    return behind


def _is_reps(chunk: Chunk) -> bool:
    """ "8 reps", or a bare "8" behind a sign, "8 reps, 8": behind "10 reps" a 25 alone is their load."""
    number = chunk.factors[0] if chunk.size == 1 and chunk.times is None else ()
    if len(number) != 1 or number[0].value > MOST_LOADED_REPS:
        return False
    return number[0].role is Role.REPS or (number[0].role is Role.BARE and chunk.before is not None)


PAIR = 2
COUNTED = frozenset((Role.SETS, Role.REPS))


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
