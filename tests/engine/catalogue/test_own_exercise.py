"""An athlete's own exercise and shorthand, from her words."""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.catalogue.own import own_exercise, own_shorthand
from engine.values.exercise import Equipment, Exercise, Loading, Measure
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle
from engine.values.problem import Problem


def built(text: str) -> Exercise:
    exercise = own_exercise(text, catalogue())
    assert isinstance(exercise, Exercise), exercise
    return exercise


def wrong(text: str) -> Problem:
    problem = own_exercise(text, catalogue())
    assert isinstance(problem, Problem), problem
    return problem


def test_what_is_not_said_comes_from_the_exercise_it_is_like() -> None:
    exercise = built("Cable Hip Flexion, like leg extension")
    model = catalogue().exercises[ExerciseName("leg extension")]

    assert exercise.name == "cable hip flexion"
    assert (exercise.prime, exercise.secondary, exercise.pattern) == (model.prime, model.secondary, model.pattern)
    assert exercise.swaps == ("leg extension",)
    assert exercise.cues == ()


@pytest.mark.parametrize(
    ("text", "field", "expected"),
    [
        pytest.param("cable hip flexion like leg extension", "equipment", Equipment.CABLE, id="equipment in the name"),
        pytest.param("cable hip flexion like leg extension", "loading", Loading.STACK, id="loading goes with it"),
        pytest.param("ring row to chest, like inverted row", "loading", Loading.BODY, id="body weight stays"),
        pytest.param("sofa carry, like farmers walk", "measure", Measure.DISTANCE, id="metres are copied"),
        pytest.param("wall lean, like plank, in reps", "measure", Measure.REPS, id="reps are said"),
        pytest.param("wall lean, like db curl, in seconds", "measure", Measure.TIME, id="seconds are said"),
        pytest.param("wall lean, like db curl, one side", "one_sided", True, id="one side is said"),
        pytest.param(
            "wall lean like leg press, works glutes and quads", "prime", (Muscle.GLUTES, Muscle.QUADS), id="muscles"
        ),
        pytest.param("wall lean, works hip flexors", "prime", (Muscle.HIP_FLEXORS,), id="muscles without a model"),
        pytest.param("wall lean, dumbbell, works abs", "loading", Loading.PER_HAND, id="equipment is said"),
        pytest.param(
            "machine row plus, like dl", "prime", (Muscle.GLUTES, Muscle.HAMSTRINGS, Muscle.LOWER_BACK), id="dl"
        ),
        pytest.param("wall lean, like leg extnesion", "prime", (Muscle.QUADS,), id="a slip in the model's name"),
    ],
)
def test_details(text: str, field: str, expected: object) -> None:
    assert getattr(built(text), field) == expected


def test_secondary_movers_that_are_named_as_prime_are_not_counted_twice() -> None:
    exercise = built("wall lean, like barbell bench press, works triceps")

    assert exercise.prime == (Muscle.TRICEPS,)
    assert Muscle.TRICEPS not in exercise.secondary


def test_a_share_of_body_weight_goes_when_the_body_is_no_longer_the_load() -> None:
    assert built("cable thing, like push-up").body_share == 0
    assert built("floor thing, like push-up").body_share > 0


@pytest.mark.parametrize(
    ("text", "read"),
    [
        pytest.param("wall lean", "wall lean", id="neither model nor muscles"),
        pytest.param("", "", id="nothing said"),
        pytest.param("wall lean, like row", "row", id="a model that may be several"),
        pytest.param("wall lean, like qqqq", "qqqq", id="a model that is not known"),
        pytest.param("wall lean, like leg press, in parsecs", "in parsecs", id="an unknown detail"),
        pytest.param("wall lean, works charm", "charm", id="an unknown muscle"),
        pytest.param("squat, like leg press", "squat", id="a name that is taken"),
        pytest.param("3x12, like leg press", "3x12", id="a name that looks like sets"),
        pytest.param("kg, like leg press", "kg", id="a name that is a unit"),
        pytest.param("?!, like leg press", "?!", id="a name without letters"),
        pytest.param("a" * 61 + ", like leg press", "a" * 61, id="a name without end"),
    ],
)
def test_what_cannot_be_built_says_what_to_write(text: str, read: str) -> None:
    problem = wrong(text)

    assert problem.read == read
    assert problem.expected
    assert (
        "new exercise:" in problem.try_instead or "shorthand:" in problem.try_instead or "works" in problem.try_instead
    )


def test_a_model_that_may_be_several_names_them() -> None:
    assert "barbell row or dumbbell row" in wrong("wall lean, like row").expected


@pytest.mark.parametrize(
    ("text", "shorthand"),
    [
        pytest.param("hf = leg extension", ("hf", "leg extension"), id="equals sign"),
        pytest.param("The Machine means leg press", ("the machine", "leg press"), id="means"),
        pytest.param("press is ohp", ("press", "barbell overhead press"), id="an open shorthand is settled"),
        pytest.param("hfs=leg extention", ("hf", "leg extension"), id="no spaces, a plural and a slip"),
    ],
)
def test_shorthand(text: str, shorthand: tuple[str, str]) -> None:
    assert own_shorthand(text, catalogue()) == shorthand


@pytest.mark.parametrize(
    ("text", "read"),
    [
        pytest.param("hf", "hf", id="no exercise"),
        pytest.param("hf =", "hf =", id="nothing behind the sign"),
        pytest.param("5x5 = squat", "5x5", id="looks like sets"),
        pytest.param("reps = squat", "reps", id="a word of a set"),
        pytest.param("hf = row", "row", id="an exercise that may be several"),
        pytest.param("leg press = hack squat", "leg press", id="another exercise's full name"),
    ],
)
def test_a_shorthand_that_cannot_be(text: str, read: str) -> None:
    problem = own_shorthand(text, catalogue())

    assert isinstance(problem, Problem)
    assert problem.read == read
