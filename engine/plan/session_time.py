"""How long a planned session takes: sets x reps x seconds a rep, and the rests between sets.

Seven exercises of one set of ten at 3 s a rep with 120 s between make 15.5 minutes, where 13 were reported (Schoenfeld
et al. 2019, Med Sci Sports Exerc 51:94-103, named from memory). One to two seconds up and one to two down: ACSM 2009.
Supersets about halve the time: Iversen et al. 2021, Sports Med 51:2079-2095. Warm-ups are not counted.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from itertools import groupby
from typing import assert_never

from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName
from engine.values.plan import MaxReps, Metres, RepRange, Reps, Seconds, Slot, Target
from engine.values.schemes import TopSetBackOff

SECONDS_A_REP = Decimal(3)
SECONDS_A_METRE = Decimal(1)
REPS_OF_A_MAXIMUM = 12
"""Common practice, no source: walking pace for carries, and what a set of maximum reps is taken to have."""

HEAVY_REPS, MODERATE_REPS = 5, 12
HEAVY_REST, MODERATE_REST, LIGHT_REST = 180, 90, 60
"""Rests where a plan names none: at least 3 minutes heavy, 1 to 2 for growth, under 90 s for endurance.

Source: ACSM 2009, Med Sci Sports Exerc 41:687-708 (the last two from memory)."""

SIDES = 2


def planned_sets(slot: Slot) -> int:
    """The sets that a slot plans for its first session: back-offs with their top set."""
    return slot.sets + (slot.scheme.back_offs if isinstance(slot.scheme, TopSetBackOff) else 0)


def session_seconds(slots: Sequence[Slot], exercises: Mapping[ExerciseName, Exercise]) -> int:
    """The seconds that a day's slots take, from the first set to the last; the last set's rest is left out."""
    total, last_rest = 0, 0
    for rounds in _rounds(slots):
        work = sum(planned_sets(slot) * _set_seconds(slot, exercises.get(slot.exercise)) for slot in rounds)
        last_rest = max(rest_seconds(slot) for slot in rounds)
        total += int(work) + max(map(planned_sets, rounds)) * last_rest
    return max(0, total - last_rest)


def rest_seconds(slot: Slot) -> int:
    """The rest that the slot names, or the usual one for its reps."""
    if slot.rest_seconds is not None:
        return slot.rest_seconds
    reps = _reps(slot.target)
    if isinstance(slot.target, Seconds | Metres):
        return MODERATE_REST
    return HEAVY_REST if reps <= HEAVY_REPS else MODERATE_REST if reps <= MODERATE_REPS else LIGHT_REST


def _rounds(slots: Sequence[Slot]) -> Iterator[tuple[Slot, ...]]:
    """Slots that are done in turn before a rest: those of a superset, or one alone."""
    for group, together in groupby(enumerate(slots), key=lambda pair: pair[1].group or pair[0]):
        members = tuple(slot for _, slot in together)
        if isinstance(group, str):
            yield members
        else:
            yield from ((slot,) for slot in members)


def _set_seconds(slot: Slot, exercise: Exercise | None) -> Decimal:
    sides = SIDES if exercise is not None and exercise.one_sided else 1
    return _seconds(slot.target) * sides


def _seconds(target: Target) -> Decimal:
    match target:
        case Seconds(count):
            return count
        case Metres(count):
            return count * SECONDS_A_METRE
        case Reps() | RepRange() | MaxReps():
            return _reps(target) * SECONDS_A_REP
        case _:
            assert_never(target)


def _reps(target: Target) -> Decimal:
    match target:
        case Reps(count):
            return Decimal(count)
        case RepRange(low, high):
            return Decimal(low + high) / 2
        case MaxReps() | Seconds() | Metres():
            return Decimal(REPS_OF_A_MAXIMUM)
        case _:
            assert_never(target)
