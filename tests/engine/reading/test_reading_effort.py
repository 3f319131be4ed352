"""The @ sign, effort and failure."""

# ruff: noqa: E501 — the readings of a table stand on one line each

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Context, Logged
from tests.engine.reading.saying import KNOWN, said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("bench 9 @120", situation(), "barbell bench press 9 at 120 kg", id="bench 9 @120"),
        pytest.param(
            "ez curl 25 3x11 @8",
            situation(),
            "ez-bar curl 3×11 at 25 kg RPE 8",
            id="a light load right ahead of sets and reps",
        ),
        pytest.param("squat 120 3x5 @8", situation(), "barbell back squat 3×5 at 120 kg RPE 8", id="squat 120 3x5 @8"),
        pytest.param("squat 160x3@7", situation(), "barbell back squat 3 at 160 kg RPE 7", id="squat 160x3@7"),
        pytest.param(
            "squat 3x5 140 @RPE8", situation(), "barbell back squat 3×5 at 140 kg RPE 8", id="squat 3x5 140 @RPE8"
        ),
        pytest.param(
            "lateral raise 15@9",
            situation(),
            "ask: dumbbell lateral raise 15 RPE 9 | dumbbell lateral raise 15 at 9 kg each",
            id="lateral raise 15@9",
        ),
        pytest.param(
            "lateral raise 4x12 @7",
            situation(),
            "ask: dumbbell lateral raise 4×12 RPE 7 | dumbbell lateral raise 4×12 at 7 kg each",
            id="lateral raise 4x12 @7",
        ),
        pytest.param(
            "bench 3x5 100 rpe 6 7 9",
            situation(),
            "barbell bench press 5 at 100 kg RPE 6, 5 at 100 kg RPE 7, 5 at 100 kg RPE 9",
            id="bench 3x5 100 rpe 6 7 9",
        ),
        pytest.param(
            "leg press 3x12 160 RIR 4,3,1",
            situation(),
            "leg press 12 at 160 kg 4 in reserve, 12 at 160 kg 3 in reserve, 12 at 160 kg 1 in reserve",
            id="leg press 3x12 160 RIR 4,3,1",
        ),
        pytest.param(
            "bench 80x8 2 in the tank",
            situation(),
            "barbell bench press 8 at 80 kg 2 in reserve",
            id="bench 80x8 2 in the tank",
        ),
        pytest.param(
            "bench 80x8 had 3 left",
            situation(),
            "barbell bench press 8 at 80 kg 3 in reserve",
            id="bench 80x8 had 3 left",
        ),
        pytest.param(
            "bench 80x8, left one in",
            situation(),
            "barbell bench press 8 at 80 kg 1 in reserve",
            id="bench 80x8, left one in",
        ),
        pytest.param(
            "bench 100x5 to failure",
            situation(),
            "barbell bench press 5 at 100 kg to failure",
            id="bench 100x5 to failure",
        ),
        pytest.param(
            "cable curl 20x15, 12, 10F",
            situation(),
            "ask: cable curl 15 at 20 kg, 12 at 20 kg, 10 at 20 kg to failure | cable curl 20 at 15 kg, 12 at 15 kg, 10 at 15 kg to failure",
            id="cable curl 20x15, 12, 10F",
        ),
        pytest.param(
            "bench 80x8 (fail)", situation(), "barbell bench press 8 at 80 kg to failure", id="bench 80x8 (fail)"
        ),
        pytest.param(
            "Bankdrücken 80x6 bis Muskelversagen",
            situation(),
            "barbell bench press 6 at 80 kg to failure",
            id="Bankdrücken 80x6 bis Muskelversagen",
        ),
        pytest.param(
            "press banca 60x10 al fallo",
            situation(),
            "barbell bench press 10 at 60 kg to failure",
            id="press banca 60x10 al fallo",
        ),
        pytest.param(
            "supino 60x8 até a falha",
            situation(),
            "barbell bench press 8 at 60 kg to failure",
            id="supino 60x8 até a falha",
        ),
        pytest.param(
            "жим лежа 80х6 отказ", situation(), "barbell bench press 6 at 80 kg to failure", id="жим лежа 80х6 отказ"
        ),
        pytest.param(
            "to failure: push ups 20 15 12",
            situation(),
            "push-up 20 to failure, 15 to failure, 12 to failure",
            id="to failure: push ups 20 15 12",
        ),
        pytest.param(
            "push ups to failure: 20 15 12",
            situation(),
            "push-up 20 to failure, 15 to failure, 12 to failure",
            id="push ups to failure: 20 15 12",
        ),
        pytest.param(
            "bench 80x5 easy, 85x5 grindy, 90x3 felt heavy",
            situation(),
            "barbell bench press 5 at 80 kg, 5 at 85 kg, 3 at 90 kg",
            id="bench 80x5 easy, 85x5 grindy, 90x3 felt heavy",
        ),
    ],
)
def test_effort_and_failure(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "told", ["third set @9", "3rd @9", "first set @8", "first set rpe 8", "3ª série @9", "la 3e série @9"]
)
def test_an_effort_of_one_set_of_a_group_is_not_that_of_all(told: str) -> None:
    assert said(f"squat 3x5 100, {told}").startswith("ask")


