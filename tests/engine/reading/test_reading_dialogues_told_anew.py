"""What was said is taken back and told anew, by parts, by the load it was at, or with praise around it."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        deadlift 3x5 150 | scratch that, it was 2 sets => conventional deadlift 2×5 at 150 kg
        deadlift 3x5 150 | scratch that, only 2 sets => conventional deadlift 2×5 at 150 kg
        deadlift 3x5 150 | ignore that, it was 4 sets => conventional deadlift 4×5 at 150 kg
        deadlift 3x5 150 | delete that, was 145 => conventional deadlift 3×5 at 145 kg
        deadlift 3x5 150 | forget that, make it 145 => conventional deadlift 3×5 at 145 kg
        deadlift 3x5 150 | scratch 2 sets => conventional deadlift 5 at 150 kg
        deadlift 3x5 150 | scratch that, last one was 4 => conventional deadlift 2×5 at 150 kg, 4 at 150 kg
    """),
)
def test_what_stands_behind_words_that_take_back_is_told_instead(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        squat 5x5 100 | first three 5, then 4 and 3 => barbell back squat 3×5 at 100 kg, 4 at 100 kg, 3 at 100 kg
        squat 5x5 100 | first three were 5, then 4 and 3 => barbell back squat 3×5 at 100 kg, 4 at 100 kg, 3 at 100 kg
        squat 5x5 100 | first three were 5, then 4 => barbell back squat 5×5 at 100 kg
        hack squat 80 8 8 7 6 | first two 9 then 7 and 5 => hack squat 2×9 at 80 kg, 7 at 80 kg, 5 at 80 kg
        hack squat 80 8 8 7 6 | first two were 82.5, last two 80 => hack squat 2×8 at 82.5 kg, 7 at 80 kg, 6 at 80 kg
        hack squat 150x5 | 155x5 | 160x5 | on the 155 i got 4 => hack squat 5 at 150 kg, 4 at 155 kg, 5 at 160 kg
        hack squat 150x5 | 155x5 | 160x5 | only got 4 on the 155 => hack squat 5 at 150 kg, 4 at 155 kg, 5 at 160 kg
        hack squat 150x5 | 155x5 | 160x5 | got 4 at 155 => hack squat 5 at 150 kg, 5 at 155 kg, 5 at 160 kg, 4 at 155 kg
        hack squat 150x5 | 155x5 | the one before the last was 4 => hack squat 4 at 150 kg, 5 at 155 kg
        hack squat 150x5 | 155x5 | set before that was only 4 => hack squat 4 at 150 kg, 5 at 155 kg
    """),
)
def test_parts_and_loads_point_at_sets_that_stand(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        deadlift 3x5 150 @8 | last was a 9 => conventional deadlift 2×5 at 150 kg RPE 8, 5 at 150 kg RPE 9
        deadlift 3x5 150 @8 | last was a 4 => conventional deadlift 2×5 at 150 kg RPE 8, 4 at 150 kg RPE 8
        deadlift 3x5 150 @8 | rpe was more like 9 => conventional deadlift 3×5 at 150 kg RPE 9
        deadlift 3x5 150 @8 | rpe was closer to 9.5 => conventional deadlift 3×5 at 150 kg RPE 9.5
        db curl 3x12 12 | they were 14s not 12 => dumbbell curl 3×12 at 14 kg each
        deadlift 3x5 150 | cheers mate but it was 152.5 => conventional deadlift 3×5 at 152.5 kg
        deadlift 3x5 150 | just realised it was 160 => conventional deadlift 3×5 at 160 kg
        deadlift 3x5 150 | quick fix: 4 sets => conventional deadlift 4×5 at 150 kg
        hack squat 150x5 | 155x5 | the first was 145, had smaller plates on => hack squat 5 at 145 kg, 5 at 155 kg
    """),
)
def test_efforts_and_chatter_beside_a_correction(told: str, standing: str) -> None:
    assert standing_after(told) == standing
