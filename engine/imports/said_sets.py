"""Cells and lines that only the reader of chat messages understands: "3x5 @ 100", "100x5, 105x3"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date

from engine.catalogue.catalogue import Catalogue
from engine.imports.counts import CannotBe
from engine.imports.values import Habits
from engine.reading import read
from engine.reading.values import LOADS_IN_DOUBT, Asked, Context, Doubt, Logged, NoSets, Outcome
from engine.values.exercise import Exercise, Measure
from engine.values.ids import ExerciseName
from engine.values.load import Unit
from engine.values.sets import SetDone

WAYS_SHOWN = 2
LONGEST = 600
UNITS_SAID = ("kg", "lb", "kilo", "pound", "#", "кг")


@dataclass(slots=True)
class SaidSets:
    """What was read once is not read again."""

    catalogue: Catalogue
    habits: Habits
    known: dict[tuple[ExerciseName, str, Unit | None], tuple[SetDone, ...] | str] = field(default_factory=dict)

    def of(self, text: str, exercise: Exercise, unit: Unit | None = None) -> tuple[SetDone, ...]:
        """The sets of one exercise that a cell tells; `unit` is what its row or header says of bare loads.

        Errors: CannotBe.
        """
        if len(text) > LONGEST:
            raise CannotBe(f"a cell of {len(text)} characters")
        key = (exercise.name, text, unit)
        if key not in self.known:
            context = Context(unit or self.habits.unit, doing=exercise.name)
            self.known[key] = _only(read(text, context, self.catalogue), exercise)
        found = self.known[key]
        if isinstance(found, str):
            raise CannotBe(found)
        return found


def _only(outcome: Outcome, exercise: Exercise) -> tuple[SetDone, ...] | str:
    """The sets, where they are of this exercise alone and nothing is in doubt; else why not."""
    trouble = why_not(outcome, None)
    if trouble is not None or not isinstance(outcome, Logged):
        return trouble or "no sets"
    if any(done.exercise != exercise.name for done in outcome.sets):
        return "another exercise is named beside the sets"
    return odd_measure(outcome.sets, exercise) or outcome.sets


def odd_measure(sets: tuple[SetDone, ...], exercise: Exercise) -> str | None:
    """Why sets in seconds or metres cannot be of an exercise that is counted in reps; None where they can."""
    if exercise.measure is Measure.REPS and any(done.seconds or done.metres for done in sets):
        return f"minutes or metres of what? {exercise.name} counts reps"
    return None


def why_not(outcome: Outcome, day: date | None) -> str | None:
    """Why nothing is taken from a line; None where all of it can be."""
    match outcome:
        case Logged(unread=unread) if unread:
            return unread[0].why
        case Logged(on=on) if on not in (None, day):
            return "it tells of another day"
        case Logged():
            return None
        case Asked():
            return _doubt(outcome)
        case NoSets(unread=unread):
            return unread[0].why if unread else "no sets"
        case _:
            return "no sets"


def _doubt(asked: Asked) -> str:
    if asked.doubt is Doubt.EXERCISE:
        named = dict.fromkeys(done.exercise for reading in asked.readings for done in reading.sets)
        return f"which one: {' or '.join(named)}?" if named else "no exercise is named above"
    ways = list(dict.fromkeys(reading.label for reading in asked.readings if reading.label))
    if asked.doubt in LOADS_IN_DOUBT or len(ways) < WAYS_SHOWN:
        return str(asked.doubt.value)
    more = " and other ways" if len(ways) > WAYS_SHOWN else ""
    return f"could be {' or '.join(ways[:WAYS_SHOWN])}{more}"


def is_unit_assumed(text: str, sets: Sequence[SetDone]) -> bool:
    """Whether sets have loads and the words that told them no unit."""
    loaded = any(done.load is not None and done.load.amount != 0 for done in sets)
    return loaded and not any(unit in text.casefold() for unit in UNITS_SAID)
