"""Values for property tests: whatever the engine's types allow."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal

from hypothesis import strategies as st

from engine.catalogue.catalogue import catalogue
from engine.plan.defaults import basis_of
from engine.plan.lines import PlanLine, clean
from engine.values.effort import Effort
from engine.values.exercise import Exercise, Loading
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Basis, Load, Unit
from engine.values.muscles import Muscle
from engine.values.plan import (
    Block,
    Deload,
    FindIt,
    MaxReps,
    Metres,
    Plan,
    RepRange,
    Reps,
    Seconds,
    Slot,
    Target,
    TrainingDay,
    VolumeTarget,
    Weekday,
    WeekKind,
)
from engine.values.prescription import Exposure
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
from engine.values.sets import MOST_REPS, SetDone, SetKind, SetRecord, Side

words = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\x00"), max_size=60)
"""Text that every database keeps as it is."""

exercise_names = st.sampled_from(("barbell row", "bench press", "squat", "plank", "farmer carry")).map(ExerciseName)
days = st.dates(date(2000, 1, 1), date(2100, 12, 31))
instants = st.datetimes(datetime(2000, 1, 1), datetime(2100, 12, 31), timezones=st.just(UTC))  # noqa: DTZ001  # bounds


def amounts(least: str, most: str, places: int) -> st.SearchStrategy[Decimal]:
    """Exact decimals with at most so many places, with and without trailing zeros."""
    plain = st.decimals(Decimal(least), Decimal(most), places=places, allow_nan=False, allow_infinity=False)
    return plain | plain.map(lambda amount: amount.normalize())


@st.composite
def loads(draw: st.DrawFn) -> Load:
    basis = draw(st.sampled_from(Basis))
    least = "-100000" if basis is Basis.BODY else "0"
    return Load(draw(amounts(least, "100000", 3)), draw(st.sampled_from(Unit)), basis)


efforts = st.builds(Effort, amounts("0", "10", 2), st.booleans())


@st.composite
def sets_done(draw: st.DrawFn) -> SetDone:
    missed = draw(st.booleans())
    return SetDone(
        exercise=draw(exercise_names),
        reps=draw(st.integers(0 if missed else 1, MOST_REPS)),
        load=draw(st.none() | loads()),
        effort=draw(st.none() | efforts),
        seconds=draw(st.none() | amounts("0.0001", "1000000", 4)),
        metres=draw(st.none() | amounts("0.0001", "1000000", 4)),
        kind=draw(st.sampled_from(SetKind)),
        failure=draw(st.booleans()),
        missed=missed,
        side=draw(st.none() | st.sampled_from(Side)),
    )


# Plans

plan_words = st.text(alphabet="abcdefghijklmnopqrstuvwxyzäøñ", min_size=2, max_size=9).filter(
    lambda word: word not in {"deload", "day", "session", "workout", "rest", "off", "nothing", "week", "weeks"}
)
labels = st.lists(plan_words, min_size=1, max_size=4).map(" ".join)
free_texts = st.one_of(
    labels,
    st.text(
        alphabet=st.characters(codec="utf-8", categories=("L", "N", "P", "S")) | st.sampled_from(' ,;"'),
        min_size=1,
        max_size=40,
    )
    .map(lambda text: " ".join(text.split()))
    .filter(lambda text: text and clean(PlanLine(1, f"x {text}")).text == f"x {text}"),
)
exercises = st.sampled_from(sorted(catalogue().exercises.values(), key=lambda exercise: exercise.name))
units = st.sampled_from(Unit)
quarters = st.integers(1, 1200).map(lambda count: Decimal(count) / 4)
shares = st.integers(1, 100).map(lambda percent: Decimal(percent) / 100)
plan_efforts = st.builds(Effort, st.integers(0, 20).map(lambda half: Decimal(half) / 2), st.booleans())


@st.composite
def plan_targets(draw: st.DrawFn) -> Target:
    """A target of any kind."""
    low = draw(st.integers(1, 40))
    kinds: list[Target] = [
        Reps(low),
        RepRange(low, low + draw(st.integers(1, 20))),
        MaxReps(),
        Seconds(draw(quarters)),
        Metres(draw(quarters)),
    ]
    return draw(st.sampled_from(kinds))


def bases_of(exercise: Exercise) -> st.SearchStrategy[Basis]:
    """The bases a load on this exercise can have."""
    on_body = exercise.loading in (Loading.BODY, Loading.STACK, Loading.BAND)
    return st.sampled_from(Basis) if on_body else st.sampled_from([basis for basis in Basis if basis is not Basis.BODY])


@st.composite
def schemes_for(draw: st.DrawFn, target: Target, sets: int, step: Load, maximum: Load) -> Scheme:
    """A rule of any kind that goes with the target and the number of sets."""
    kinds: list[Scheme] = [SetWave(sets + draw(st.integers(1, 4)), step), EffortTarget(draw(plan_efforts)), Hold()]
    if not isinstance(target, MaxReps):
        kinds.append(LoadStep(step, draw(st.integers(1, 9)), draw(st.integers(0, 99)) / Decimal(100)))
    if isinstance(target, RepRange):
        kinds.append(DoubleProgression(step))
    if isinstance(target, Reps | RepRange | MaxReps):
        kinds.append(RepGoal(draw(st.integers(1, 5))) if not isinstance(target, RepRange) else RepGoal(1))
        kinds.append(RepTotal(sets + draw(st.integers(0, 99)), step))
        kinds.append(RepTotal(sets + draw(st.integers(0, 99)), None, draw(st.integers(1, 5))))
        kinds.append(PercentageWave(maximum, tuple(draw(st.lists(shares, min_size=1, max_size=6))), step))
    else:
        more = draw(quarters)
        kinds.append(TimeOrDistance(draw(quarters), target.count + more, draw(st.sampled_from([None, step]))))
    if sets == 1:
        reps = draw(st.none() | st.integers(1, 20))
        kinds.append(TopSetBackOff(step, draw(st.integers(1, 6)), draw(shares), reps))
    return draw(st.sampled_from(kinds))


@st.composite
def slots(draw: st.DrawFn) -> Slot:
    """A slot that a plan can hold."""
    exercise, unit, sets, target = draw(exercises), draw(units), draw(st.integers(1, 10)), draw(plan_targets())
    basis = draw(bases_of(exercise))
    amount = draw(quarters)
    load = draw(st.sampled_from([None, FindIt(), Load(amount, unit, basis)]))
    if basis is Basis.BODY and isinstance(load, Load):
        load = draw(st.sampled_from([load, Load(-amount, unit, basis), Load(Decimal(0), unit, basis)]))
    implied = basis_of(exercise)
    step = Load(draw(quarters), unit, basis if isinstance(load, Load) else implied)
    scheme = draw(schemes_for(target, sets, step, Load(draw(quarters), unit, implied)))
    names = st.lists(exercises.map(lambda one: one.name), max_size=2, unique=True).map(tuple)
    return Slot(
        exercise=exercise.name,
        sets=sets,
        target=target,
        scheme=scheme,
        load=load,
        effort=draw(st.none() | plan_efforts),
        rest_seconds=draw(st.none() | st.integers(1, 600)),
        cues=tuple(draw(st.lists(free_texts, max_size=2))),
        swaps=draw(names),
        standard=draw(st.none() | free_texts),
        group=draw(st.none() | st.sampled_from("ABC")),
    )


training_days = st.builds(
    TrainingDay, labels, st.none() | st.sampled_from(Weekday), st.lists(slots(), min_size=1, max_size=3).map(tuple)
)
week_kinds = st.builds(WeekKind, labels, st.lists(training_days, min_size=1, max_size=3).map(tuple))


@st.composite
def blocks(draw: st.DrawFn) -> Block:
    """A block with weeks that may alternate and deloads."""
    weeks = draw(st.integers(1, 16))
    deloads = draw(st.lists(st.integers(1, weeks), max_size=3, unique=True).map(sorted).map(tuple))
    kinds = draw(st.lists(week_kinds, min_size=1, max_size=3).map(tuple))
    return Block(draw(labels), weeks, kinds, deloads, draw(st.builds(Deload, shares, shares)))


volume_targets = st.tuples(st.integers(0, 40), st.integers(0, 20)).map(
    lambda pair: VolumeTarget(Decimal(pair[0]) / 2, Decimal(pair[0]) / 2 + pair[1])
)
plans = st.builds(
    Plan,
    free_texts,
    st.lists(blocks(), min_size=1, max_size=2).map(tuple),
    st.dictionaries(st.sampled_from(Muscle), volume_targets, max_size=3),
)


# What progression rules fold over: a slot with a load of its own, and sessions near what it asks.

kg_grid = st.integers(8, 48).map(lambda halves: Load(Decimal(halves) * Decimal("2.5"), Unit.KG))
"""Loads that a kilogram barbell can hold."""

any_kg = st.integers(80, 480).map(lambda quarters: Load(Decimal(quarters) / 4, Unit.KG))
kg_steps = st.sampled_from(("1", "2.5", "5", "7.5")).map(lambda amount: Load(Decimal(amount), Unit.KG))

load_climbers: st.SearchStrategy[Scheme] = st.one_of(
    st.builds(SetWave, st.integers(3, 5), kg_steps),
    st.builds(DoubleProgression, kg_steps),
    st.builds(
        LoadStep, kg_steps, st.integers(1, 4), st.sampled_from((Decimal("0.05"), Decimal("0.1"), Decimal("0.2")))
    ),
    st.builds(RepTotal, st.integers(8, 40), st.none() | kg_steps),
    st.builds(
        PercentageWave, kg_grid, st.sampled_from(((Decimal("0.7"), Decimal("0.9")), (Decimal("0.85"),))), kg_steps
    ),
    st.builds(TopSetBackOff, kg_steps, st.integers(1, 3)),
    st.builds(EffortTarget, st.sampled_from((Effort(Decimal(0)), Effort(Decimal(2))))),
    st.builds(RepGoal, st.integers(1, 2)),
    st.just(Hold()),
)


@st.composite
def climbing_slots(draw: st.DrawFn, schemes: st.SearchStrategy[Scheme] = load_climbers) -> Slot:
    """A barbell slot of two or three sets of five or so, by any rule that is counted in reps."""
    scheme = draw(schemes)
    ranged = isinstance(scheme, DoubleProgression)
    target = RepRange(5, 7) if ranged else MaxReps() if isinstance(scheme, RepGoal) else Reps(5)
    load = draw(kg_grid | st.just(FindIt()))
    return Slot(ExerciseName("barbell row"), draw(st.integers(1, 3)), target, scheme, load)


@st.composite
def exposures(draw: st.DrawFn, loads_lifted: st.SearchStrategy[Load] = kg_grid, most: int = 6) -> tuple[Exposure, ...]:
    """Sessions a few days apart, none or more, with what a lifter might log around sets of five."""
    on, serial, sessions = date(2026, 1, 5), 0, []
    for _ in range(draw(st.integers(0, most))):
        on += timedelta(days=draw(st.sampled_from((2, 7, 7, 7, 20))))
        usual, records = draw(loads_lifted), []
        for _ in range(draw(st.integers(1, 5))):
            reps = draw(st.integers(0, 9))
            done = SetDone(
                exercise=ExerciseName("barbell row"),
                reps=reps,
                load=draw(st.sampled_from((usual, usual, usual, draw(loads_lifted)))),
                effort=draw(st.sampled_from((None, None, Effort(Decimal(1)), Effort(Decimal(4))))),
                missed=reps == 0,
            )
            serial += 1
            records.append(SetRecord(SetId(serial), done, on, datetime.combine(on, time(18), UTC), serial))
        sessions.append(Exposure(on, tuple(records), deload=draw(st.sampled_from((False, False, False, True)))))
    return tuple(sessions)
