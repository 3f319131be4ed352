"""Words that may be of a set that stands or of one more put right what is sure, and change nothing where it is open."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        squat 5x5 100 | first two as planned, only got 3 => barbell back squat 5×5 at 100 kg
        squat 5x5 100 | first two easy, only 3 after that => barbell back squat 5×5 at 100 kg
        squat 5x5 100 | first four fine then 3 => barbell back squat 4×5 at 100 kg, 3 at 100 kg
        kniebeuge 5x5 100 | die ersten vier gut, dann nur 3 => barbell back squat 4×5 at 100 kg, 3 at 100 kg
        squat 5x5 100 | les quatre premières bien, puis 3 => barbell back squat 4×5 at 100 kg, 3 at 100 kg
        squat 100x5 | failed set was 110x1 => barbell back squat 5 at 100 kg
        squat 100x5 | the fail was at 110 => barbell back squat 5 at 100 kg
        squat 100x5 | my top set was 110x1 => barbell back squat 5 at 100 kg
        squat 100x5 | 100x6 | previous was 7 => barbell back squat 5 at 100 kg, 6 at 100 kg
        bench 3x8 80 | all 5 reps to failure => barbell bench press 3×8 at 80 kg
        bench 3x8 80 | all 8 reps easy => barbell bench press 3×8 at 80 kg
        bench 3x8 80 | last set 7 + 1 => barbell bench press 3×8 at 80 kg
        push press 55x6 | only got 5 reps on that one => push press 5 at 55 kg
        push press 3x6 55 | only got 5 reps there => push press 3×6 at 55 kg
        push press 55x6 | da nur 5 geschafft => push press 5 at 55 kg
        push press 55x6 | only got 5 this time => push press 6 at 55 kg, 5 at 55 kg
    """),
)
def test_what_may_be_of_one_set_more_puts_right_only_what_is_sure(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        squat 100x5 | hmm maybe 7 => barbell back squat 5 at 100 kg
        squat 100x5 | it was maybe 102.5 => barbell back squat 5 at 100 kg
        squat 100x5 | no, quizás 6 => barbell back squat 5 at 100 kg
        squat 100x5 | that was maybe rpe 9 => barbell back squat 5 at 100 kg RPE 9
        deadlift 140x3 | 150 at the meet => conventional deadlift 3 at 140 kg
        squat 100x5 | 8 reps yes => barbell back squat 5 at 100 kg
        goblet squat 3x10 20 | the 24 => goblet squat 3×10 at 20 kg
        bench 3x8 80 | remove the last one, only one happened => barbell bench press 3×8 at 80 kg
        bench 80x8 | take the last one off, only one happened => barbell bench press 8 at 80 kg
        bench 80x8 | scratch that, its for yesterday => barbell bench press 8 at 80 kg on 2025-03-13
    """),
)
def test_what_is_told_with_a_perhaps_or_of_something_else_changes_no_number(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        bench 80x8 | 8 | 7 | second one also 7 => barbell bench press 8 at 80 kg, 2×7 at 80 kg
        bench 80x8 | 8 | third one also 8 => barbell bench press 3×8 at 80 kg
        press banca 3x8 80 | la segunda también 7 => barbell bench press 8 at 80 kg, 7 at 80 kg, 8 at 80 kg
        bench 3x8 80 | the third was a bit less, 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
        bench 3x8 80 | the second felt awful, only 6 => barbell bench press 8 at 80 kg, 6 at 80 kg, 8 at 80 kg
        bench 3x8 80 | the last was hard, 7 => barbell bench press 3×8 at 80 kg
        bench 3x8 80 | log the last as 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
        squat 3x5 100 | number 2 was 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
        squat 3x5 100 | number 4 was 4 => barbell back squat 3×5 at 100 kg
        squat 2x5 100 | dip 8 | squat set 2: 4 => barbell back squat 5 at 100 kg, 4 at 100 kg; dip 8
        squat 3x5 100 | times 2 => barbell back squat 3×5 at 100 kg
        deadlift 3x5 140 | 4 on the last 2 => conventional deadlift 5 at 140 kg, 2×4 at 140 kg
        deadlift 3x5 140 | more like 6 5 4 => conventional deadlift 6 at 140 kg, 5 at 140 kg, 4 at 140 kg
        deadlift 3x5 140 | = 6 5 4 => conventional deadlift 6 at 140 kg, 5 at 140 kg, 4 at 140 kg
        deadlift 3x5 140 | grip went on the last, 4 => conventional deadlift 3×5 at 140 kg
        bench 80x8 | last was ugly, 7 => barbell bench press 8 at 80 kg, 7 at 80 kg
    """),
)
def test_a_place_that_stands_takes_its_reps_and_adds_no_set(told: str, standing: str) -> None:
    assert standing_after(told) == standing
