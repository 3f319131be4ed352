"""A week as summary, digest and `week` tell it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from engine.strength.stall import Trend
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle
from engine.values.plan import PlannedDay
from engine.values.sets import SetDone
from engine.volume.muscle_week import MuscleWeek
from storage.records import Note


@dataclass(frozen=True, slots=True)
class Moved:
    """How a lift's best set moved against the week it was trained in before."""

    exercise: ExerciseName
    now: SetDone
    before: SetDone


@dataclass(frozen=True, slots=True)
class Week:
    """Shape: `first` is its Monday, `last` its Sunday; `planned` counts sessions, `asked` sets."""

    first: date
    last: date
    sessions: int
    planned: int
    sets: int
    asked: int
    volume: Mapping[Muscle, MuscleWeek]
    up: Sequence[Moved]
    same: Sequence[ExerciseName]
    down: Sequence[Moved]
    pains: Sequence[Note]
    shared: Sequence[Note]
    coming: PlannedDay | None
    missed_days: Sequence[str]
    stalls: Sequence[tuple[ExerciseName, Trend]]


@dataclass(frozen=True, slots=True)
class Client:
    """One line of a coach's digest; `attention` says why she needs a look, most urgent first."""

    name: str
    week: Week
    attention: Sequence[str]
