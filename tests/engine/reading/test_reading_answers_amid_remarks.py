"""A load put right in an answer, with a remark beside it."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    "answer",
    ["110 lol, one zero too many", "110 lol one zero too many", "110, extra zero", "i wish! 110", "i wish lol its 110",
     "too many zeros lol its 110", "110 haha, not that strong", "hahaha 110, keyboard slipped", "hell no 110",
     "110, eine null zu viel", "110 obvs, typing with sweaty hands", "typo - it was 110", "mate, 110"],
)  # fmt: skip
def test_a_load_one_digit_away_is_right_whatever_is_said_beside_it(answer: str) -> None:
    assert standing_after(f"squat 4x6 1100 | {answer}") == "barbell back squat 4×6 at 110 kg"


@pytest.mark.parametrize(
    "answer",
    ["not 110", "110 more than last time lol", "felt like 110", "coach says 110", "my mate did 110", "last one was 110",
     "will do 110 next time", "110 or 115", "90 lol, one zero too many", "one zero too many", "110 lol 5 sets tho"],
)  # fmt: skip
def test_a_number_that_is_of_something_else_leaves_it_open(answer: str) -> None:
    assert standing_after(f"squat 4x6 1100 | {answer}") == ""


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        squat 4x6 1100 | 110 at rpe 8 => barbell back squat 4×6 at 110 kg RPE 8
        bench 4x6 825 | 82.5 lol missed the decimal => barbell bench press 4×6 at 82.5 kg
        squat 3x5 500 | 150 lol, wrong key => barbell back squat 3×5 at 150 kg
    """),
)
def test_what_else_is_told_of_the_sets_goes_with_it(told: str, standing: str) -> None:
    assert standing_after(told) == standing
