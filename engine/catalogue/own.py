"""An athlete's own exercise or shorthand, from the words she sends.

exercise  = NAME [","] "like" NAME ("," detail)*  |  NAME "," "works" muscles ("," detail)*
detail    = equipment | "works" muscles | "one side" | "both sides" | "per hand" | unit
unit      = "in reps" | "in seconds" | "in metres"
muscles   = MUSCLE (("and" | "+") MUSCLE)*
shorthand = PHRASE ("=" | "means" | "is") NAME

cable hip flexion, like leg extension           belt march, works hip flexors and abs, in metres
hf = cable hip flexion

What she does not say is copied from the exercise that it is like; a piece of equipment in the name counts as said.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from decimal import Decimal

from engine.catalogue.catalogue import Catalogue
from engine.catalogue.entry import USUAL_LOADING
from engine.catalogue.phrases import normalise
from engine.values.exercise import Equipment, Exercise, FailureGuard, Length, Loading, Measure, Pattern
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle
from engine.values.problem import Problem

EXERCISE_EXAMPLE = "new exercise: cable hip flexion, like leg extension"
SHORTHAND_EXAMPLE = "shorthand: hf = leg extension"
LONGEST_NAME = 60
RESERVED = frozenset(
    {"x", "kg", "lb", "kilo", "pound", "rep", "set", "rpe", "rir", "bw", "bodyweight", "like"}
    | {"s", "sec", "second", "min", "minute", "m", "metre", "meter"}
)
LIKE = re.compile(r"[,;:\s]+like\s+", re.IGNORECASE)
MEANS = re.compile(r"\s*=\s*|\s+(?:means|is)\s+", re.IGNORECASE)
AND = re.compile(r"\s+and\s+|\s*\+\s*", re.IGNORECASE)
WORKS = "works "

MUSCLES: Mapping[str, Muscle] = {normalise(muscle.value): muscle for muscle in Muscle}
EQUIPMENT: Mapping[str, Equipment] = {normalise(equipment.value): equipment for equipment in Equipment} | {
    "db": Equipment.DUMBBELL,
    "bb": Equipment.BARBELL,
    "kb": Equipment.KETTLEBELL,
    "bodyweight": Equipment.BODY_WEIGHT,
    "smith": Equipment.SMITH_MACHINE,
}
SAID: Mapping[str, Callable[[Exercise], Exercise]] = {
    "one side": lambda exercise: replace(exercise, one_sided=True),
    "both side": lambda exercise: replace(exercise, one_sided=False),
    "in second": lambda exercise: replace(exercise, measure=Measure.TIME),
    "in metre": lambda exercise: replace(exercise, measure=Measure.DISTANCE),
    "in meter": lambda exercise: replace(exercise, measure=Measure.DISTANCE),
    "in rep": lambda exercise: replace(exercise, measure=Measure.REPS),
    "per hand": lambda exercise: replace(exercise, loading=Loading.PER_HAND),
}


def own_exercise(text: str, catalogue: Catalogue) -> Exercise | Problem:
    """The exercise that the athlete describes, or what is wrong with her words."""
    said, *model_and_details = LIKE.split(text.strip(), maxsplit=1)
    name, *details = _pieces(said)
    if not model_and_details:
        return _detailed(_described(name), details, catalogue) if details else _unlike(name)
    named, *more = _pieces(model_and_details[0])
    model = _the_one(named, catalogue)
    if isinstance(model, Problem):
        return model
    return _detailed(replace(model, name=_own_name(name), swaps=(model.name,), cues=()), details + more, catalogue)


def own_shorthand(text: str, catalogue: Catalogue) -> tuple[str, ExerciseName] | Problem:
    """A normalised phrase with the exercise that it shall mean from now on, or what is wrong with the words."""
    phrase, *named = MEANS.split(text.strip(), maxsplit=1)
    if not named or not named[0].strip():
        return Problem(0, text.strip(), "a shorthand, “=” and an exercise", SHORTHAND_EXAMPLE)
    wrong = _unfit(phrase)
    if wrong is not None:
        return Problem(0, phrase, wrong, SHORTHAND_EXAMPLE)
    if ExerciseName(normalise(phrase)) in {ExerciseName(normalise(known)) for known in catalogue.exercises}:
        return Problem(0, phrase, "a phrase that is no exercise's full name", SHORTHAND_EXAMPLE)
    meant = _the_one(named[0], catalogue)
    return meant if isinstance(meant, Problem) else (normalise(phrase), meant.name)


def _pieces(text: str) -> list[str]:
    return [piece for piece in (part.strip(" .;:") for part in re.split(r"[,;\n]", text)) if piece] or [""]


def _own_name(name: str) -> ExerciseName:
    return ExerciseName(" ".join(name.lower().split()))


def _unfit(phrase: str) -> str | None:
    """What a name or shorthand should have been; None where it will do."""
    plain = normalise(phrase)
    if not plain or len(phrase) > LONGEST_NAME or not any(letter.isalpha() for letter in plain):
        return f"a name with a letter in it, up to {LONGEST_NAME} characters"
    if plain in RESERVED or plain[0].isdigit():
        return "a name that is no unit, number or word of a set"
    return None


def _unlike(name: str) -> Problem:
    return Problem(0, name, "the exercise that it is like, or the muscles that it works", EXERCISE_EXAMPLE)


def _described(name: str) -> Exercise:
    """An exercise of which only the name is known yet."""
    return Exercise(
        name=_own_name(name),
        prime=(),
        secondary=(),
        pattern=Pattern.ISOLATION,
        equipment=Equipment.BODY_WEIGHT,
        loading=Loading.BODY,
        measure=Measure.REPS,
        one_sided=False,
        length=Length.MIDDLE,
        body_share=Decimal(0),
        guard=FailureGuard.NONE,
        swaps=(),
        cues=(),
    )


def _detailed(exercise: Exercise, details: list[str], catalogue: Catalogue) -> Exercise | Problem:
    wrong = _unfit(exercise.name)
    if wrong is not None:
        return Problem(0, exercise.name, wrong, EXERCISE_EXAMPLE)
    known = catalogue.owners(exercise.name)
    if known:
        return Problem(0, exercise.name, f"a new name (that one means {' or '.join(known)})", SHORTHAND_EXAMPLE)
    built = _with_equipment(exercise, _equipment_in(exercise.name))
    for detail in details:
        built_or_problem = _with_detail(built, detail)
        if isinstance(built_or_problem, Problem):
            return built_or_problem
        built = built_or_problem
    return built if built.prime else _unlike(exercise.name)


def _with_detail(exercise: Exercise, detail: str) -> Exercise | Problem:
    plain = normalise(detail)
    if plain in SAID:
        return SAID[plain](exercise)
    if plain in EQUIPMENT:
        return _with_equipment(exercise, EQUIPMENT[plain])
    if detail.lower().startswith(WORKS):
        return _with_muscles(exercise, AND.split(detail[len(WORKS) :]))
    expected = "equipment, “works” and muscles, “one side”, “per hand”, “in seconds” or “in metres”"
    return Problem(0, detail, expected, f"{EXERCISE_EXAMPLE}, one side")


def _with_muscles(exercise: Exercise, said: list[str]) -> Exercise | Problem:
    for name in said:
        if normalise(name) not in MUSCLES:
            return Problem(0, name, f"one of {', '.join(muscle.value for muscle in Muscle)}", "works quads and glutes")
    prime = tuple(dict.fromkeys(MUSCLES[normalise(name)] for name in said))
    return replace(exercise, prime=prime, secondary=tuple(m for m in exercise.secondary if m not in prime))


def _equipment_in(name: str) -> Equipment | None:
    plain = f" {normalise(name)} "
    return next((equipment for word, equipment in EQUIPMENT.items() if f" {word} " in plain), None)


def _with_equipment(exercise: Exercise, equipment: Equipment | None) -> Exercise:
    """The exercise done with this equipment; what hung on the old equipment goes with it."""
    if equipment is None or equipment is exercise.equipment:
        return exercise
    loading = USUAL_LOADING[equipment]
    share = exercise.body_share if loading is Loading.BODY else Decimal(0)
    return replace(exercise, equipment=equipment, loading=loading, body_share=share)


def _the_one(named: str, catalogue: Catalogue) -> Exercise | Problem:
    """The only exercise that the words mean."""
    owners = catalogue.owners(named) or catalogue.closest(named)
    if len(owners) == 1:
        return catalogue.exercises[owners[0]]
    expected = f"one exercise; it may be {' or '.join(owners)}" if owners else "the name of an exercise that is known"
    return Problem(0, named, expected, EXERCISE_EXAMPLE)
