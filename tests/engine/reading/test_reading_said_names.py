"""Names as lifters say them: each is the lift that they mean, or it is asked; none is another lift."""

from __future__ import annotations

from pathlib import Path

import pytest

from engine.reading import read
from engine.reading.values import Asked, Logged
from engine.values.exercise import Loading, Measure
from engine.values.ids import ExerciseName
from tests.engine.reading.saying import KNOWN, situation

SAID = Path(__file__).with_name("said_names.txt")
BEHIND = {Measure.REPS: "3x8 20", Measure.TIME: "3x30s", Measure.DISTANCE: "3x20m"}


def rows(*heads: str) -> list[tuple[str, str]]:
    """Each name in the file with the exercise that it is; with `heads`, only those that are asked about."""
    lines = [line for line in SAID.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#")]
    told = [line.partition(": ")[::2] for line in lines]
    return [
        (exercise, name)
        for exercise, names in told
        if (exercise in heads if heads else exercise not in ("several", "unknown"))
        for name in names.split("; ")
    ]


def numbers_behind(exercise: str) -> str:
    known = KNOWN.exercises[ExerciseName(exercise)]
    free = known.loading in (Loading.BODY, Loading.BAND) and known.measure is Measure.REPS
    return "3x8" if free or exercise == "box jump" else BEHIND[known.measure]


@pytest.mark.parametrize("exercise", sorted({exercise for exercise, _ in rows()}))
def test_each_name_is_the_lift_that_is_meant(exercise: str) -> None:
    astray = {}
    for name in (name for owner, name in rows() if owner == exercise):
        outcome = read(f"{name} {numbers_behind(exercise)}", situation(), KNOWN)
        found = {one.exercise for one in outcome.sets} if isinstance(outcome, Logged) else outcome
        if found != {exercise}:
            astray[name] = found

    assert astray == {}


@pytest.mark.parametrize("head", ["several", "unknown"])
def test_a_name_that_settles_nothing_is_asked_about(head: str) -> None:
    outcomes = {name: read(f"{name} 3x8 20", situation(), KNOWN) for _, name in rows(head)}

    assert [name for name, outcome in outcomes.items() if not isinstance(outcome, Asked)] == []


@pytest.mark.parametrize(
    ("text", "exercises"),
    [
        pytest.param("press leg 3x10 90", {"leg press"}, id="words in another order"),
        pytest.param("squat with a pause 3x3 90", {"pause squat"}, id="little words between them"),
        pytest.param("bench w/ pause 3x3 80", {"paused bench press"}, id="w/ is a little word"),
        pytest.param("deadlift trap bar 3x5 120", {"trap bar deadlift"}, id="the bar behind the lift"),
        pytest.param("curl hammer 3x10 14", {"hammer curl"}, id="a name that alone is the whole"),
        pytest.param("c+j 3x2 60", {"clean and jerk"}, id="a plus between letters is and"),
        pytest.param("dips 3x8, bench 3x8 60", {"dip", "barbell bench press"}, id="two lifts parted are two"),
        pytest.param("squat 3x5 100 paused", {"barbell back squat"}, id="behind the numbers it is a note"),
        pytest.param("single arm pushdown 3x12 15", {"triceps pushdown"}, id="one side at a time is the same lift"),
        pytest.param("legs squat 3x5 100", {"barbell back squat"}, id="a heading in front of its first lift"),
    ],
)
def test_words_beside_a_name(text: str, exercises: set[str]) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert {one.exercise for one in outcome.sets} == exercises
