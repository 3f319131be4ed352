"""A slot's exposures: the sessions of the log that its rule folds over.

Decided: a slot is known again by its training day's label and what it says (exercise, sets, target, load, rule), within
its block: alternating weeks that say the same share one progression, weeks that differ have one each. A new block
starts anew from its own stated loads; where it says "find it", the same slot of an earlier block stands in. Sets of
another exercise, done in the slot's place, are no exposure of it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from engine.progression.assignment import SessionDone
from engine.progression.share_out import shared_out
from engine.values.plan import FindIt, PlannedDay, Slot, TrainingDay
from engine.values.prescription import Exposure
from engine.values.sets import SetRecord


def exposures(slot: Slot, planned: PlannedDay, sessions: Sequence[SessionDone], today: date) -> tuple[Exposure, ...]:
    """The slot's exposures up to today, oldest first, those of `planned` itself left out.

    Shape: a session split over two dates is one exposure, on its last date.
    """
    found: list[tuple[PlannedDay, date, tuple[SetRecord, ...]]] = []
    shares: dict[tuple[int, int], _Share | None] = {}  # by training day: many sessions are of the same few
    for session in sessions:
        day = session.planned
        if day is None or session.on > today:
            continue
        key = (id(day.block), id(day.day))
        if key not in shares:
            shares[key] = _share_of(slot, day.day) if _same_progression(slot, planned, day) else None
        share = shares[key]
        records = () if share is None else share.of(session.of(slot.exercise))
        if not records or same_day(day, planned):
            continue
        if found and same_day(found[-1][0], day):
            records = (*found.pop()[2], *records)
        found.append((day, session.on, records))
    return tuple([Exposure(on, records, day.deload is not None) for day, on, records in found])


def records_of(slot: Slot, day: PlannedDay, records: Iterable[SetRecord]) -> tuple[SetRecord, ...]:
    """The sets that count for one slot of a day: those of its exercise, shared out where several slots ask for it."""
    share = _share_of(slot, day.day)
    return () if share is None else share.of([record for record in records if record.done.exercise == slot.exercise])


@dataclass(frozen=True, slots=True)
class _Share:
    """What a slot gets of a training day's sets of its exercise: it is the one `at` among those that ask for it."""

    rivals: tuple[Slot, ...]
    at: int

    def of(self, mine: Sequence[SetRecord]) -> tuple[SetRecord, ...]:
        return shared_out(mine, self.rivals)[self.at] if mine else ()


def _share_of(slot: Slot, day: TrainingDay) -> _Share | None:
    rivals = tuple(other for other in day.slots if other.exercise == slot.exercise)
    at = next((at for at, other in enumerate(rivals) if _same_slot(slot, other)), None)
    return None if at is None else _Share(rivals, at)


def same_day(one: PlannedDay, other: PlannedDay) -> bool:
    """Whether two planned days are the same day of the same week."""
    return one is other or (
        (one.on, one.week_first, one.week, one.day.label) == (other.on, other.week_first, other.week, other.day.label)
        and one.block.label == other.block.label
    )


def _same_progression(slot: Slot, planned: PlannedDay, day: PlannedDay) -> bool:
    same_block = day.block is planned.block or day.block.label == planned.block.label
    if day.day.label != planned.day.label or not (same_block or isinstance(slot.load, FindIt)):
        return False
    return day.day is planned.day or any(_same_slot(slot, other) for other in day.day.slots)


def _same_slot(one: Slot, other: Slot) -> bool:
    return one is other or (
        (one.exercise, one.sets, one.target, one.load) == (other.exercise, other.sets, other.target, other.load)
        and one.scheme == other.scheme
    )
