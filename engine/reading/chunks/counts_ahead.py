"""A count of sets told ahead of what it counts: "140x3, 2 sets at 110x5", "3 sets: 8 reps, 8 reps, 6 reps".

counted = ( "," | "then" | LINE ) NUMBER "sets" [ "at" | "of" ] ( LOAD "x" REPS | REPS "at" LOAD )
The count is of what stands right behind it, and not of the set before it. Where as many sets follow as it counts, it
may be told ahead of each of them: asked.

listed = NUMBER "sets" REPS ( [ sign ] REPS )+       as many reps as the count says are one set each; else it is asked
each   = ( NUMBER "sets" REPS [ LOAD ] ){2,}          "two sets 8, one set 6": each count is of the reps it touches
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

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


def counts_of_each(chunks: Chunks) -> None:
    """Puts several counts to the reps that stand right behind each, or right ahead: "80: 8 2 sets, 6 1 set"."""
    found = chunks.found
    counts = [at for at, chunk in enumerate(found) if _is_bare_count(chunk)]
    if len(counts) < PAIR or chunks.result_from is not None:
        return
    start = counts[0] if counts[0] <= 1 and all(map(_is_load_alone, found[: counts[0]])) else len(found)
    if counts[-1] == len(found) - 1 and start == len(found):
        _put_behind(found, counts)
        return
    groups = [found[at:end] for at, end in pairwise([*counts, len(found)])]
    tail = groups[-1][2:] if start == 0 and not any(len(group) > PAIR for group in groups[:-1]) else []
    groups[-1] = groups[-1][: len(groups[-1]) - len(tail)]
    sets = [_counted_so(group) for group in groups]
    told = [chunk for chunk in sets if chunk is not None]
    if start < len(found) and len(told) == len(sets):
        found[start:] = told + tail


def _put_behind(found: list[Chunk], counts: Sequence[int]) -> None:
    """ "100: 8 2 sets, 6 1 set"."""
    start = counts[0] - 1
    touching = all(found[at].before is None and _tells_reps(found[at - 1]) for at in counts)
    if touching and list(counts) == list(range(start + 1, len(found), PAIR)):
        found[start:] = [_pair(found[at], found[at - 1]) for at in counts]


def _counted_so(group: Sequence[Chunk]) -> Chunk | None:
    """ "two sets 8", "two sets 5 100", "two sets 100 5", "two sets 100x5"; None for anything else."""
    count, *told = group
    if not told or any(chunk.before is not None for chunk in told):
        return None
    if len(told) == 1 and _tells_reps(told[0]):
        return _pair(count, told[0])
    if len(told) == 1 and _is_one_set(told[0]):
        return _often(told[0], count)
    if len(told) == PAIR and _tells_reps(told[0]) and _is_load_alone(told[1]):
        loaded = _pair(count, told[0])
        loaded.at = told[1].factors[0]
        return loaded
    if len(told) == PAIR and _is_load_alone(told[0]) and _tells_reps(told[1]):
        return _often(Chunk([*told[0].factors, *told[1].factors]), count)
    return None


def _pair(count: Chunk, reps: Chunk) -> Chunk:
    pair = reps.copy()
    pair.factors = [*count.factors, *reps.factors]
    pair.before = count.before
    return pair


def _often(one: Chunk, count: Chunk) -> Chunk:
    counted = one.as_often(int(count.factors[0][0].value))
    counted.before = count.before
    return counted


def _is_bare_count(chunk: Chunk) -> bool:
    return _is_count(chunk) and not chunk.at and chunk.times is None and len(chunk.factors[0]) == 1


def _tells_reps(chunk: Chunk) -> bool:
    """ "8", "8 reps", "45s", and no load beside it."""
    number = chunk.factors[0] if chunk.size == 1 and not chunk.at and chunk.times is None else ()
    if len(number) != 1:
        return False
    typed = number[0].role in TYPED or (number[0].role is Role.PLURAL and number[0].value > MOST_LOADED_REPS)
    return typed or (number[0].role in BARE_REPS and number[0].value <= MOST_LOADED_REPS)


def _is_load_alone(chunk: Chunk) -> bool:
    number = chunk.factors[0] if chunk.size == 1 and not chunk.at and chunk.times is None else ()
    return len(number) == 1 and (number[0].role in LOADED or number[0].value > MOST_LOADED_REPS)


TYPED = frozenset((Role.SECONDS, Role.METRES))
BARE_REPS = frozenset((Role.BARE, Role.REPS))
LOADED = frozenset((Role.LOAD, Role.PLURAL))


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