@pytest.mark.parametrize(
    "told",
    [
        "échec à la 4ème",
        "échec à la 4e",
        "fallo en la 4a",
        "fallita la 4a",
        "missade 4:e",
        "mislukt bij de 4e",
    ],
)
def test_a_rep_told_by_its_place_is_no_set_of_its_own(told: str) -> None:
    outcome = read(f"squat 85x3 {told}", situation(), KNOWN)
    readings = [outcome.sets] if isinstance(outcome, Logged) else [one.sets for one in getattr(outcome, "readings", ())]

    assert [[one.reps for one in sets] for sets in readings] == [[3]]


@pytest.mark.parametrize(
    "text",
    [
        "squat 100x5, 100x5, 100x5, 7, 8, 9 rpe",
        "squat 100x5 100x5 100x5 7 8 9 rpe",
        "squat 100x5, 100x5, 100x5 (7, 8, 9 rpe)",
        "squat 100x5, 100x5, 100x5 - 7/8/9 rpe",
        "squat 3x5 100, 7 8 9 rpe",
        "squat 100 5 5 5, 7, 8, 9 rpe",
        "squat 100x5,5,5, 7, 8, 9 rpe",
        "kniebeuge 100x5, 100x5, 100x5, 7, 8 und 9 rpe",
    ],
)
def test_as_many_efforts_as_sets_ahead_of_their_scale_are_one_each(text: str) -> None:
    meant = ", ".join(f"5 at 100 kg RPE {effort}" for effort in (7, 8, 9))

    assert said(text) == f"barbell back squat {meant}"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("bench 80x8, 8, 7, 9 rpe", "barbell bench press 2×8 at 80 kg RPE 9, 7 at 80 kg RPE 9"),
        ("bench 80x8, 80x8, 80x7, 9 rpe", "barbell bench press 2×8 at 80 kg, 7 at 80 kg RPE 9"),
        ("pull ups 10, 8, 8, 9 rpe", "pull-up 10 RPE 9, 2×8 RPE 9"),
        ("bench 60 8 8 8, 9 rpe", "barbell bench press 3×8 at 60 kg RPE 9"),
        ("squat 100x5, 102x5, 7, 8 rpe", "barbell back squat 5 at 100 kg RPE 7, 5 at 102 kg RPE 8"),
    ],
)
def test_reps_ahead_of_one_effort_stay_reps(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize("text", ["bench 80x8, 80x8, 7, 9 rpe", "squat 100x8, 100x8, 100x8, 8, 7, 9 rpe"])
def test_numbers_that_may_be_reps_or_efforts_of_the_sets_are_asked(text: str) -> None:
    assert said(text).startswith("ask: ")
