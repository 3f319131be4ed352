"""What the numbers of a set line may mean: the ways that are open, what an exercise settles, one set before its
load.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import Enum
from functools import lru_cache
from typing import NamedTuple

from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role
from engine.values.effort import Effort
from engine.values.exercise import Equipment, Exercise, Loading, Measure, Pattern
from engine.values.sets import MOST_REPS, SetKind, Side

MOST_OUT = 200
HELD_AT_ONCE = frozenset((1, 2))
"""Implements: "1x24kg", "2x24kg"."""
ON_THE_BODY = (Loading.BODY, Loading.BAND)
IN_THE_HANDS = (Loading.PER_HAND, Loading.IMPLEMENT)
LOADS = frozenset((Role.LOAD, Role.PLURAL, Role.CHANGE, Role.BAR, Role.BODY))


class PairAs(Enum):
    __hash__ = object.__hash__

    COUNTS = "sets x reps"
    LOAD_REPS = "load x reps"
    REPS_LOAD = "reps x load"


class TripleAs(Enum):
    __hash__ = object.__hash__

    SETS_REPS_LOAD = "sets x reps x load"
    LOAD_REPS_SETS = "load x reps x sets"
    LOAD_SETS_REPS = "load x sets x reps"
    REPS_SETS_LOAD = "reps x sets x load"
    REPS_LOAD_SETS = "reps x load x sets"
    SETS_LOAD_REPS = "sets x load x reps"
    REPS_LIST = "reps of each set"


PLACES_OF_THREE = {
    TripleAs.SETS_REPS_LOAD: (2, 1, 0),
    TripleAs.LOAD_REPS_SETS: (0, 1, 2),
    TripleAs.LOAD_SETS_REPS: (0, 2, 1),
    TripleAs.REPS_SETS_LOAD: (2, 0, 1),
    TripleAs.REPS_LOAD_SETS: (1, 0, 2),
    TripleAs.SETS_LOAD_REPS: (1, 2, 0),
}
"""Where the load, the reps and the sets stand among three factors; a list of reps has no such places."""


class FirstAs(Enum):
    __hash__ = object.__hash__

    LOAD = "the first number is the load"
    REPS = "all numbers are reps"
    SHARED = "the first number is the reps of each load behind it"


class Choice(NamedTuple):
    """Which number is which, where the numbers leave it open."""

    pair: PairAs = PairAs.COUNTS
    triple: TripleAs = TripleAs.SETS_REPS_LOAD
    first: FirstAs = FirstAs.REPS
    at_is_effort: bool = False
    effort_for_all: bool = True
    high_of_range: bool = False
    sides_in_one: bool = False
    load_for_all: bool = True


chosen = lru_cache(maxsize=512)(Choice._replace)
"""A choice with one of its questions settled; there are few, and each is made once."""


@dataclass(slots=True)
class Draft:
    """One set before its load is resolved. `load` None: not told here."""

    reps: int
    load: Piece | None = None
    seconds: Decimal | None = None
    metres: Decimal | None = None
    effort: Effort | None = None
    kind: SetKind = SetKind.WORK
    failure: bool = False
    missed: bool = False
    side: Side | None = None
    carried: bool = False
    """The load was carried on from an earlier group of the same exercise: likely, not certain."""


class DoesNotFit(Exception):
    """These numbers are no sets in this way of reading; the text says why."""


class Traits(NamedTuple):
    """What an exercise settles about the numbers told of it."""

    body: bool
    timed: bool
    carried: bool
    two_implements: bool
    light: bool
    barbell: bool
    explosive: bool
    one_sided: bool
    travels: bool
    """Metres may be told of it."""

    @classmethod
    def of(cls, exercise: Exercise) -> Traits:
        return _traits(exercise.loading, exercise.measure, exercise.equipment, exercise.pattern, exercise.one_sided)


@lru_cache(maxsize=512)
def _traits(loading: Loading, measure: Measure, equipment: Equipment, pattern: Pattern, one_sided: bool) -> Traits:
    return Traits(
        body=loading in ON_THE_BODY,
        timed=measure is Measure.TIME,
        carried=measure is Measure.DISTANCE,
        two_implements=loading in IN_THE_HANDS,
        light=pattern is Pattern.ISOLATION,
        barbell=equipment is Equipment.BARBELL,
        explosive=pattern is Pattern.EXPLOSIVE,
        one_sided=one_sided,
        travels=measure is Measure.DISTANCE or pattern is Pattern.LUNGE,
    )


def whole(piece: Piece) -> bool:
    return piece.value == int(piece.value)


BODY_COUNTS = frozenset(Decimal(count) for count in range(MOST_REPS + 1))
LOADED_COUNTS = frozenset(Decimal(count) for count in range(MOST_LOADED_REPS + 1))


def may_be_reps(piece: Piece, traits: Traits) -> bool:
    """Whether a bare number may count reps of one set."""
    return piece.value in (BODY_COUNTS if traits.body else LOADED_COUNTS)


def copy_of(draft: Draft) -> Draft:
    """The same set once more."""
    return Draft(
        draft.reps,
        draft.load,
        draft.seconds,
        draft.metres,
        draft.effort,
        draft.kind,
        draft.failure,
        draft.missed,
        draft.side,
    )
