"""One stanza of `exercises/` read as an exercise.

Loading follows from the equipment where the stanza does not say it; measure is reps, tension is highest in the
middle, and a set to failure wants nothing beside it, unless said. All of it is common practice, no source, but for the
shares of body weight, whose sources stand beside them in the files.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation
from enum import Enum
from typing import TypeVar

from engine.catalogue.problems import MalformedData
from engine.catalogue.stanzas import Field, Stanza
from engine.values.exercise import Equipment, Exercise, FailureGuard, Length, Loading, Measure, Pattern
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle

LABELS = frozenset(
    {
        "names", "prime", "secondary", "pattern", "equipment", "loading", "measure", "sides", "tension",
        "body share", "to failure", "swaps", "cue",
    }
)  # fmt: skip
MAY_REPEAT = frozenset({"names", "cue"})

USUAL_LOADING: Mapping[Equipment, Loading] = {
    Equipment.BARBELL: Loading.BAR,
    Equipment.EZ_BAR: Loading.BAR,
    Equipment.TRAP_BAR: Loading.BAR,
    Equipment.SMITH_MACHINE: Loading.BAR,
    Equipment.DUMBBELL: Loading.PER_HAND,
    Equipment.KETTLEBELL: Loading.IMPLEMENT,
    Equipment.STRONGMAN: Loading.IMPLEMENT,
    Equipment.CABLE: Loading.STACK,
    Equipment.MACHINE: Loading.STACK,
    Equipment.SLED: Loading.PLATES,
    Equipment.BODY_WEIGHT: Loading.BODY,
    Equipment.BAND: Loading.BAND,
}

Choice = TypeVar("Choice", bound=Enum)


@dataclass(frozen=True, slots=True)
class Entry:
    """An exercise with what it alone is called, and where that stands."""

    exercise: Exercise
    names: tuple[Field, ...]
    stanza: Stanza


def parse_entry(stanza: Stanza) -> Entry:
    """The exercise that a stanza describes.

    Errors: MalformedData for an unknown or repeated label, a word that is none of the choices, a missing field.
    """
    _check_labels(stanza)
    equipment = _choice(stanza, "equipment", Equipment, None)
    exercise = Exercise(
        name=ExerciseName(stanza.name),
        prime=_muscles(stanza, "prime"),
        secondary=_muscles(stanza, "secondary"),
        pattern=_choice(stanza, "pattern", Pattern, None),
        equipment=equipment,
        loading=_choice(stanza, "loading", Loading, USUAL_LOADING[equipment]),
        measure=_choice(stanza, "measure", Measure, Measure.REPS),
        one_sided=_one_sided(stanza),
        length=_choice(stanza, "tension", Length, Length.MIDDLE),
        body_share=_body_share(stanza),
        guard=_choice(stanza, "to failure", FailureGuard, FailureGuard.NONE),
        swaps=tuple(ExerciseName(swap) for field in stanza.every("swaps") for swap in field.listed),
        cues=tuple(field.text for field in stanza.every("cue")),
    )
    if not exercise.prime:
        raise MalformedData(stanza.file, stanza.line, stanza.name, "a prime mover", "prime: quads, glutes")
    return Entry(exercise, stanza.every("names"), stanza)


def _check_labels(stanza: Stanza) -> None:
    seen: set[str] = set()
    for field in stanza.fields:
        if field.label not in LABELS:
            raise MalformedData(stanza.file, field.line, field.label, f"one of {', '.join(sorted(LABELS))}", "cue: ...")
        if field.label in seen - MAY_REPEAT:
            raise MalformedData(stanza.file, field.line, field.label, "this label once", "one line with commas")
        seen.add(field.label)


def _choice(stanza: Stanza, label: str, choices: type[Choice], usual: Choice | None) -> Choice:
    field = stanza.first(label)
    if field is not None:
        return _one_of(stanza, field, field.text, choices)
    if usual is None:
        known = ", ".join(str(choice.value) for choice in choices)
        example = f"{label}: {known.split(',')[0]}"
        raise MalformedData(stanza.file, stanza.line, stanza.name, f"its {label}, one of {known}", example)
    return usual


def _one_of(stanza: Stanza, field: Field, word: str, choices: type[Choice]) -> Choice:
    for choice in choices:
        if choice.value == word:
            return choice
    known = [str(choice.value) for choice in choices]
    raise MalformedData(stanza.file, field.line, word, f"one of {', '.join(known)}", f"{field.label}: {known[0]}")


def _muscles(stanza: Stanza, label: str) -> tuple[Muscle, ...]:
    return tuple(_one_of(stanza, field, word, Muscle) for field in stanza.every(label) for word in field.listed)


def _one_sided(stanza: Stanza) -> bool:
    field = stanza.first("sides")
    if field is None or field.text == "both":
        return False
    if field.text != "one":
        raise MalformedData(stanza.file, field.line, field.text, "one or both", "sides: one")
    return True


def _body_share(stanza: Stanza) -> Decimal:
    field = stanza.first("body share")
    if field is None:
        return Decimal(0)
    try:
        share = Decimal(field.text)
    except InvalidOperation:
        share = Decimal(-1)
    if not 0 <= share <= 1:
        raise MalformedData(stanza.file, field.line, field.text, "a share from 0 to 1", "body share: 0.67")
    return share
