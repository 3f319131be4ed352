"""What the loads and reps of sets that stand together tell of warming up: whether they rise, which is the heaviest."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from engine.reading.chunks.chunks import Chunk, load_of_one_set
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, NOTHING, Role
from engine.values.sets import SetKind

SEVERAL = 2
RUNS_ON = frozenset((None, K.COMMA))


def keeps_its_reps(one: Chunk, other: Chunk) -> bool:
    """Whether the second of two sets has no fewer reps than the first, nor less load."""
    before, behind = values(one), values(other)
    if not before or not behind:
        return False
    return min(before) <= min(behind) and max(before) <= max(behind)


def mark_warm(run: list[Chunk]) -> None:
    """Marks each of these as a warm-up."""
    for chunk in run:
        chunk.kind = SetKind.WARMUP


def rising_to_the_last(run: list[Chunk]) -> list[Chunk]:
    """ "60x5, 80x3 and 100x2 were warm ups": the two that "and" joins, and those before them that they rise from."""
    loads = list(map(load_of_one_set, run))
    start = max(0, len(run) - SEVERAL)
    while start and 0 < loads[start - 1] < loads[start]:
        start -= 1
    return run[start:]


def runs_on(run: list[Chunk]) -> bool:
    """ "60x5 80x5 (warm-up)", "40x8, 60x5, 80x3 warm up": the lighter ones may well be warm-ups, too."""
    behind = 2 if ends_with_a_load(run) else 1
    ahead = run[:-behind]
    if ahead and run[-behind].size > 1 and heaviest(run[-1]) > max(map(heaviest, ahead)):
        return True  # "3x5 60, 80x3 warm up"
    paired = len(run) > 1 and run[-1].before in RUNS_ON and run[-1].size == run[-2].size == 2
    heads = [chunk.factors[0] for chunk in run[-2:]] if paired else []
    return bool(heads) and all(heads) and heads[0][0].value < heads[1][0].value


def ends_with_a_load(run: Sequence[Chunk]) -> bool:
    """Whether the last of these is a number right behind a pair: the load of "3x5 60"."""
    return len(run) > 1 and run[-1].size == 1 and run[-1].before is None and run[-2].size > 1


def values(chunk: Chunk) -> list[Decimal]:
    """The numbers of a chunk but for an empty bar, whose weight is none that was told."""
    return [number.value for factor in chunk.factors for number in factor if number.role is not Role.BAR]


def fewest(chunk: Chunk) -> Decimal:
    """The smallest number of a chunk: its reps, where it tells a load, too."""
    return min(values(chunk), default=NOTHING)


def loads_told(run: Sequence[Chunk]) -> int:
    """How many loads these tell: with their reps, behind them, or as a number on its own that can be nothing else."""
    alone = [one.factors[0][-1] for one in run if one.size == 1 and one.factors[0] and not one.at]
    heavy = [one for one in alone if one.role is Role.LOAD or one.value > MOST_LOADED_REPS]
    behind = [one for one in run if one.at and not one.at_sign]
    return (
        len(heavy) + len(behind) + len([one for one in run if not one.at and load_of_one_set(one) > MOST_LOADED_REPS])
    )


def heaviest(chunk: Chunk) -> Decimal:
    """The largest number of a chunk: its load, where it tells one."""
    return max([number.value for factor in (*chunk.factors, chunk.at) for number in factor], default=NOTHING)
