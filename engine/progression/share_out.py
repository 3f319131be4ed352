"""Sets of one exercise shared out among the slots of a day that ask for it: a heavy slot, then a light one.

Decided: in the order done, each slot takes a run of sets; of all ways to cut, the one whose reps lie nearest to
what the slots ask, then whose numbers of sets do.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations_with_replacement, pairwise

from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Slot, Target
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


def _misfit(parts: Sequence[Sequence[SetRecord]], slots: Sequence[Slot]) -> tuple[int, int]:
    works = [[record for record in part if record.done.kind is SetKind.WORK] for part in parts]
    reps = sum(_away(record.done.reps, slot.target) for part, slot in zip(works, slots, strict=True) for record in part)
    sets = sum(abs(len(part) - slot.sets) for part, slot in zip(works, slots, strict=True))
    # A set too many or too few weighs as one rep: else an early stop would push reps into the wrong slot.
    return reps + sets, sets


def _away(reps: int, target: Target) -> int:
    match target:
        case Reps(count):
            return abs(reps - count)
        case RepRange(low, high):
            return max(low - reps, reps - high, 0)
        case MaxReps() | Seconds() | Metres():
            return 0
