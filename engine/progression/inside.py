"""Inside a session: what is done, which set is next, which slot.

Decided: work sets count towards what a slot asks, in the order logged; warm-up, drop and rest-pause sets do not. Left
and right are one set. The exercise in hand goes on until its sets are done; slots of one superset letter take turns,
the one with fewest sets done first; then the earliest slot with sets left. Sets beyond what is asked are extra and
change nothing here.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from engine.progression.today import SlotToday
from engine.progression.top_set import after_top_set
from engine.progression.words import loaded
from engine.progression.words import target as told
from engine.values.ids import ExerciseName
from engine.values.prescription import SetTarget
from engine.values.schemes import TopSetBackOff
from engine.values.sets import SetKind, SetRecord, Side


@dataclass(frozen=True, slots=True)
class SlotProgress:
    """`sets` counts the work sets done; `records` holds all of the slot's sets, warm-ups included."""

    today: SlotToday
    records: tuple[SetRecord, ...]
    sets: int

    @property
    def left(self) -> int:
        """Sets still to do; none where the slot is skipped."""
        return 0 if self.today.skipped else max(0, len(self.today.prescription.sets) - self.sets)


@dataclass(frozen=True, slots=True)
class NextSet:
    """The set to do next: the `number`th `of` so many."""

    today: SlotToday
    number: int
    of: int
    target: SetTarget

    def __str__(self) -> str:
        return f"set {self.number} of {self.of}: {told(self.target.target)} {loaded(self.target.load)}".rstrip()


@dataclass(frozen=True, slots=True)
class Progress:
    """Shape: `slots` in the plan's order; `next` None when everything asked is done or skipped."""

    slots: tuple[SlotProgress, ...]
    next: NextSet | None

    @property
    def begun(self) -> bool:
        return any(slot.records for slot in self.slots)


def progress(session: Sequence[SlotToday], records: Sequence[SetRecord], doing: ExerciseName | None = None) -> Progress:
    """How far today's session is.

    Shape: `records` are the session's sets in the order logged. `doing` is the exercise in hand; without it the last
    one logged is.
    """
    slots = _shared(session, records)
    in_hand = doing or (records[-1].done.exercise if records else None)
    return Progress(slots, _next(slots, in_hand))


def _shared(session: Sequence[SlotToday], records: Sequence[SetRecord]) -> tuple[SlotProgress, ...]:
    found: list[SlotProgress] = []
    used: set[int] = set()
    for at, today in enumerate(session):
        name = today.prescription.exercise
        last = all(later.prescription.exercise != name for later in session[at + 1 :])
        mine = [record for record in records if record.done.exercise == name and record.id not in used]
        if not last:
            mine = _first(mine, len(today.prescription.sets))
        used.update(record.id for record in mine)
        found.append(SlotProgress(_as_lifted(today, mine), tuple(mine), work_sets(mine)))
    return tuple(found)


def _as_lifted(today: SlotToday, records: Sequence[SetRecord]) -> SlotToday:
    """Back-off sets follow the top set that was really done today."""
    scheme, asked = today.slot.scheme, today.prescription
    top = next((record.done.load for record in records if record.done.kind is SetKind.WORK), None)
    if not isinstance(scheme, TopSetBackOff) or top is None or asked.exercise != today.slot.exercise:
        return today
    return replace(today, prescription=after_top_set(asked, scheme, top, today.loadable))


def _first(records: Sequence[SetRecord], sets: int) -> list[SetRecord]:
    """The sets up to the last one asked, with the drops that follow it."""
    taken: list[SetRecord] = []
    for record in records:
        if work_sets([*taken, record]) > sets:
            break
        taken.append(record)
    return taken


def work_sets(records: Sequence[SetRecord]) -> int:
    """How many work sets these are: left and right of one set count once."""
    sides = [record.done.side for record in records if record.done.kind is SetKind.WORK]
    return sides.count(None) + max(sides.count(Side.LEFT), sides.count(Side.RIGHT))


def _next(slots: Sequence[SlotProgress], in_hand: ExerciseName | None) -> NextSet | None:
    current = next((slot for slot in slots if slot.today.prescription.exercise == in_hand and slot.left), None)
    if current is None:
        current = next((slot for slot in slots if slot.today.prescription.exercise == in_hand), None)
    turn = _turn(slots, current)
    if turn is None:
        return None
    asked = turn.today.prescription.sets
    return NextSet(turn.today, turn.sets + 1, len(asked), asked[turn.sets])


def _turn(slots: Sequence[SlotProgress], current: SlotProgress | None) -> SlotProgress | None:
    open_slots = [slot for slot in slots if slot.left]
    group = None if current is None else current.today.slot.group
    if group is not None:
        partners = [slot for slot in open_slots if slot.today.slot.group == group]
        if partners:
            return min(partners, key=lambda slot: slot.sets)
    if current is not None and current.left:
        return current
    return open_slots[0] if open_slots else None
