"""A session that has not happened yet, as it would be logged under the assumptions of a projection.

Assumed where a set is made:
reps, seconds, metres    what was asked
a rep range              one rep more on each set than last time at that load, from the bottom up to the top
maximum reps             what the last set of it reached, or 10 where none is known
a rep total              the total, shared evenly over the sets
A session that is not made: the last set, or the top set before back-offs, falls one rep short and is missed; in a
range no set gains a rep.
All of it is common practice, no source: a projection states what would follow, not what will be.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime, time
from decimal import Decimal
from typing import assert_never

from engine.values.ids import SetId
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Slot
from engine.values.prescription import Exposure, Prescription, SetTarget
from engine.values.schemes import RepTotal, TopSetBackOff
from engine.values.sets import SetDone, SetRecord

FIRST_MAXIMUM = 10
NOON = time(12, tzinfo=UTC)


def invented(
    asked: Prescription, slot: Slot, past: Sequence[Exposure], on: date, first_id: int, *, made: bool
) -> tuple[SetRecord, ...]:
    """The sets that the session would log.

    Shape: `past` are the slot's exposures before it, oldest first. A set whose load is yet to be found has none here
    either, and so proves nothing. Ids are the numbers from `first_id` down, all below 0: no set of a log has them.
    """
    before = [exposure for exposure in past if not exposure.deload]
    total = _total(slot, before)
    # The top set alone decides over its back-offs; elsewhere the last set is the first to fail.
    weakest = 0 if isinstance(slot.scheme, TopSetBackOff) else len(asked.sets) - 1
    records = []
    for at, one in enumerate(asked.sets):
        reached = _done(one, slot, before, at, short=not made and at == weakest, gains=made, total=total)
        records.append(SetRecord(SetId(first_id - at), reached, on, datetime.combine(on, NOON), at))
    return tuple(records)


def _done(
    one: SetTarget,
    slot: Slot,
    before: Sequence[Exposure],
    at: int,
    *,
    short: bool,
    gains: bool,
    total: int | None,
) -> SetDone:
    reps, seconds, metres = 1, None, None
    match one.target:
        case Seconds(count):
            seconds = max(Decimal(1), count - short)
        case Metres(count):
            metres = max(Decimal(1), count - short)
        case Reps() | RepRange() | MaxReps() if total is not None:
            reps = _share(total, slot, at) - short
        case Reps(count):
            reps = count - short
        case RepRange():
            reps = _in_range(one, one.target, before, at, gains=gains)
        case MaxReps():
            reps = _reached(before, at) - short
        case _:
            assert_never(one.target)
    return SetDone(slot.exercise, max(reps, 1), one.load, one.effort, seconds, metres, missed=short)


def _in_range(one: SetTarget, target: RepRange, before: Sequence[Exposure], at: int, *, gains: bool) -> int:
    """One more than the same set last time at this load; the bottom where that was another load."""
    last = before[-1].sets if before else ()
    if at >= len(last) or last[at].done.load != one.load:
        return target.low
    return min(target.high, max(target.low, last[at].done.reps + gains))


def _reached(before: Sequence[Exposure], at: int) -> int:
    last = before[-1].sets if before else ()
    return last[min(at, len(last) - 1)].done.reps if last else FIRST_MAXIMUM


def _total(slot: Slot, before: Sequence[Exposure]) -> int | None:
    """The reps that a rep total asks for in all; None under any other rule."""
    if not isinstance(slot.scheme, RepTotal):
        return None
    if slot.scheme.step is not None or not before:
        return slot.scheme.total
    reached = max(sum(record.done.reps for record in exposure.sets) for exposure in before)
    return reached + slot.scheme.gain if reached >= slot.scheme.total else slot.scheme.total


def _share(total: int, slot: Slot, at: int) -> int:
    each, more = divmod(total, slot.sets)
    return each + (at < more)
