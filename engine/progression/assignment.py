"""Which training day of the plan each date's sets belong to.

Decided, in this order:
1. The training day the athlete named for the date.
2. The date's own planned day, when it shares an exercise with what was lifted, however little of it was done.
3. The training day of the same plan week, past or to come, whose exercises not yet trained overlap most with what was
   lifted, the nearest date first: a session moved to another day counts for its planned day, and a session split over
   two dates is one. A date's own day always comes before a session moved onto it.
4. Days without a date are done in order: those of the plan week in hand or of the next, by overlap, the earliest
   first. A later week begun finishes the weeks before it.
5. What was lifted on a planned date beyond that day's exercises is a second session of the same date where it makes up
   half or more of another day of the week; else it stays an extra of the first.
6. Anything else is an extra session: logged, counted in the week, and without a say in what the plan asks next.

Assignment is worked out anew from what stands in the log, so an edit or an undo moves every later answer by itself. A
week missed moves nothing.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from itertools import groupby
from operator import attrgetter

from engine.progression.choices import Choices
from engine.values.ids import ExerciseName
from engine.values.plan import PlannedDay, Slot
from engine.values.sets import SetRecord

WEEK = timedelta(days=7)

Names = frozenset[ExerciseName]
_exercise = attrgetter("done.exercise")


@dataclass(frozen=True, slots=True)
class SessionDone:
    """One date's sets as far as they belong to one training day; `planned` None: an extra session.

    Shape: `records` in the order logged, warm-ups included.
    """

    on: date
    planned: PlannedDay | None
    records: tuple[SetRecord, ...]
    _by_lift: dict[ExerciseName, list[SetRecord]] = field(default_factory=dict, init=False, repr=False, compare=False)

    def of(self, exercise: ExerciseName) -> Sequence[SetRecord]:
        """The sets of one exercise, in the order logged; sorted out once, as every slot of the day asks for its own."""
        if not self._by_lift:
            for name, sets in groupby(self.records, key=_exercise):
                self._by_lift.setdefault(name, []).extend(sets)
        return self._by_lift.get(exercise, ())


@dataclass(slots=True)
class _Open:
    """A planned day while dates are assigned: what each slot may be done with, and the slots not trained yet."""

    planned: PlannedDay
    slots: tuple[Names, ...]
    names: Names
    left: set[int]
    first: date | None

    @property
    def begun(self) -> bool:
        return len(self.left) < len(self.slots)

    def overlap(self, names: Names) -> int:
        return sum(not names.isdisjoint(self.slots[at]) for at in self.left)

    def taken(self, names: Names) -> _Open:
        self.left = {at for at in self.left if names.isdisjoint(self.slots[at])}
        return self


def assign(
    planned: Sequence[PlannedDay],
    records: Sequence[SetRecord],
    choices: Choices = Choices(),  # noqa: B008 - frozen
) -> tuple[SessionDone, ...]:
    """The sessions that the log holds, oldest first, each with the planned day it counts for.

    Shape: `planned` in the order of the plan; `records` the standing sets since the plan began, oldest first.
    """
    days = _opened(planned, choices)
    dates = _by_date(records)
    names = {on: frozenset([record.done.exercise for record in sets]) for on, sets in dates.items()}
    dated: dict[date | None, list[_Open]] = {}
    for day in days:
        dated.setdefault(day.planned.on, []).append(day)
    found = {on: _own(days, dated.get(on, ()), on, names[on], choices) for on in dates}
    for on in dates:
        beyond = names[on].difference(*(day.names for day in found[on]))
        if beyond:
            found[on] += _elsewhere(days, on, beyond, half=bool(found[on]))
    return tuple(session for on, sets in dates.items() for session in _sessions(on, sets, found[on]))


def _opened(planned: Sequence[PlannedDay], choices: Choices) -> list[_Open]:
    """Every planned day, open: days that repeat a training day share what its slots may be done with."""
    swapped = {swap.on for swap in choices.swaps}
    known: dict[int, tuple[tuple[Names, ...], Names]] = {}
    found = []
    for day in planned:
        slots = known.get(id(day.day)) if day.on not in swapped else _slots(day, choices)
        if slots is None:
            slots = known[id(day.day)] = _slots(day, Choices())
        found.append(_Open(day, *slots, set(range(len(slots[0]))), _week_first(day)))
    return found


def _slots(planned: PlannedDay, choices: Choices) -> tuple[tuple[Names, ...], Names]:
    slots = tuple(_may_be(slot, planned.on, choices) for slot in planned.day.slots)
    return slots, frozenset().union(*slots)


def _may_be(slot: Slot, on: date | None, choices: Choices) -> Names:
    instead = None if on is None or not choices.swaps else choices.instead_of(slot.exercise, on)
    return frozenset((slot.exercise, *slot.swaps, *(() if instead is None else (instead,))))


def _by_date(records: Iterable[SetRecord]) -> dict[date, list[SetRecord]]:
    dates: dict[date, list[SetRecord]] = {}
    for on, sets in groupby(records, key=attrgetter("on")):
        dates.setdefault(on, []).extend(sets)
    return {on: dates[on] for on in sorted(dates)}


def _own(days: Sequence[_Open], dated: Sequence[_Open], on: date, names: Names, choices: Choices) -> list[_Open]:
    """The day the athlete named for a date, or the date's own days that share an exercise with what was lifted."""
    label = choices.days.get(on)
    if label is not None:
        named = [day for day in _candidates(days, on) if day.planned.day.label == label]
        return [day.taken(names) for day in named[:1]]
    return [day.taken(names) for day in dated if day.overlap(names)]


