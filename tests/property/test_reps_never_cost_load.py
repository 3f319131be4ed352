"""One repetition more in any past set never lowers a load that any later session asks.

From the log to the session: days assigned, sets shared out among the slots of a day, the rule, and all that lies over
it: deload weeks, time away, pain, ceilings, rounding, the estimate of strength. All ten rules; several of them a day,
twice on one lift.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.loading import loadable_for
from engine.plan.defaults import basis_of
from engine.progression.maxima import maxima_for
from engine.progression.sessions import Athlete, Choices, SlotToday, Swap, assign, session_for
from engine.values.effort import Effort
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Load, Unit
from engine.values.plan import (
    Block,
    Deload,
    FindIt,
    MaxReps,
    PlannedDay,
    RepRange,
    Reps,
    Seconds,
    Slot,
    Target,
    TrainingDay,
    Weekday,
    WeekKind,
)
from engine.values.schemes import (
    DoubleProgression,
    EffortTarget,
    Hold,
    LoadStep,
    PercentageWave,
    RepGoal,
    RepTotal,
    Scheme,
    SetWave,
    TimeOrDistance,
    TopSetBackOff,
)
from engine.values.sets import SetDone, SetKind, SetRecord, Side
from tests.property.strategies import kg_grid, kg_steps

EXERCISES = catalogue().exercises
LIFTS = tuple(map(ExerciseName, ("barbell row", "barbell bench press", "lat pulldown", "dumbbell curl", "pull-up")))
START = date(2026, 1, 5)
WEEKS = 8

halves = st.integers(0, 10).map(lambda count: Effort(Decimal(count) / 2))
targets: st.SearchStrategy[Target] = st.one_of(
    st.integers(1, 12).map(Reps), st.tuples(st.integers(3, 8), st.integers(1, 4)).map(lambda t: RepRange(t[0], sum(t)))
)
RULES: dict[type[Scheme], st.SearchStrategy[Scheme]] = {
    SetWave: st.builds(SetWave, st.integers(3, 5), kg_steps),
    DoubleProgression: st.builds(DoubleProgression, kg_steps),
    LoadStep: st.builds(
        LoadStep, kg_steps, st.integers(1, 3), st.sampled_from((Decimal("0.05"), Decimal("0.1"), Decimal("0.2")))
    ),
    RepGoal: st.builds(RepGoal, st.integers(1, 2)),
    RepTotal: st.builds(RepTotal, st.integers(8, 40), st.none() | kg_steps),
    PercentageWave: st.builds(
        PercentageWave, kg_grid, st.sampled_from(((Decimal("0.7"), Decimal("0.9")), (Decimal("0.85"),))), kg_steps
    ),
    EffortTarget: st.builds(EffortTarget, st.sampled_from([Effort(Decimal(left)) for left in ("0", "1.5", "2", "3")])),
    TopSetBackOff: st.builds(TopSetBackOff, kg_steps, st.integers(1, 3), st.just(Decimal("0.9"))),
    TimeOrDistance: st.builds(TimeOrDistance, st.just(Decimal(5)), st.just(Decimal(60)), st.none() | kg_steps),
    Hold: st.just(Hold()),
}


@dataclass(frozen=True, repr=False)
class Training:
    """An invented athlete: her plan's days, her log, what hurt and what she swapped."""

    days: tuple[PlannedDay, ...]
    log: tuple[SetRecord, ...]
    pain: dict[ExerciseName, tuple[tuple[date, date], ...]]
    choices: Choices

    def asks(self, on: date) -> dict[tuple[str, int, int], Load]:
        """Every load that the next day of each kind asks, by day, slot and set."""
        sessions = assign(self.days, self.log, self.choices)
        found = {}
        for day in [one for one in self.days if one.on is not None and on <= one.on < on + timedelta(days=7)]:
            assert day.on is not None
            for at, slot in enumerate(session_for(day, sessions, day.on, self._athlete(day))):
                found.update(_loads(day.day.label, at, slot))
        return found

    def _athlete(self, day: PlannedDay) -> Athlete:
        def history(lift: ExerciseName) -> Sequence[SetRecord]:
            return [one for one in self.log if one.done.exercise == lift]

        return Athlete(
            self.log,
            lambda lift: loadable_for(EXERCISES[lift], None, Unit.KG),
            self.pain,
            maxima_for(day.day.slots, history, EXERCISES),
            self.choices,
            Unit.KG,
            EXERCISES,
        )


def _loads(label: str, at: int, slot: SlotToday) -> dict[tuple[str, int, int], Load]:
    asked = enumerate(slot.prescription.sets)
    return {(label, at, number): one.load for number, one in asked if one.load is not None}


def lift_loads(lift: ExerciseName) -> st.SearchStrategy[Load]:
    return kg_grid.map(lambda load: replace(load, basis=basis_of(EXERCISES[lift])))


@st.composite
def slots(draw: st.DrawFn, rule: type[Scheme] | None = None) -> Slot:
    kind = rule or draw(st.sampled_from(list(RULES)))
    target: Target = draw(targets)
    if kind is RepGoal:
        target = MaxReps()
    elif kind is TimeOrDistance:
        target = Seconds(Decimal(30))
    sets = 1 if kind is TopSetBackOff else draw(st.integers(1, 4))
    lift = draw(st.sampled_from(LIFTS))
    bare = EXERCISES[lift].goes_without_load and draw(st.booleans())
    load = None if bare else draw(lift_loads(lift) | st.just(FindIt()))
    return Slot(lift, sets, target, draw(RULES[kind]), load)


