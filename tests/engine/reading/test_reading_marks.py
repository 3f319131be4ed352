"""Marks and results reach the sets they are told of, and no others."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "pull ups 10, 8 (+5kg), 6 (+10kg)",
            "pull-up 10, 8 at +5 kg, 6 at +10 kg",
            id="a load in brackets is that set's",
        ),
        pytest.param(
            "deadlift 225 lb x 5, 245 x 3",
            "conventional deadlift 5 at 225 lb, 3 at 245 lb",
            id="a unit holds for the line",
        ),
        pytest.param("lb: bench 135 5 5 5", "barbell bench press 3×5 at 135 lb", id="a unit ahead of the line"),
        pytest.param(
            "bench 8-10 reps 60",
            "ask: barbell bench press 10 at 60 kg | barbell bench press 8 at 60 kg",
            id="a range with its word",
        ),
        pytest.param(
            "squat 100 5+ 8", "ask: barbell back squat 5 at 100 kg, 8 at 100 kg", id="an open set and a number"
        ),
        pytest.param(
            "w/u 40x8, 60x5, 80 3x5 bench",
            "ask: barbell bench press 8 at 40 kg warmup, 5 at 60 kg warmup, 3×5 at 80 kg | "
            "barbell bench press 8 at 40 kg warmup, 5 at 60 kg warmup, 3×5 at 80 kg warmup",
            id="warm-ups that run into the work",
        ),
        pytest.param(
            "bench 100x3, 80x8 drop", "barbell bench press 3 at 100 kg, 8 at 80 kg drop", id="the drop told behind it"
        ),
        pytest.param(
            "squat 120 3x5 @7,7.5,8",
            "barbell back squat 5 at 120 kg RPE 7, 5 at 120 kg RPE 7.5, 5 at 120 kg RPE 8",
            id="an effort for each set",
        ),
        pytest.param("tempo squat 31x1 80 3x5", "barbell back squat 3×5 at 80 kg", id="a tempo with an x"),
        pytest.param(
            "squat 80 3x5 (31X1)", "ask: barbell back squat 3×5 at 80 kg, 1 at 31 kg", id="a pair in brackets"
        ),
        pytest.param("db bench 30 degrees 24s 3x10", "dumbbell bench press 3×10 at 24 kg each", id="degrees behind"),
        pytest.param("* bench 60 3x8", "barbell bench press 3×8 at 60 kg", id="a star for a bullet"),
        pytest.param("pull ups 5x5 @+10kg", "pull-up 5×5 at +10 kg", id="a weight added behind the sign"),
        pytest.param("bench=60x8x3", "barbell bench press 3×8 at 60 kg", id="an equals sign behind the name"),
        pytest.param(
            "bench on monday 60 3x8", "barbell bench press 3×8 at 60 kg on 2025-03-10", id="a day behind the name"
        ),
        pytest.param(
            "bench 60 3x8 (10 march)", "barbell bench press 3×8 at 60 kg on 2025-03-10", id="a day in brackets"
        ),
        pytest.param("goblet squat 24kg kb 3x10", "goblet squat 3×10 at 24 kg", id="the other implement in the hand"),
    ],
)
def test_marks_reach_the_sets_they_are_told_of(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "bench 3x8 60 last set 6", "barbell bench press 2×8 at 60 kg, 6 at 60 kg", id="bench 3x8 60 last set 6"
        ),
        pytest.param(
            "bench 3x8 60, last one only 5",
            "barbell bench press 2×8 at 60 kg, 5 at 60 kg",
            id="bench 3x8 60, last one only 5",
        ),
        pytest.param(
            "squat 5x5 100 but only got 4 on the last",
            "barbell back squat 4×5 at 100 kg, 4 at 100 kg",
            id="squat 5x5 100 but only got 4 on the last",
        ),
        pytest.param(
            "squat 5x5 100, fourth set only 3",
            "barbell back squat 3×5 at 100 kg, 3 at 100 kg, 5 at 100 kg",
            id="squat 5x5 100, fourth set only 3",
        ),
        pytest.param(
            "squat 5x5 100, last set @9",
            "barbell back squat 4×5 at 100 kg, 5 at 100 kg RPE 9",
            id="squat 5x5 100, last set @9",
        ),
        pytest.param(
            "ohp 3x8 40, 1 rir on the last set",
            "barbell overhead press 2×8 at 40 kg, 8 at 40 kg 1 in reserve",
            id="ohp 3x8 40, 1 rir on the last set",
        ),
        pytest.param("bench 85 x 5+ -> 8 reps", "barbell bench press 8 at 85 kg", id="bench 85 x 5+ -> 8 reps"),
        pytest.param(
            "leg press 3x12 @ 150 -> 12, 11, 9",
            "leg press 12 at 150 kg, 11 at 150 kg, 9 at 150 kg",
            id="leg press 3x12 @ 150 -> 12, 11, 9",
        ),
        pytest.param(
            "bench 3x8 @ 70: 8/8/6", "barbell bench press 2×8 at 70 kg, 6 at 70 kg", id="bench 3x8 @ 70: 8/8/6"
        ),
        pytest.param("squat 80x2 missed the second", "barbell back squat 1 at 80 kg missed", id="the second is a rep"),
        pytest.param("squat 80x2 missed the second rep", "barbell back squat 1 at 80 kg missed", id="the second rep"),
        pytest.param(
            "missed the last rep of squat 80x5",
            "barbell back squat 4 at 80 kg missed",
            id="missed the last rep of squat 80x5",
        ),
        pytest.param(
            "failed the 3rd rep of squat 140x3",
            "barbell back squat 2 at 140 kg missed",
            id="failed the 3rd rep of squat 140x3",
        ),
        pytest.param(
            "bench 90x3, 95x1 then failed 95",
            "barbell bench press 3 at 90 kg, 1 at 95 kg, 0 at 95 kg missed",
            id="bench 90x3, 95x1 then failed 95",
        ),
        pytest.param(
            "hip thrust 4x8 80, 90, 100, 110",
            "barbell hip thrust 8 at 80 kg, 8 at 90 kg, 8 at 100 kg, 8 at 110 kg",
            id="hip thrust 4x8 80, 90, 100, 110",
        ),
    ],
)
def test_one_set_of_a_group_may_differ(text: str, meant: str) -> None:
    assert said(text) == meant