def _elsewhere(days: Sequence[_Open], on: date, names: Names, *, half: bool = False) -> list[_Open]:
    """The day of the week, or next in order, that overlaps most with what was lifted; none where none does enough."""
    best, found = (0, 0), None
    for day in _candidates(days, on):
        shared = day.overlap(names)
        away = 0 if day.planned.on is None else -abs((day.planned.on - on).days)
        if 2 * shared >= (len(day.slots) if half else 1) and (shared, away) > best and shared:
            best, found = (shared, away), day
    return [] if found is None else [found.taken(names)]


def _candidates(days: Sequence[_Open], on: date) -> list[_Open]:
    """The dated days of a date's plan week, then the undated ones that may come next."""
    dated = [day for day in days if day.first is not None and day.first <= on < day.first + WEEK]
    undated = [day for day in days if day.planned.on is None]
    weeks = list(dict.fromkeys(_week(day) for day in undated))
    in_hand = max((weeks.index(_week(day)) for day in undated if day.begun), default=0)
    return dated + [day for day in undated if _week(day) in weeks[in_hand : in_hand + 2]]


def _week(day: _Open) -> tuple[date | None, str, int]:
    planned = day.planned
    return planned.week_first, planned.block.label, planned.week


def _week_first(planned: PlannedDay) -> date | None:
    """The first day of a dated day's plan week; where it is not told, the Monday before it."""
    if planned.on is None:
        return None
    return planned.week_first or planned.on - timedelta(days=planned.on.weekday())


def _sessions(on: date, sets: Sequence[SetRecord], days: Sequence[_Open]) -> Iterable[SessionDone]:
    """One session for each day found; sets that fit none of them go with the first."""
    if not days:
        yield SessionDone(on, None, tuple(sets))
        return
    if len(days) == 1:
        yield SessionDone(on, days[0].planned, tuple(sets))
        return
    belongs = [next((at for at, day in enumerate(days) if r.done.exercise in day.names), 0) for r in sets]
    for at, day in enumerate(days):
        yield SessionDone(on, day.planned, tuple(r for r, owner in zip(sets, belongs, strict=True) if owner == at))
