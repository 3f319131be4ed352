"""Numbers in brackets that may be efforts: asked with that reading too, and answered by a word or by its number."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said, standing_after


@pytest.mark.parametrize(
    ("text", "rated"),
    [
        ("bench 80x8 (8) 80x8 (9)", "8 at 80 kg RPE 8, 8 at 80 kg RPE 9"),
        ("bench 3x8 80 (8)", "3×8 at 80 kg RPE 8"),
        ("bench 80 8(7) 8(8) 7(9)", "8 at 80 kg RPE 7, 8 at 80 kg RPE 8, 7 at 80 kg RPE 9"),
        ("bench 3x5 100 (7, 8, 9)", "5 at 100 kg RPE 7, 5 at 100 kg RPE 8, 5 at 100 kg RPE 9"),
        ("bench 80x8 (8) 80x8 (9) 80x6", "8 at 80 kg RPE 8, 8 at 80 kg RPE 9, 6 at 80 kg"),
    ],
)
def test_the_effort_is_one_of_the_readings(text, rated):
    assert f"barbell bench press {rated}" in said(text).removeprefix("ask: ").split(" | ")


@pytest.mark.parametrize("text", ["bench 80x5 (4)", "bench 3x8 80 (12)", "bench 80x8 (@8)", "bench 80x5 (3) 80x5 (9)"])
def test_no_other_number_becomes_an_effort(text):
    assert "RPE 4" not in said(text)
    assert "RPE 12" not in said(text)
    assert " | " not in said(text) or "RPE 9" not in said(text)


@pytest.mark.parametrize(
    ("answer", "standing"),
    [
        ("rpe", "barbell back squat 5 at 100 kg RPE 9"),
        ("thats rpe", "barbell back squat 5 at 100 kg RPE 9"),
        ("rpe 9", "barbell back squat 5 at 100 kg RPE 9"),
        ("the 9 is effort", "barbell back squat 5 at 100 kg RPE 9"),
        ("1", "barbell back squat 5 at 100 kg RPE 9"),
        ("2", "barbell back squat 5 at 100 kg, 9 at 100 kg"),
        ("2 sets", "barbell back squat 5 at 100 kg, 9 at 100 kg"),
        ("rpe 7", ""),
        ("3", ""),
    ],
)
def test_the_answer_picks_the_reading_it_names_or_none(answer, standing):
    assert standing_after(f"squat 100x5 (9) | {answer}") == standing


@pytest.mark.parametrize(("answer", "standing"), [("1", "5×3"), ("2", "3×5"), ("3", "5×3"), ("option 2", "3×5")])
def test_a_number_that_is_in_one_reading_or_shown_beside_it_picks_it(answer, standing):
    assert standing_after(f"squat 100x3x5 | {answer}") == f"barbell back squat {standing} at 100 kg"
