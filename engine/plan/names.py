"""Exercises and muscles by the names a plan uses.

A catalogue name always means itself, even where it is another exercise's shorthand too: what we print is read back.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from itertools import permutations

from engine.catalogue.catalogue import Catalogue
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle

OR = re.compile(r" ?(?:,|/|;|(?<!\w)or(?!\w)) ?", re.IGNORECASE)
MOST_CANDIDATES = 6
MOST_TURNED = 4


@dataclass(frozen=True, slots=True)
class Named:
    """`typo`: the words were not a known phrase but a slip of the thumb, or another order, away from one."""

    exercise: ExerciseName
    typo: bool = False


@dataclass(frozen=True, slots=True)
class Unsure:
    """Words that several exercises go by, or none. `inside`: only a part of the words names the candidates."""

    words: str
    candidates: tuple[ExerciseName, ...]
    inside: bool = False


def exercise_named(words: str, catalogue: Catalogue) -> Named | Unsure:
    """The one exercise that the words mean, or the candidates."""
    exact = catalogue.get(ExerciseName(words.strip().lower()))
    if exact is not None:
        return Named(exact.name)
    owners = catalogue.owners(words)
    if len(owners) == 1:
        return Named(owners[0])
    if owners:
        return Unsure(words, owners)
    closest = catalogue.closest(words) or _in_another_order(words, catalogue)
    if len(closest) == 1:
        return Named(closest[0], typo=True)
    return Unsure(words, closest) if closest else Unsure(words, _inside(words, catalogue), inside=True)


def _in_another_order(words: str, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """What the same words mean in another order: "calf raise standing"."""
    typed = words.split()
    if not 2 <= len(typed) <= MOST_TURNED:
        return ()
    orders = (" ".join(order) for order in permutations(typed))
    return tuple(dict.fromkeys(owner for order in orders for owner in catalogue.owners(order)))


def exercises_listed(words: str, catalogue: Catalogue) -> tuple[Named | Unsure, ...]:
    """The exercises of a list: A, B or C. A name that holds a comma or the word "or" itself is read whole first."""
    whole = exercise_named(words, catalogue)
    pieces = [piece for piece in OR.split(words) if piece]
    if (isinstance(whole, Named) and not whole.typo) or len(pieces) < 2:
        return (whole,)
    return tuple(exercise_named(piece, catalogue) for piece in pieces)


def _inside(words: str, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """What the longest known phrase inside the words means."""
    typed = words.split()[:12]
    for length in range(len(typed) - 1, 0, -1):
        for first in range(len(typed) - length + 1):
            owners = catalogue.owners(" ".join(typed[first : first + length]))
            if owners:
                return owners[:MOST_CANDIDATES]
    return ()


OTHER_MUSCLE_WORDS: Mapping[str, Muscle] = {
    "pecs": Muscle.CHEST,
    "anterior delts": Muscle.FRONT_DELTS,
    "lateral delts": Muscle.SIDE_DELTS,
    "medial delts": Muscle.SIDE_DELTS,
    "middle delts": Muscle.SIDE_DELTS,
    "side shoulders": Muscle.SIDE_DELTS,
    "posterior delts": Muscle.REAR_DELTS,
    "tris": Muscle.TRICEPS,
    "bis": Muscle.BICEPS,
    "grip": Muscle.FOREARMS,
    "lat": Muscle.LATS,
    "rhomboids": Muscle.MID_BACK,
    "traps": Muscle.UPPER_BACK,
    "spinal erectors": Muscle.LOWER_BACK,
    "erectors": Muscle.LOWER_BACK,
    "abdominals": Muscle.ABS,
    "glute": Muscle.GLUTES,
    "quadriceps": Muscle.QUADS,
    "hams": Muscle.HAMSTRINGS,
    "calf": Muscle.CALVES,
}
"""Trade words beside our own. Common practice, no source."""


def muscle_named(words: str) -> Muscle | None:
    """The muscle that the words mean, in the singular or the plural; None where they mean none."""
    plain = " ".join(words.lower().replace("deltoid", "delt").split())
    for form in (plain, f"{plain}s", plain.removesuffix("s")):
        if form in MUSCLES:
            return MUSCLES[form]
    return None


MUSCLES: Mapping[str, Muscle] = {**OTHER_MUSCLE_WORDS, **{muscle.value: muscle for muscle in Muscle}}
