"""Names as lifters say them: each is the lift that they mean, or it is asked; none is another lift."""

from __future__ import annotations

from pathlib import Path

import pytest

from engine.reading import read
from engine.reading.values import Asked, Context, Logged
from engine.values.exercise import Loading, Measure
from engine.values.ids import ExerciseName
from tests.engine.reading.saying import KNOWN, readings, said, situation

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
    "text",
    [
        pytest.param("squat off zigzags 3x4 90", id="a place that nobody knows"),
        pytest.param("kniebeuge auf kiste 3x4 90", id="in another language"),
        pytest.param("shrug on hip thrust 3x11 50", id="a lift told as a place"),
        pytest.param("q squat 3x4 90", id="a letter in front"),
        pytest.param("bench (zigzag) 3x4 70", id="an unknown word in brackets"),
        pytest.param("half bench 3x4 70", id="a part of the way"),
        pytest.param("partial rdl 3x8 90", id="partial reps"),
        pytest.param("band front raise 3x14", id="a band instead of the weight"),
        pytest.param("one arm dips 3x3", id="half of the body's means"),
        pytest.param("block snatch 3x2 50", id="blocks to stand on"),
        pytest.param("ab bc cd de ef 3x8 30kg", id="a name of five unknown words"),
    ],
)
def test_what_may_make_another_lift_of_a_name_is_asked_about(text: str) -> None:
    assert isinstance(read(text, situation(), KNOWN), Asked)


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
        pytest.param("incline (db) 3x9 26", {"incline dumbbell bench press"}, id="a bracket behind the name"),
        pytest.param("squat with 3s pause 3x3 90", {"pause squat"}, id="how long the pause is"),
        pytest.param("3s pause squat 3x3 90", {"pause squat"}, id="how long it is, in front"),
        pytest.param("sa cable row 3x11 24", {"seated cable row"}, id="the cable that was said stays"),
        pytest.param("press (machine) 3x9 45", {"machine chest press"}, id="the machine among several"),
        pytest.param("strait arm pd 3x13 24", {"straight-arm pulldown"}, id="straight, spelt by ear"),
        pytest.param("banded squat 3x5 100", {"barbell back squat"}, id="a band on a loaded bar"),
        pytest.param("squat w belt 3x5 130", {"barbell back squat"}, id="a belt that is worn"),
        pytest.param("bench with new shoes 3x6 80", {"barbell bench press"}, id="what it is done with is a remark"),
        pytest.param("squat on monday 3x5 100", {"barbell back squat"}, id="a day is no place"),
    ],
)
def test_words_beside_a_name(text: str, exercises: set[str]) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert {one.exercise for one in outcome.sets} == exercises


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
KB 3x4 120, BD 3x5 85, KH 2x3 145 => barbell back squat 3×4 at 120 kg; barbell bench press 3×5 at 85 kg; \
conventional deadlift 2×3 at 145 kg
BD 85x5 // KH 145x3 => barbell bench press 5 at 85 kg; conventional deadlift 3 at 145 kg
KH BD 3x10 30 => dumbbell bench press 3×10 at 30 kg each
BD 3x5 85, KH Rudern 3x10 30 => barbell bench press 3×5 at 85 kg; dumbbell row 3×10 at 30 kg each
BD 3x8 80, KB swing 3x15 24 => barbell bench press 3×8 at 80 kg; kettlebell swing 3×15 at 24 kg
"""),
)
def test_letters_of_lifts_beside_one_another(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
deadlift 3x5 100, sumo                  => sumo deadlift 3×5 at 100 kg
deadlift 3x5 100 sumo felt good         => sumo deadlift 3×5 at 100 kg
bench 80 8 8 7 close grip               => close-grip bench press 2×8 at 80 kg, 7 at 80 kg
pull ups 10 8 7, neutral grip           => neutral-grip pull-up 10, 8, 7
pushdown 25 3x12 with the rope          => rope pushdown 3×12 at 25 kg
squat 3x5 100, deadlift 3x5 140, sumo   => barbell back squat 3×5 at 100 kg; sumo deadlift 3×5 at 140 kg
deadlift 3x5 100, sumo 3x5 90           => conventional deadlift 3×5 at 100 kg; sumo deadlift 3×5 at 90 kg
rdl 3x8 90, sumo                        => romanian deadlift 3×8 at 90 kg
lat pulldown 50 10 10 8 (neutral grip)  => lat pulldown 2×10 at 50 kg, 8 at 50 kg
seated row 3x10 50, close grip          => seated cable row 3×10 at 50 kg
pull ups 10, 8, 7 neutral grip          => ask: neutral-grip pull-up 10, 8, 7
"""),
)
def test_a_name_behind_the_numbers_that_only_says_how_is_of_the_lift_before_it(text, known, meant):
    assert said(text, known) == meant


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
{doing: lat pulldown} close grip 50x9 => ask: close-grip bench press 9 at 50 kg | close-grip lat pulldown 9 at 50 kg
{doing: barbell bench press} close grip 70x8      => close-grip bench press 8 at 70 kg
{doing: barbell bench press} smith machine 80x8   => smith machine bench press 8 at 80 kg
{doing: barbell back squat} front 80x5            => barbell front squat 5 at 80 kg
{doing: conventional deadlift} deficit 120x5      => deficit deadlift 5 at 120 kg
{doing: leg press} one leg 80x10                  => leg press 10 at 80 kg
{doing: barbell bench press} larsen 75x8          => barbell bench press 8 at 75 kg
"""),
)
def test_a_grip_or_a_sort_of_lift_alone_is_of_the_lift_in_hand(text, known, meant):
    assert said(text, known) == meant