@st.composite
def plan_days(draw: st.DrawFn) -> tuple[PlannedDay, ...]:
    kinds = []
    for weekday in (Weekday.MON, Weekday.THU):
        own = draw(st.lists(slots(), min_size=1, max_size=3))
        if draw(st.booleans()):
            twin = draw(slots())
            own.append(
                replace(twin, exercise=own[0].exercise, load=draw(st.just(own[0].load) | lift_loads(own[0].exercise)))
            )
        kinds.append(TrainingDay(weekday.name.lower(), weekday, tuple(own)))
    week = WeekKind("usual", tuple(kinds))
    block = Block("one", WEEKS, (week,))
    eased = draw(st.sets(st.integers(2, WEEKS - 1), max_size=2))
    return tuple(
        PlannedDay(
            START + timedelta(weeks=number - 1, days=day.weekday.value if day.weekday else 0),
            block,
            number,
            week,
            day,
            Deload() if number in eased else None,
            START + timedelta(weeks=number - 1),
        )
        for number in range(1, WEEKS + 1)
        for day in week.days
    )


@st.composite
def sets_done(draw: st.DrawFn, slot: Slot, usual: Load | None) -> SetDone:
    reps = draw(st.integers(0, 14) | st.sampled_from((19, 20, 21, 40)))
    load = draw(st.sampled_from((usual, usual, usual, usual, None))) if draw(st.booleans()) else usual
    if usual is not None and draw(st.integers(0, 5)) == 0:
        load = replace(usual, amount=max(Decimal(0), usual.amount + draw(st.sampled_from((-10, -5, 5, 10)))))
    return SetDone(
        slot.exercise,
        reps,
        load,
        effort=draw(st.none() | halves),
        seconds=Decimal(draw(st.sampled_from((20, 30, 60)))) if isinstance(slot.target, Seconds) else None,
        kind=draw(st.sampled_from((SetKind.WORK,) * 8 + (SetKind.WARMUP, SetKind.DROP))),
        failure=draw(st.integers(0, 7)) == 0,
        missed=reps == 0 or draw(st.integers(0, 5)) == 0,
        side=draw(st.sampled_from((None,) * 8 + (Side.LEFT, Side.RIGHT))),
    )


@st.composite
def logs(draw: st.DrawFn, days: Sequence[PlannedDay]) -> tuple[SetRecord, ...]:
    """What she did of these days: some missed, so that time passes, some a day late."""
    usual = {lift: draw(lift_loads(lift)) for lift in LIFTS}
    log: list[SetRecord] = []
    for day in days:
        assert day.on is not None
        if draw(st.integers(0, 4)) == 0:
            continue
        on = day.on + timedelta(days=draw(st.sampled_from((0, 0, 0, 1))))
        at = datetime.combine(on, time(18), UTC)
        for slot in day.day.slots:
            for _ in range(draw(st.integers(0, 5))):
                done = draw(sets_done(slot, None if slot.load is None else usual[slot.exercise]))
                log.append(SetRecord(SetId(len(log) + 1), done, on, at, len(log) + 1))
    return tuple(log)


@st.composite
def pains(draw: st.DrawFn) -> dict[ExerciseName, tuple[tuple[date, date], ...]]:
    first = START + timedelta(days=draw(st.integers(0, 40)))
    span = (first, first + timedelta(days=draw(st.integers(0, 30))))
    return draw(st.sampled_from(({}, {}, {draw(st.sampled_from(LIFTS)): (span,)})))


@st.composite
def swaps(draw: st.DrawFn, days: Sequence[PlannedDay]) -> tuple[Swap, ...]:
    day = draw(st.sampled_from(days))
    assert day.on is not None
    swap = Swap(day.on, day.day.slots[0].exercise, draw(st.sampled_from(LIFTS)))
    return draw(st.sampled_from(((), (), (swap,))))


@st.composite
def trainings(draw: st.DrawFn) -> Training:
    days = draw(plan_days())
    log = draw(logs(days[: draw(st.integers(1, WEEKS - 1)) * 2]))
    return Training(days, log, draw(pains()), Choices(swaps=draw(swaps(days))))


@given(trainings().filter(lambda one: bool(one.log)), st.data())
def test_a_repetition_more_in_any_past_set_never_lowers_a_load_asked(training: Training, data: st.DataObject) -> None:
    at = data.draw(st.integers(0, len(training.log) - 1))
    old = training.log[at]
    reps = old.done.reps + data.draw(st.sampled_from((1, 1, 2, 5, 20)))
    missed = old.done.missed and data.draw(st.booleans())
    better = replace(old, done=replace(old.done, reps=reps, missed=missed))
    raised = replace(training, log=(*training.log[:at], better, *training.log[at + 1 :]))
    later = data.draw(st.sampled_from([day.on for day in training.days if day.on is not None and day.on > old.on]))

    before, after = training.asks(later), raised.asks(later)

    lower = {
        place: (load, after.get(place)) for place, load in before.items() if place not in after or after[place] < load
    }
    assert not lower, (old.done, better.done, lower)
