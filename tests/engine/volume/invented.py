"""Invented exercises and sets for the tests of volume and strength; the real catalogue is data and may change."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

from engine.values.effort import Effort
from engine.values.exercise import Equipment, Exercise, FailureGuard, Length, Loading, Measure, Pattern
from engine.values.ids import ExerciseName, SetId
from engine.values.load import Basis, Load, Unit
from engine.values.muscles import Muscle
from engine.values.sets import SetDone, SetKind, SetRecord, Side

MONDAY = date(2026, 3, 2)


def exercise(
    name: str,
    prime: tuple[Muscle, ...],
    secondary: tuple[Muscle, ...] = (),
    *,
    pattern: Pattern = Pattern.ISOLATION,
    loading: Loading = Loading.BAR,
    measure: Measure = Measure.REPS,
    one_sided: bool = False,
    length: Length = Length.MIDDLE,
    body_share: str = "0",
) -> Exercise:
    return Exercise(
        name=ExerciseName(name),
        prime=prime,
        secondary=secondary,
        pattern=pattern,
        equipment=Equipment.BARBELL,
        loading=loading,
        measure=measure,
        one_sided=one_sided,
        length=length,
        body_share=Decimal(body_share),
        guard=FailureGuard.NONE,
        swaps=(),
        cues=(),
    )


BENCH = exercise("bench press", (Muscle.CHEST,), (Muscle.TRICEPS, Muscle.FRONT_DELTS), pattern=Pattern.HORIZONTAL_PUSH)
OVERHEAD = exercise("overhead press", (Muscle.FRONT_DELTS,), (Muscle.TRICEPS,), pattern=Pattern.VERTICAL_PUSH)
EXTENSION = exercise("overhead extension", (Muscle.TRICEPS,), loading=Loading.STACK, length=Length.LENGTHENED)
PUSHDOWN = exercise("pushdown", (Muscle.TRICEPS,), loading=Loading.STACK, length=Length.SHORTENED)
ROW = exercise("row", (Muscle.MID_BACK, Muscle.LATS), (Muscle.BICEPS,), pattern=Pattern.HORIZONTAL_PULL)
PULLDOWN = exercise("pulldown", (Muscle.LATS,), (Muscle.BICEPS,), pattern=Pattern.VERTICAL_PULL)
CURL = exercise("curl", (Muscle.BICEPS,))
SQUAT = exercise("squat", (Muscle.QUADS,), (Muscle.GLUTES,), pattern=Pattern.SQUAT, length=Length.LENGTHENED)
LEG_PRESS = exercise("leg press", (Muscle.QUADS,), (Muscle.GLUTES,), pattern=Pattern.SQUAT, loading=Loading.PLATES)
LEG_EXTENSION = exercise("leg extension", (Muscle.QUADS,), loading=Loading.STACK, length=Length.SHORTENED)
DEADLIFT = exercise("deadlift", (Muscle.HAMSTRINGS, Muscle.GLUTES), (Muscle.LOWER_BACK,), pattern=Pattern.HINGE)
STIFF_LEG = exercise(
    "stiff-leg deadlift", (Muscle.HAMSTRINGS,), (Muscle.GLUTES,), pattern=Pattern.HINGE, length=Length.LENGTHENED
)
LEG_CURL = exercise("leg curl", (Muscle.HAMSTRINGS,), loading=Loading.STACK, length=Length.SHORTENED)
SEATED_CURL = exercise("seated leg curl", (Muscle.HAMSTRINGS,), loading=Loading.STACK, length=Length.LENGTHENED)
LATERAL = exercise("lateral raise", (Muscle.SIDE_DELTS,), loading=Loading.PER_HAND)
DUMBBELL_PRESS = exercise(
    "dumbbell press", (Muscle.CHEST,), (Muscle.TRICEPS,), pattern=Pattern.HORIZONTAL_PUSH, loading=Loading.PER_HAND
)
ONE_ARM_ROW = exercise(
    "one-arm row",
    (Muscle.LATS,),
    (Muscle.BICEPS,),
    pattern=Pattern.HORIZONTAL_PULL,
    loading=Loading.PER_HAND,
    one_sided=True,
)
SPLIT_SQUAT = exercise(
    "split squat",
    (Muscle.QUADS,),
    (Muscle.GLUTES,),
    pattern=Pattern.LUNGE,
    loading=Loading.PER_HAND,
    one_sided=True,
    length=Length.LENGTHENED,
)
PULL_UP = exercise(
    "pull-up", (Muscle.LATS,), (Muscle.BICEPS,), pattern=Pattern.VERTICAL_PULL, loading=Loading.BODY, body_share="1"
)
PUSH_UP = exercise(
    "push-up",
    (Muscle.CHEST,),
    (Muscle.TRICEPS,),
    pattern=Pattern.HORIZONTAL_PUSH,
    loading=Loading.BODY,
    body_share="0.67",
)
PLANK = exercise("plank", (Muscle.ABS,), pattern=Pattern.TRUNK, loading=Loading.BODY, measure=Measure.TIME)

EXERCISES: Mapping[ExerciseName, Exercise] = {
    known.name: known
    for known in (
        BENCH,
        OVERHEAD,
        EXTENSION,
        PUSHDOWN,
        ROW,
        PULLDOWN,
        CURL,
        SQUAT,
        LEG_PRESS,
        LEG_EXTENSION,
        DEADLIFT,
        STIFF_LEG,
        LEG_CURL,
        SEATED_CURL,
        LATERAL,
        DUMBBELL_PRESS,
        ONE_ARM_ROW,
        SPLIT_SQUAT,
        PULL_UP,
        PUSH_UP,
        PLANK,
    )
}


def kg(amount: str, basis: Basis = Basis.TOTAL) -> Load:
    return Load(Decimal(amount), Unit.KG, basis)


def lb(amount: str, basis: Basis = Basis.TOTAL) -> Load:
    return Load(Decimal(amount), Unit.LB, basis)


def done(
    lift: Exercise,
    reps: int,
    load: Load | None = None,
    *,
    rir: str | None = None,
    kind: SetKind = SetKind.WORK,
    failure: bool = False,
    missed: bool = False,
    side: Side | None = None,
    seconds: str | None = None,
) -> SetDone:
    return SetDone(
        exercise=lift.name,
        reps=reps,
        load=load,
        effort=None if rir is None else Effort(Decimal(rir)),
        kind=kind,
        failure=failure,
        missed=missed,
        side=side,
        seconds=None if seconds is None else Decimal(seconds),
    )


def records(*days: tuple[int, tuple[SetDone, ...]]) -> tuple[SetRecord, ...]:
    """Sets of an invented log: (days after Monday, the sets of that day), at 18:00 UTC, five minutes apart."""
    log: list[SetRecord] = []
    for after, sets in days:
        start = datetime(2026, 3, 2, 18, tzinfo=UTC) + timedelta(days=after)
        for number, one in enumerate(sets):
            place = len(log) + 1
            at = start + timedelta(minutes=5 * number)
            log.append(SetRecord(SetId(place), one, MONDAY + timedelta(days=after), at, place))
    return tuple(log)
