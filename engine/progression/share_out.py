"""Sets of one exercise shared out among the slots of a day that ask for it: a heavy slot, then a light one.

Decided: in the order done, each slot takes a run of sets. Of all ways to cut, the one that comes nearest to the numbers
of sets asked, with the fewest changes of load inside a run and the fewest sets whose load is nearer to what another
slot starts at. Repetitions have no say: else one more of them could move a set into another slot and cost the first
its step.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import combinations_with_replacement, pairwise

from engine.values.load import Load
from engine.values.plan import Slot
from engine.values.sets import SetKind, SetRecord


def shared_out(records: Sequence[SetRecord], slots: Sequence[Slot]) -> tuple[tuple[SetRecord, ...], ...]:
    """For each slot its sets, in the order done.

    Shape: `records` of one exercise; as many parts as slots.
    """
    if len(slots) == 1:
        return (tuple(records),)
    return min(_cuts(records, len(slots)), key=lambda parts: _misfit(parts, slots))


def _cuts(records: Sequence[SetRecord], parts: int) -> Iterator[tuple[tuple[SetRecord, ...], ...]]:
    for cuts in combinations_with_replacement(range(len(records) + 1), parts - 1):
        yield tuple(tuple(records[start:end]) for start, end in pairwise((0, *cuts, len(records))))


def _misfit(parts: Sequence[Sequence[SetRecord]], slots: Sequence[Slot]) -> int:
    loads = [[record.done.load for record in part if record.done.kind is SetKind.WORK] for part in parts]
    numbers = sum(abs(len(part) - slot.sets) for part, slot in zip(loads, slots, strict=True))
    changes = sum(one != other for part in loads for one, other in pairwise(part))
    starts = [slot.load.kilograms() if isinstance(slot.load, Load) else None for slot in slots]
    strays = sum(_strays(load, at, starts) for at, part in enumerate(loads) for load in part)
    # A change of load weighs twice: a set too many here is one too few there, and both are counted.
    return numbers + 2 * changes + strays


def _strays(load: Load | None, at: int, starts: Sequence[Decimal | None]) -> bool:
    """Whether a load is nearer to what another slot starts at."""
    mine = starts[at]
    if load is None or mine is None:
        return False
    mass = load.kilograms()
    return any(other is not None and abs(mass - other) < abs(mass - mine) for other in starts)
