"""An exercise as JSON-able content and back."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

from engine.values.exercise import Equipment, Exercise, FailureGuard, Length, Loading, Measure, Pattern
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle


def exercise_content(exercise: Exercise) -> dict[str, Any]:
    """The content that `exercise_of` turns back into an equal exercise."""
    return {
        "name": exercise.name,
        "prime": [muscle.value for muscle in exercise.prime],
        "secondary": [muscle.value for muscle in exercise.secondary],
        "pattern": exercise.pattern.value,
        "equipment": exercise.equipment.value,
        "loading": exercise.loading.value,
        "measure": exercise.measure.value,
        "one_sided": exercise.one_sided,
        "length": exercise.length.value,
        "body_share": str(exercise.body_share),
        "guard": exercise.guard.value,
        "swaps": list(exercise.swaps),
        "cues": list(exercise.cues),
    }


def exercise_of(content: dict[str, Any]) -> Exercise:
    """The exercise of stored content."""
    return Exercise(
        name=ExerciseName(content["name"]),
        prime=tuple(Muscle(name) for name in content["prime"]),
        secondary=tuple(Muscle(name) for name in content["secondary"]),
        pattern=Pattern(content["pattern"]),
        equipment=Equipment(content["equipment"]),
        loading=Loading(content["loading"]),
        measure=Measure(content["measure"]),
        one_sided=content["one_sided"],
        length=Length(content["length"]),
        body_share=Decimal(content["body_share"]),
        guard=FailureGuard(content["guard"]),
        swaps=tuple(ExerciseName(name) for name in content["swaps"]),
        cues=tuple(content["cues"]),
    )
