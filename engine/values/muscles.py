"""The muscles, or parts of muscles, that a programmer of training counts. Common practice, no source."""

from __future__ import annotations

from enum import Enum


class Muscle(Enum):
    __hash__ = object.__hash__

    CHEST = "chest"
    FRONT_DELTS = "front delts"
    SIDE_DELTS = "side delts"
    REAR_DELTS = "rear delts"
    TRICEPS = "triceps"
    BICEPS = "biceps"
    FOREARMS = "forearms"
    LATS = "lats"
    MID_BACK = "mid back"
    UPPER_BACK = "upper back"
    LOWER_BACK = "lower back"
    ABS = "abs"
    OBLIQUES = "obliques"
    GLUTES = "glutes"
    ABDUCTORS = "abductors"
    QUADS = "quads"
    HAMSTRINGS = "hamstrings"
    ADDUCTORS = "adductors"
    HIP_FLEXORS = "hip flexors"
    CALVES = "calves"
    SHINS = "shins"
    NECK = "neck"
