"""A block's weeks as a programmer looks at them: sets for each muscle, sessions that come too close, minutes.

The first session's sets of each slot stand for it: waves grow from there, deloads shrink from there.
Days without a weekday can stand anywhere in their week, so nothing is said of their spacing.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from decimal import Decimal

from engine.plan.session_time import planned_sets, session_seconds
from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle
from engine.values.plan import Block, TrainingDay, VolumeTarget, WeekKind
from engine.volume.muscle_week import MuscleWeek
from engine.volume.session_work import sessions_planned
from engine.volume.spacing import Caution, cautions
from engine.volume.tally import tally_plan

Exercises = Mapping[ExerciseName, Exercise]
DAYS_A_WEEK = 7


@dataclass(frozen=True, slots=True)
class DayPlace:
    """A training day of a block: its week kind and its place in it, from 0."""

    kind: int
    day: int


@dataclass(frozen=True, slots=True)
class PlanCaution:
    """A caution between two training days of a block."""

    caution: Caution
    earlier: DayPlace
    later: DayPlace


def week_volume(
    kind: WeekKind, exercises: Exercises, targets: Mapping[Muscle, VolumeTarget] | None = None
) -> Mapping[Muscle, MuscleWeek]:
    """Each muscle's planned week of one kind."""
    return tally_plan(kind.days, exercises, targets, sets_of=planned_sets)


def mean_volume(block: Block, exercises: Exercises) -> Mapping[Muscle, Decimal]:
    """Fractional sets a week for each muscle, over one turn of the week kinds."""
    sums: dict[Muscle, Decimal] = {}
    for kind in block.kinds:
        for muscle, week in week_volume(kind, exercises).items():
            sums[muscle] = sums.get(muscle, Decimal(0)) + week.fractional
    return {muscle: total / len(block.kinds) for muscle, total in sums.items()}


def day_minutes(day: TrainingDay, exercises: Exercises) -> int:
    """The minutes that a training day takes, rounded."""
    return round(session_seconds(day.slots, exercises) / 60)


def block_cautions(block: Block, exercises: Exercises) -> tuple[PlanCaution, ...]:
    """The sessions of a block that come too close, each pair once, by later session.

    Shape: the week kinds are laid end to end, the first again behind the last where the block has as many weeks.
    """
    laid: dict[str, DayPlace] = {}
    dated = []
    for week in range(min(block.weeks, len(block.kinds) + 1)):
        for after, place, day in _dated(block, week):
            key = f"{week}:{place.day}"
            laid[key] = place
            dated.append((after, replace(day, label=key)))
    found: dict[tuple[object, ...], PlanCaution] = {}
    for caution in cautions(sessions_planned(dated, sets_of=planned_sets), exercises):
        earlier, later = laid[caution.earlier], laid[caution.later]
        key_of_pair = (earlier, later, caution.ground, caution.before, caution.after, caution.hours)
        found.setdefault(key_of_pair, PlanCaution(caution, earlier, later))
    return tuple(found.values())


def _dated(block: Block, week: int) -> Iterator[tuple[int, DayPlace, TrainingDay]]:
    """The days with a weekday of one week, with their distance from the first Monday."""
    kind = week % len(block.kinds)
    for place, day in enumerate(block.kinds[kind].days):
        if day.weekday is not None:
            yield week * DAYS_A_WEEK + day.weekday.value, DayPlace(kind, place), day
