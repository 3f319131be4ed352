"""Lists that belong together although their chunks were told apart: a load for each set, a total and its parts."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.chunks.chunks import Chunk, Chunks
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role

TOTALS = (Role.BARE, Role.REPS)
LOADED = (Role.LOAD, Role.PLURAL, Role.CHANGE)
TYPED = (Role.LOAD, Role.PLURAL)
LEAST_WITH_A_TOTAL = 3
LOADS = (Role.BARE, Role.LOAD)
MARKED = frozenset(("times", "kind", "efforts", "side", "missed", "plus", "again", "failure", "in_brackets"))
"""A chunk with one of these was told by itself, and no part of a list."""
FEWEST_SHARING = 2
"""So many loads ahead of one with its reps may share them with no word for it: "70, 80, 90 for 5"."""


def gather_loads(chunks: Chunks) -> None:
    """Makes a load for each set one list: "4x8 80, 90, 100, 110"."""
    group, *rest = chunks.found
    if group.size != 2 or len(group.at) > 1 or any(chunk.size != 1 or chunk.at or chunk.counted for chunk in rest):
        return
    sets = group.factors[0][0].value if group.factors[0] else 0
    loads = (*group.at, *[number for chunk in rest for number in chunk.factors[0]])
    if sets != len(loads) or not all(one.role in TYPED or _is_one_load((one,)) for one in loads):
        return
    if group.at:
        group.at, chunks.found = loads, [group]
    else:
        chunks.found = [group, Chunk([loads], before=rest[0].before)]


def share_reps(chunks: Chunks) -> None:
    """Gives each of several bare loads the reps behind an x that stands apart from the last: "60 70 80 x5"."""
    *loads, last = chunks.found
    if last.size != 2 or not last.x_apart or len(last.factors[0]) != 1 or len(last.factors[1]) != 1 or last.at:
        return
    alone = all(chunk.size == 1 and len(chunk.factors[0]) == 1 and not chunk.at for chunk in loads)
    told = [chunk.factors[0][0] for chunk in (*loads, last)] if alone else []
    bare = bool(told) and all(one.role is Role.BARE and one.value > MOST_LOADED_REPS for one in told)
    if bare and last.factors[1][0].role is Role.BARE and last.factors[1][0].value <= MOST_LOADED_REPS:
        last.factors = [tuple(told), last.factors[1]]
        last.before = loads[0].before
        chunks.found = [last]


def pair_lists(chunks: Chunks, of_all: bool) -> None:
    """Joins a list of reps with a list of loads: "12, 10, 8 @ 50, 55, 60", "10 reps: 40, 45, 50", "70, 80, 90 for 5".

    `of_all`: a word said that the reps are those of all the loads.
    """
    found = chunks.found
    if any(not MARKED.isdisjoint(chunk.marks()) for chunk in found):
        return
    head = next((at for at, chunk in enumerate(found) if chunk.size != 1 or chunk.at), len(found))
    if head == len(found):
        _share_reps_ahead(chunks)
    elif found[head].size == 1:
        _pair_with_loads(chunks, head)
    elif found[head].spoken_for and head >= (1 if of_all else FEWEST_SHARING):
        _share_reps_behind(chunks, head)


def _share_reps_ahead(chunks: Chunks) -> None:
    """ "10 reps: 40, 45, 50"."""
    reps, *rest = [chunk.factors[0] for chunk in chunks.found]
    if (
        len(rest) > 1
        and len(reps) == 1
        and reps[0].role is Role.REPS
        and all(_is_one_load(numbers) for numbers in rest)
    ):
        loads = tuple(numbers[0] for numbers in rest)
        chunks.found = [Chunk([loads, reps], before=chunks.found[0].before)]


def _share_reps_behind(chunks: Chunks, head: int) -> None:
    """ "70, 80, 90 for 5", and what follows it."""
    told = chunks.found[head]
    ahead = [chunk.factors[0] for chunk in chunks.found[:head]]
    if not all(_is_one_load(numbers) for numbers in (*ahead, told.factors[0])) or len(told.factors[1]) != 1:
        return
    told.factors[0] = (*[numbers[0] for numbers in ahead], *told.factors[0])
    told.before = chunks.found[0].before
    chunks.found = chunks.found[head:]


def _pair_with_loads(chunks: Chunks, head: int) -> None:
    """ "12, 10, 8 @ 50, 55, 60"."""
    last = chunks.found[head]
    reps = [*[chunk.factors[0] for chunk in chunks.found[:head]], last.factors[0]]
    behind = [chunk.factors[0] for chunk in chunks.found[head + 1 :]]
    told = (*[(load,) for load in last.at], *behind)
    bare = all(chunk.size == 1 and not chunk.at for chunk in chunks.found[head + 1 :])
    counts = all(len(one) == 1 and one[0].role in TOTALS and one[0].value <= MOST_LOADED_REPS for one in reps)
    if bare and counts and len(reps) == len(told) > 1 and all(_is_one_load(numbers) for numbers in told):
        last.factors, last.at = [tuple(numbers[0] for numbers in reps)], tuple(numbers[0] for numbers in told)
        last.joiner = K.SLASH
        last.before = chunks.found[0].before
        chunks.found = [last]


def _is_one_load(numbers: tuple[Piece, ...]) -> bool:
    """Whether this is one number, and too high for reps."""
    return len(numbers) == 1 and numbers[0].role in LOADS and numbers[0].value > MOST_LOADED_REPS


def split_total(chunks: Chunks) -> None:
    """Makes five sets of eight of "40 total in sets of 8"; any other total is left without a place."""
    numbers = [number for chunk in chunks.found for factor in chunk.factors for number in factor]
    if len(numbers) > 1 and any(one.role is Role.PLURAL and one.value * 2 == numbers[0].value for one in numbers):
        del chunks.found[0]  # "total 48 (24s)": the one in each hand is the load
        return
    if any(one.role in (Role.METRES, Role.SECONDS) for one in numbers):
        chunks.loose += numbers[:1]  # "70kg total 40m x2": of both hands?
        return
    total = _place_of_total(chunks)
    if total is not None:
        del chunks.found[total]  # "8 8 8, total 24"
        return
    load = _load_ahead(numbers)
    behind = chunks.found[-1].at if chunks.found else ()
    if load is None and len(behind) == 1 and len(chunks.found) == len(numbers):
        load = behind[0]  # "40 reps in sets of 8 at 60"
    elif load is not None:
        numbers = numbers[1:]  # "28k: 100 total in sets of 20"
    if len(numbers) == 2 and numbers[1].role is Role.SETS and numbers[1].value:
        reps = numbers[0]._replace(value=numbers[0].value / numbers[1].value, role=Role.REPS)
        chunks.loose += numbers[:1]  # "50 reps total in 5 sets": perhaps ten each
        chunks.found = [_group(numbers[1], reps, load)] if reps.value % 1 == 0 else chunks.found
        return
    whole, each = (numbers + numbers)[:2] if len(numbers) in (1, 2) else (None, None)
    if whole is None or each is None or len(numbers) < 2 or each.value < 1 or whole.value % each.value:
        chunks.loose += numbers[:1]
        return
    sets = whole._replace(value=whole.value / each.value, role=Role.SETS)
    chunks.found = [_group(sets, each._replace(role=Role.REPS), load)]


def _group(sets: Piece, reps: Piece, load: Piece | None) -> Chunk:
    group = Chunk([(sets,), (reps,)])
    group.at = () if load is None else (load,)
    return group


def _load_ahead(numbers: list[Piece]) -> Piece | None:
    """The load told with its unit in front of a total and its parts."""
    told = len(numbers) > 2 and numbers[0].role in LOADED
    return numbers[0] if told and not any(one.role is Role.LOAD for one in numbers[1:]) else None


def _place_of_total(chunks: Chunks) -> int | None:
    """The chunk that is what the reps of all the others come to."""
    if len(chunks.found) < LEAST_WITH_A_TOTAL or any(chunk.size not in (1, 2) for chunk in chunks.found):
        return None
    reps = [_reps_of(chunk) for chunk in chunks.found]
    whole, last = sum(reps), len(reps) - 1
    for place, chunk in enumerate(chunks.found):
        if chunk.size == 1 and chunk.factors[0][0].role in TOTALS:
            others = whole - reps[place]
            ways = (others, others - reps[place == 0], others - reps[last - (place == last)])
            if chunk.factors[0][0].value in ways:
                return place
    return None


def sums_up(chunks: Chunks, total: Piece) -> bool:
    """Whether a number is what all reps told come to: "8 8 8 = 24", "3x8 60, 24 total"."""
    told = [chunk for chunk in chunks.found if chunk.size in (1, 2)]
    if total.role not in TOTALS or len(told) != len(chunks.found) or not told:
        return False
    reps = [_reps_of(chunk) for chunk in told]
    ways = (sum(reps), sum(reps[1:]), sum(reps[:-1]))  # the first or the last may be the load
    return (len(told) > 1 and total.value in ways) or (len(told) == 1 and total.value == reps[0] and told[0].size == 2)


def _reps_of(chunk: Chunk) -> Decimal:
    numbers = [factor[0].value for factor in chunk.factors if factor]
    return numbers[0] * numbers[1] if len(numbers) == 2 else sum((n.value for n in chunk.factors[0]), Decimal(0))


LEAST_TOTAL = 21
"""A first number from here on may be what the others come to. Common practice, no source."""


def is_their_sum(head: Piece, behind: Sequence[Piece]) -> bool:
    """Whether a number is what those behind it come to: a total, rather than a set of its own."""
    return len(behind) > 1 and head.value >= LEAST_TOTAL and head.value == sum([one.value for one in behind])
