"""Answers in words to open questions."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import log_after


@pytest.mark.parametrize(
    ("messages", "standing"),
    [
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
        pytest.param(("plank 60s", "it was 50"), "plank 50 s", id="plank 60s | it was 50"),
        pytest.param(
            ("pull ups 11 9 8", "+5kg x 6", "6"), "pull-up 11, 9, 8, 2×6 at +5 kg", id="pull ups 11 9 8 | +5kg x 6 | 6"
        ),
        pytest.param(
            ("bench 72.5x6", "another 6"), "barbell bench press 2×6 at 72.5 kg", id="bench 72.5x6 | another 6"
        ),
        pytest.param(("bench 72.5x6", "two more"), "barbell bench press 3×6 at 72.5 kg", id="bench 72.5x6 | two more"),
        pytest.param(
            ("bench 72.5x6", "+5 for 3"), "barbell bench press 6 at 72.5 kg, 3 at 77.5 kg", id="bench 72.5x6 | +5 for 3"
        ),
        pytest.param(
            ("bench 72.5x6", "squat 96x5", "bench again 4"),
            "barbell bench press 6 at 72.5 kg; barbell back squat 5 at 96 kg; barbell bench press 4 at 72.5 kg",
            id="bench 72.5x6 | squat 96x5 | bench again 4",
        ),
        pytest.param(
            ("bench 72.5x6", "squat 96x5", "back to bench, 5"),
            "barbell bench press 6 at 72.5 kg; barbell back squat 5 at 96 kg; barbell bench press 5 at 72.5 kg",
            id="bench 72.5x6 | squat 96x5 | back to bench, 5",
        ),
        pytest.param(
            ("bench 72.5x6", "same weight 4 4"),
            "barbell bench press 6 at 72.5 kg, 2×4 at 72.5 kg",
            id="bench 72.5x6 | same weight 4 4",
        ),
        pytest.param(
            ("bench 72.5x6", "same, 4"), "barbell bench press 6 at 72.5 kg, 4 at 72.5 kg", id="bench 72.5x6 | same, 4"
        ),
        pytest.param(
            ("bench 72.5x6", "how long should i rest?", "5"),
            "barbell bench press 6 at 72.5 kg, 5 at 72.5 kg",
            id="bench 72.5x6 | how long should i rest? | 5",
        ),
        pytest.param(
            ("bench 72.5x6", "my mate did 100x5", "5"),
            "barbell bench press 6 at 72.5 kg, 5 at 72.5 kg",
            id="bench 72.5x6 | my mate did 100x5 | 5",
        ),
        pytest.param(
            ("bench 72.5x6", "knee hurts", "5"),
            "barbell bench press 6 at 72.5 kg, 5 at 72.5 kg",
            id="bench 72.5x6 | knee hurts | 5",
        ),
        pytest.param(
            ("bench 72.5x6", "last set 4"),
            "barbell bench press 6 at 72.5 kg, 4 at 72.5 kg",
            id="bench 72.5x6 | last set 4",
        ),
        pytest.param(("row 3x12 60", "2nd"), "dumbbell row 3×12 at 60 kg each", id="row 3x12 60 | 2nd"),
        pytest.param(
            ("row 3x12 60", "dumbbell please"), "dumbbell row 3×12 at 60 kg each", id="row 3x12 60 | dumbbell please"
        ),
        pytest.param(
            ("row 3x12 60", "teh barbell oen"), "barbell row 3×12 at 60 kg", id="row 3x12 60 | teh barbell oen"
        ),
        pytest.param(("row 3x12 60", "machine row"), "machine row 3×12 at 60 kg", id="row 3x12 60 | machine row"),
        pytest.param(("row 3x12 60", "t bar"), "t-bar row 3×12 at 60 kg", id="row 3x12 60 | t bar"),
        pytest.param(
            ("row 3x12 60", "forget it", "squat 3x5 95"),
            "barbell back squat 3×5 at 95 kg",
            id="row 3x12 60 | forget it | squat 3x5 95",
        ),
        pytest.param(
            ("row 3x12 60", "squat 3x5 95"), "barbell back squat 3×5 at 95 kg", id="row 3x12 60 | squat 3x5 95"
        ),
        pytest.param(("row 3x12 60", "why?", "cable"), "", id="row 3x12 60 | why? | cable"),
        pytest.param(
            ("row 3x12 60", "bb row 3x10 62.5"), "barbell row 3×10 at 62.5 kg", id="row 3x12 60 | bb row 3x10 62.5"
        ),
        pytest.param(
            ("lateral raise 14x12", "12 reps"),
            "dumbbell lateral raise 12 at 14 kg each",
            id="lateral raise 14x12 | 12 reps",
        ),
        pytest.param(
            ("lateral raise 14x12", "12kg"), "dumbbell lateral raise 14 at 12 kg each", id="lateral raise 14x12 | 12kg"
        ),
        pytest.param(("bench 3x6-9 60", "8"), "barbell bench press 3×8 at 60 kg", id="bench 3x6-9 60 | 8"),
        pytest.param(
            ("bench 3x6-9 60", "9 8 7"),
            "barbell bench press 9 at 60 kg, 8 at 60 kg, 7 at 60 kg",
            id="bench 3x6-9 60 | 9 8 7",
        ),
        pytest.param(("bench 3x6-9 60", "all 9"), "barbell bench press 3×9 at 60 kg", id="bench 3x6-9 60 | all 9"),
        pytest.param(("lateral raise 15@9", "rpe"), "dumbbell lateral raise 15 RPE 9", id="lateral raise 15@9 | rpe"),
        pytest.param(
            ("lateral raise 15@9", "kilos"), "dumbbell lateral raise 15 at 9 kg each", id="lateral raise 15@9 | kilos"
        ),
        pytest.param(
            ("lateral raise 15@9", "weight"), "dumbbell lateral raise 15 at 9 kg each", id="lateral raise 15@9 | weight"
        ),
        pytest.param(
            ("bench 72.5x6", "bench 3x5 800", "yes"),
            "barbell bench press 6 at 72.5 kg, 3×5 at 800 kg",
            id="bench 72.5x6 | bench 3x5 800 | yes",
        ),
        pytest.param(
            ("bench 72.5x6", "bench 3x5 800", "80"),
            "barbell bench press 6 at 72.5 kg, 3×5 at 80 kg",
            id="bench 72.5x6 | bench 3x5 800 | 80",
        ),
        pytest.param(
            ("bench 72.5x6", "bench 3x5 800", "no"),
            "barbell bench press 6 at 72.5 kg",
            id="bench 72.5x6 | bench 3x5 800 | no",
        ),
        pytest.param(("glorp 3x10 45", "leg press"), "leg press 3×10 at 45 kg", id="glorp 3x10 45 | leg press"),
        pytest.param(
            ("curl 3x12 16", "hm let me think", "dumbells"),
            "dumbbell curl 3×12 at 16 kg each",
            id="curl 3x12 16 | hm let me think | dumbells",
        ),
        pytest.param(
            ("squat 105x3x5", "5 sets of 3"), "barbell back squat 5×3 at 105 kg", id="squat 105x3x5 | 5 sets of 3"
        ),
        pytest.param(("squat 105x3x5", "triples"), "barbell back squat 5×3 at 105 kg", id="squat 105x3x5 | triples"),
        pytest.param(
            ("squat 105x3x5", "three fives"), "barbell back squat 3×5 at 105 kg", id="squat 105x3x5 | three fives"
        ),
        pytest.param(("4x5 95", "squat"), "barbell back squat 4×5 at 95 kg", id="4x5 95 | squat"),
    ],
)
def test_answers(messages: tuple[str, ...], standing: str) -> None:
    assert log_after(*messages) == standing
