"""An invented block of two weeks: press and pull on Monday, legs on Wednesday, arms and trunk on Friday."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from engine.progression.sessions import SessionDone
from engine.values.ids import ExerciseName
from engine.values.plan import Block, Deload, FindIt, MaxReps, PlannedDay, Slot, TrainingDay, Weekday, WeekKind
from engine.values.schemes import DoubleProgression, LoadStep, RepGoal, Scheme, SetWave
from engine.values.sets import SetRecord
from tests.engine.progression.logged import MONDAY, between, kg, records
from tests.engine.progression.logged import slot as _slot

PRESS = ExerciseName("overhead press")
ROW = ExerciseName("barbell row")
PUSH_UP = ExerciseName("push-up")
SQUAT = ExerciseName("back squat")
CURL = ExerciseName("biceps curl")
DIP = ExerciseName("dip")


def slot(exercise: ExerciseName, scheme: Scheme, sets: int, target: object, load: object, **more: object) -> Slot:
    return replace(_slot(scheme, sets, target, load), exercise=exercise, **more)  # type: ignore[arg-type]


DAY_A = TrainingDay(
    "press and pull",
    Weekday.MON,
    (
        slot(PRESS, SetWave(5, kg("2.5")), 3, 6, "42.5"),
        slot(ROW, DoubleProgression(kg("2.5")), 3, between(8, 12), "55", swaps=(DIP,)),
        slot(PUSH_UP, RepGoal(), 2, MaxReps(), None),
    ),
)
DAY_B = TrainingDay("legs", Weekday.WED, (slot(SQUAT, LoadStep(kg(5)), 3, 5, "100"),))
DAY_C = TrainingDay(
    "arms",
    Weekday.FRI,
    (slot(CURL, DoubleProgression(kg("2.5")), 3, between(8, 12), "25"), slot(ROW, LoadStep(kg("2.5")), 2, 12, "50")),
)
WEEK_KIND = WeekKind("usual", (DAY_A, DAY_B, DAY_C))
BLOCK = Block("first", 2, (WEEK_KIND,), deload_weeks=(2,))


def weeks(*numbers: int, block: Block = BLOCK, start: date = MONDAY) -> tuple[PlannedDay, ...]:
    """The planned days of these weeks of the block."""
    return tuple(
        PlannedDay(
            None if day.weekday is None else start + timedelta(days=7 * (number - 1) + day.weekday.value),
            block,
            number,
            block.kind_of(number),
            day,
            Deload() if number in block.deload_weeks else None,
            start + timedelta(days=7 * (number - 1)),
        )
        for number in numbers
        for day in block.kind_of(number).days
    )


def on(days: int) -> date:
    """The date so many days after the first Monday."""
    return MONDAY + timedelta(days=days)


def log(*entries: tuple[int, ExerciseName, str]) -> tuple[SetRecord, ...]:
    """Sets by day, exercise and session text, in the order told, then sorted by day as a log is."""
    found = [record for day, exercise, text in entries for record in records(text, on(day), exercise)]
    return tuple(sorted(found, key=lambda record: record.on))


def told(sessions: Sequence[SessionDone]) -> list[str]:
    """Each session on one line: ``0 press and pull: 3 sets``, the day counted from the first Monday."""
    return [
        f"{(session.on - MONDAY).days} "
        f"{'extra' if session.planned is None else session.planned.day.label}: {len(session.records)}"
        for session in sessions
    ]


def undated(*numbers: int) -> tuple[PlannedDay, ...]:
    """The same days without weekdays: done in order."""
    days = tuple(replace(day, weekday=None) for day in WEEK_KIND.days)
    block = replace(BLOCK, weeks=4, kinds=(WeekKind("in order", days),), deload_weeks=())
    return weeks(*numbers, block=block)


__all__ = ["FindIt"]
