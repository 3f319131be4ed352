"""Corrections in words, and what they change among the sets that stand."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import log_after


@pytest.mark.parametrize(
    ("messages", "standing"),
    [
        pytest.param(
            ("bench 65x9", "it was 8 not 9"), "barbell bench press 8 at 65 kg", id="bench 65x9 | it was 8 not 9"
        ),
        pytest.param(
            ("bench 4x8 60", "62.5 not 60"), "barbell bench press 4×8 at 62.5 kg", id="bench 4x8 60 | 62.5 not 60"
        ),
        pytest.param(
            ("bench 82.5x5", "82.5x5", "make the last one 4"),
            "barbell bench press 5 at 82.5 kg, 4 at 82.5 kg",
            id="bench 82.5x5 | 82.5x5 | make the last one 4",
        ),
        pytest.param(
            ("bench 60 8 8 7", "second set was 9"),
            "barbell bench press 8 at 60 kg, 9 at 60 kg, 7 at 60 kg",
            id="bench 60 8 8 7 | second set was 9",
        ),
        pytest.param(
            ("bench 60 8 8 7", "all at 62.5"),
            "barbell bench press 2×8 at 62.5 kg, 7 at 62.5 kg",
            id="bench 60 8 8 7 | all at 62.5",
        ),
        pytest.param(
            ("bench 60 8 8 7", "change set 3 to 6"),
            "barbell bench press 2×8 at 60 kg, 6 at 60 kg",
            id="bench 60 8 8 7 | change set 3 to 6",
        ),
        pytest.param(("bench 77.5x5", "no, 82.5"), "barbell bench press 5 at 82.5 kg", id="bench 77.5x5 | no, 82.5"),
        pytest.param(("bench 77.5x5", "no 82.5x4"), "barbell bench press 4 at 82.5 kg", id="bench 77.5x5 | no 82.5x4"),
        pytest.param(("bench 77.5x5", "oops 6"), "barbell bench press 6 at 77.5 kg", id="bench 77.5x5 | oops 6"),
        pytest.param(("bench 77.5x5", "actualy 4"), "barbell bench press 4 at 77.5 kg", id="bench 77.5x5 | actualy 4"),
        pytest.param(
            ("bench 77.5x5", "should be 85kg"), "barbell bench press 5 at 85 kg", id="bench 77.5x5 | should be 85kg"
        ),
        pytest.param(
            ("squat 3x4 100", "only did 2"), "barbell back squat 2×4 at 100 kg", id="squat 3x4 100 | only did 2"
        ),
        pytest.param(
            ("squat 3x4 100", "it was 4 sets"), "barbell back squat 4×4 at 100 kg", id="squat 3x4 100 | it was 4 sets"
        ),
        pytest.param(
            ("squat 3x4 100", "2 sets not 3"), "barbell back squat 2×4 at 100 kg", id="squat 3x4 100 | 2 sets not 3"
        ),
        pytest.param(
            ("squat 3x4 100", "that was front squat"),
            "barbell front squat 3×4 at 100 kg",
            id="squat 3x4 100 | that was front squat",
        ),
        pytest.param(
            ("squat 3x4 100", "sorry, front squats"),
            "barbell front squat 3×4 at 100 kg",
            id="squat 3x4 100 | sorry, front squats",
        ),
        pytest.param(
            ("row 3x12 60", "barbell", "it was cable"),
            "seated cable row 3×12 at 60 kg",
            id="row 3x12 60 | barbell | it was cable",
        ),
        pytest.param(
            ("bench 3x12 24", "it was dumbbells"),
            "dumbbell bench press 3×12 at 24 kg each",
            id="bench 3x12 24 | it was dumbbells",
        ),
        pytest.param(
            ("bench 3x6 175", "that was in lbs"),
            "barbell bench press 3×6 at 175 lb",
            id="bench 3x6 175 | that was in lbs",
        ),
        pytest.param(("bench 3x6 175", "pounds"), "barbell bench press 3×6 at 175 lb", id="bench 3x6 175 | pounds"),
        pytest.param(("bench 105x3", "rpe 9"), "barbell bench press 3 at 105 kg RPE 9", id="bench 105x3 | rpe 9"),
        pytest.param(
            ("bench 105x3", "that was @9"), "barbell bench press 3 at 105 kg RPE 9", id="bench 105x3 | that was @9"
        ),
        pytest.param(
            ("bench 3x5 95", "last set was rpe 9"),
            "barbell bench press 2×5 at 95 kg, 5 at 95 kg RPE 9",
            id="bench 3x5 95 | last set was rpe 9",
        ),
        pytest.param(
            ("dips 11 10 8", "the last one was to failure"),
            "dip 11, 10, 8 to failure",
            id="dips 11 10 8 | the last one was to failure",
        ),
        pytest.param(
            ("squat 60x5 80x5 105x5", "first two were warm ups"),
            "barbell back squat 5 at 60 kg warmup, 5 at 80 kg warmup, 5 at 105 kg",
            id="squat 60x5 80x5 105x5 | first two were warm ups",
        ),
        pytest.param(
            ("bench 3x5 76", "that was on wednesday"),
            "barbell bench press 3×5 at 76 kg on 2025-03-12",
            id="bench 3x5 76 | that was on wednesday",
        ),
        pytest.param(
            ("bench 3x5 76", "move it to monday"),
            "barbell bench press 3×5 at 76 kg on 2025-03-10",
            id="bench 3x5 76 | move it to monday",
        ),
        pytest.param(
            ("bench 3x5 76", "squat 3x5 95", "move the bench to yesterday"),
            "barbell bench press 3×5 at 76 kg; barbell back squat 3×5 at 95 kg on 2025-03-13",
            id="bench 3x5 76 | squat 3x5 95 | move the bench to yesterday",
        ),
        pytest.param(
            ("bench 3x5 76", "delete set 3"), "barbell bench press 2×5 at 76 kg", id="bench 3x5 76 | delete set 3"
        ),
        pytest.param(
            ("bench 3x5 76", "squat 3x5 95", "delete the bench"),
            "barbell back squat 3×5 at 95 kg",
            id="bench 3x5 76 | squat 3x5 95 | delete the bench",
        ),
        pytest.param(
            ("bench 3x5 76", "delete the last set"),
            "barbell bench press 2×5 at 76 kg",
            id="bench 3x5 76 | delete the last set",
        ),
        pytest.param(
            ("bench 3x5 76", "delete the last two"),
            "barbell bench press 5 at 76 kg",
            id="bench 3x5 76 | delete the last two",
        ),
        pytest.param(
            ("bench 3x5 76", "squat 96x5", "bench was 82.5"),
            "barbell bench press 3×5 at 82.5 kg; barbell back squat 5 at 96 kg",
            id="bench 3x5 76 | squat 96x5 | bench was 82.5",
        ),
        pytest.param(
            ("bench 77.5x5", "85x5", "first one was 4"),
            "barbell bench press 4 at 77.5 kg, 5 at 85 kg",
            id="bench 77.5x5 | 85x5 | first one was 4",
        ),
        pytest.param(("pull ups 11 9 8", "last was 7"), "pull-up 11, 9, 7", id="pull ups 11 9 8 | last was 7"),
        pytest.param(
            ("Kniebeuge 3x5 102,5", "105 statt 102,5"),
            "barbell back squat 3×5 at 105 kg",
            id="Kniebeuge 3x5 102,5 | 105 statt 102,5",
        ),
        pytest.param(
            ("press banca 3x8 65", "no, 62,5"), "barbell bench press 3×8 at 62.5 kg", id="press banca 3x8 65 | no, 62,5"
        ),
        pytest.param(
            ("bench 3x8 72.5", "heavier than last week"),
            "barbell bench press 3×8 at 72.5 kg",
            id="bench 3x8 72.5 | heavier than last week",
        ),
        pytest.param(
            ("bench 72.5x6", "that felt heavy"), "barbell bench press 6 at 72.5 kg", id="bench 72.5x6 | that felt heavy"
        ),
        pytest.param(
            ("bench 72.5x6", "was that ok?"), "barbell bench press 6 at 72.5 kg", id="bench 72.5x6 | was that ok?"
        ),
    ],
)
def test_corrections(messages: tuple[str, ...], standing: str) -> None:
    assert log_after(*messages) == standing
