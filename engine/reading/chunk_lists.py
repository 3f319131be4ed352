"""Lists that belong together although their chunks were told apart: a load for each set, a total and its parts."""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunk_results import MOST_LOADED_REPS
from engine.reading.chunks import Chunk, Chunks
from engine.reading.pieces import Piece, Role

TOTALS = (Role.BARE, Role.REPS)
LEAST_WITH_A_TOTAL = 3


def gather_loads(chunks: Chunks) -> None:
    """Makes a load for each set one list: "4x8 80, 90, 100, 110"."""
    group, *rest = chunks.found
    if group.size != 2 or group.at or any(chunk.size != 1 or chunk.at or chunk.counted for chunk in rest):
        return
    sets = group.factors[0][0].value if group.factors[0] else 0
    loads = tuple(number for chunk in rest for number in chunk.factors[0])
    if sets == len(loads) and all(one.role is Role.BARE and one.value > MOST_LOADED_REPS for one in loads):
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


def split_total(chunks: Chunks) -> None:
    """Makes five sets of eight of "40 total in sets of 8"; any other total is left without a place."""
    numbers = [number for chunk in chunks.found for factor in chunk.factors for number in factor]
    if len(numbers) > 1 and any(one.role is Role.PLURAL and one.value * 2 == numbers[0].value for one in numbers):
        del chunks.found[0]  # "total 48 (24s)": the one in each hand is the load
        return
    total = _place_of_total(chunks)
    if total is not None:
        del chunks.found[total]  # "8 8 8, total 24"
        return
    if len(numbers) == 2 and numbers[1].role is Role.SETS and numbers[1].value:
        reps = numbers[0]._replace(value=numbers[0].value / numbers[1].value, role=Role.REPS)
        chunks.loose += numbers[:1]  # "50 reps total in 5 sets": perhaps ten each
        chunks.found = [Chunk([(numbers[1],), (reps,)])] if reps.value % 1 == 0 else chunks.found
        return
    whole, each = (numbers + numbers)[:2] if len(numbers) in (1, 2) else (None, None)
    if whole is None or each is None or len(numbers) < 2 or each.value < 1 or whole.value % each.value:
        chunks.loose += numbers[:1]
        return
    sets = whole._replace(value=whole.value / each.value, role=Role.SETS)
    chunks.found = [Chunk([(sets,), (each._replace(role=Role.REPS),)])]


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
