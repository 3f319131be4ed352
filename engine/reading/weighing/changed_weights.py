"""A weight put on the body, or taken off it, among the plain numbers of a lift that is told to be so changed."""

from __future__ import annotations

from decimal import Decimal

from engine.reading.chunks.chunks import Chunk, Chunks, numbers_in
from engine.reading.weighing.ways import UNSETTLED
from engine.reading.words.pieces import Role
from engine.values.effort import TOP_OF_SCALE

PAIR = 2
PLAINLY_A_LOAD = 20.0
MUCH_MORE = Decimal("1.5")


def told_with_a_weight(chunks: Chunks) -> tuple[list[Chunk], float]:
    """The chunks, with the number that may be the weight told as a change of the body's, and how likely it is.

    Shape: no chunks where none of the numbers may be it.
    """
    changed, weight = _weighed(chunks)
    if not changed and _is_group_behind_a_number(chunks):
        changed, weight = [_as_change(chunks.found[0]), *chunks.found[1:]], PLAINLY_A_LOAD
    if not changed:
        changed, weight = _listed_behind_loads(chunks), PLAINLY_A_LOAD
    return (changed, weight) if changed else _headed_by_a_weight(chunks)


def _headed_by_a_weight(chunks: Chunks) -> tuple[list[Chunk], float]:
    """ "weighted pull ups 20 8 8": a list of bare numbers whose first may be the weight added, or taken off."""
    numbers = numbers_in(chunks)
    alone = all(chunk.size == 1 and len(chunk.factors[0]) == 1 and not chunk.at for chunk in chunks.found)
    if not alone or len(numbers) < 2 or any(number.role is not Role.BARE for number in numbers):
        return [], 0.0
    first, most = numbers[0].value, max(number.value for number in numbers[1:])
    if first == numbers[1].value:
        return [], 0.0
    return [_as_change(chunks.found[0]), *chunks.found[1:]], PLAINLY_A_LOAD if first >= most * MUCH_MORE else UNSETTLED


def _weighed(chunks: Chunks) -> tuple[list[Chunk], float]:
    """ "weighted dips 20x8, 8", "weighted dips 3x8 20": pairs with their first number as the weight, or the number
    behind them; and how likely that is. Empty where the pairs count sets, or are none.

    Nobody does ten sets of a weighted lift and tells no weight, and few do six (common practice, no source).
    """
    paired = [chunk.size for chunk in chunks.found]
    if PAIR not in paired or min(paired) < 1 or max(paired) > PAIR or any(map(_tells_a_load_behind, chunks.found)):
        return [], 0.0
    heads = [chunk.factors[0][0] for chunk in chunks.found if all(chunk.factors) and len(chunk.factors[0]) == 1]
    if len(heads) < len(paired) or any(head.role is not Role.BARE for head in heads):
        return [], 0.0
    first, last = chunks.found[0], chunks.found[-1]
    if paired == [PAIR, 1] and last.before is None and last.factors[0][0].value > first.factors[1][0].value:
        return [first, _as_change(last)], 1.0
    weights = [head.value for head, size in zip(heads, paired, strict=True) if size == PAIR]
    if min(weights) < MAY_BE_A_WEIGHT or paired[0] != PAIR:
        return [], 0.0
    sure = min(weights) >= SURELY_A_WEIGHT or any(weight % 1 for weight in weights)
    weighed = [_as_change(chunk) if chunk.size == PAIR else chunk for chunk in chunks.found]
    return weighed, PLAINLY_A_LOAD if sure else 1.0


def _tells_a_load_behind(chunk: Chunk) -> bool:
    return any(load.role is not Role.BARE or load.value > TOP_OF_SCALE for load in chunk.at)


MAY_BE_A_WEIGHT, SURELY_A_WEIGHT = 6, 10


def _listed_behind_loads(chunks: Chunks) -> list[Chunk]:
    """ "weighted dips 35 8 8, 45 5": a load ahead of each list; empty where the numbers do not stand so."""
    lists: list[list[Chunk]] = []
    for chunk in chunks.found:
        if chunk.size != 1 or len(chunk.factors[0]) != 1 or chunk.at:
            return []
        if not lists or chunk.before is not None:
            lists.append([])
        lists[-1].append(chunk)
    headed = [one for one in lists if one[0].factors[0][0].role is Role.BARE]
    if len(lists) < 2 or not headed or not all(map(_is_headed, headed)):
        return []
    heads = {id(one[0]) for one in headed}
    return [_as_change(chunk) if id(chunk) in heads else chunk for chunk in chunks.found]


def _is_headed(numbers: list[Chunk]) -> bool:
    """Whether the first number is plainly the load of the reps behind it."""
    head, *reps = [chunk.factors[0][0] for chunk in numbers]
    bare = bool(reps) and all(one.role is Role.BARE for one in reps)
    return bare and head.value >= max(one.value for one in reps) * MUCH_MORE


def _as_change(chunk: Chunk) -> Chunk:
    other = chunk.copy()
    other.factors = [(chunk.factors[0][0]._replace(role=Role.CHANGE),), *chunk.factors[1:]]
    return other


def _is_group_behind_a_number(chunks: Chunks) -> bool:
    """ "weighted 15 4x3": one bare number, then sets and reps."""
    if [chunk.size for chunk in chunks.found] != [1, 2] or chunks.found[0].at or chunks.found[1].at:
        return False
    head = chunks.found[0].factors[0]
    return len(head) == 1 and head[0].role is Role.BARE and len(chunks.found[1].factors[0]) == 1
