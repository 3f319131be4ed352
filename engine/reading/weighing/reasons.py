"""Why a reading is less likely than another, in words: the same facts that weigh it in `evidence`."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.values import Context
from engine.reading.weighing.evidence import ABOUT, LIGHTEST_BAR_KG, NEAR, heaviest_lifted
from engine.reading.weighing.history import Known, is_far_off, known_of
from engine.reading.words.pieces import MOST_SETS
from engine.values.exercise import Exercise, Loading
from engine.values.load import Load
from engine.values.sets import SetDone, SetKind

LESS_USUAL = "a less usual way to write those numbers"


def against(sets: Sequence[SetDone], context: Context, catalogue: Catalogue) -> str:
    """What speaks against a reading, the first fact that does; else that people seldom write so."""
    return next(_facts(sets, context, catalogue), LESS_USUAL)


def _facts(sets: Sequence[SetDone], context: Context, catalogue: Catalogue) -> Iterator[str]:
    exercise = catalogue.exercises.get(sets[0].exercise) if sets else None
    if exercise is None:
        return
    loads = dict.fromkeys(one.load for one in sets if one.load is not None and one.kind is not SetKind.WARMUP)
    for load in loads:
        yield from _of_equipment(load, exercise)
    known = known_of(exercise.name, context)
    for load in loads:
        yield from _of_heaviest(load, known, exercise)
        if known.load is not None and known.load.amount > 0 and load.amount > 0:
            yield from _of_last(load, known.load)
    if len(sets) > MOST_SETS and len({one.reps for one in sets}) == 1:
        yield f"{len(sets)} sets are many for one exercise"
    if known.planned is not None and len(sets) != known.planned.sets:
        yield f"the plan asks for {known.planned.sets} sets, not {len(sets)}"


def _of_equipment(load: Load, exercise: Exercise) -> Iterator[str]:
    mass = load.kilograms()
    if exercise.loading is Loading.BAR and 0 < mass < LIGHTEST_BAR_KG:
        yield f"{load} is lighter than an empty bar"
    if mass > heaviest_lifted(exercise):
        yield f"{load} is heavier than anyone lifts"


def _of_heaviest(load: Load, known: Known, exercise: Exercise) -> Iterator[str]:
    if known.heaviest is not None and is_far_off(load, known, exercise):
        yield f"{load} is far from the {known.heaviest} that is the heaviest known"


def _of_last(load: Load, last: Load) -> Iterator[str]:
    ratio = load.kilograms() / last.kilograms()
    if not NEAR[0] <= ratio <= NEAR[1]:
        how = "far" if not ABOUT[0] <= ratio <= ABOUT[1] else "some way"
        yield f"{load} is {how} from the {last} planned or lifted last"
