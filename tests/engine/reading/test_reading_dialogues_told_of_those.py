"""How many of those it was, which two go, and the last rep that was missed. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

OF_THOSE = """
squat 3x5 100 | did 4 of em => barbell back squat 4×5 at 100 kg
squat 3x5 100 | did 4 of those => barbell back squat 4×5 at 100 kg
bench 2x8 60 | i did 5 of them => barbell bench press 5×8 at 60 kg
squat 100x5 | did 3 of those => barbell back squat 3×5 at 100 kg
squat 3x5 100 | did 3 of those => barbell back squat 3×5 at 100 kg
squat 3x5 100 | only did 2 of them => barbell back squat 2×5 at 100 kg
"""

GONE = """
squat 4x6 80 | delete set 2 and 3 => barbell back squat 2×6 at 80 kg
bench 60 8 7 6 5 | remove set 1 and 4 => barbell bench press 7 at 60 kg, 6 at 60 kg
squat 4x6 80 | set 1 and 2 were 5 => barbell back squat 2×5 at 80 kg, 2×6 at 80 kg
squat 4x6 80 | set 2, 5 => barbell back squat 6 at 80 kg, 5 at 80 kg, 2×6 at 80 kg
"""

MISSED = """
squat 100x5 | missed the last rep => barbell back squat 4 at 100 kg missed
squat 3x5 100 | failed the last rep => barbell back squat 2×5 at 100 kg, 4 at 100 kg missed
bench 80x3 | last rep failed => barbell bench press 2 at 80 kg missed
deadlift 180x1 | missed the last rep => conventional deadlift 0 at 180 kg missed
squat 3x5 100 | nearly missed the last rep => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(OF_THOSE))
def test_so_many_of_those_are_sets_and_no_reps(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(GONE))
def test_two_sets_are_named_by_one_word(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(MISSED))
def test_the_last_rep_that_was_missed_was_not_made(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    "told", ["bar speed was good on 2", "form was bad on 3", "depth was good on 2 of them", "speed was good on the 3"]
)
def test_how_some_of_the_sets_were_is_no_load_and_no_reps(told):
    assert standing_after(f"squat 3x5 100 | {told}") == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "told",
    [
        "first two had a belt", "first 2 had straps", "last two had a pause", "first two without belt",
        "last two felt better", "first 2 no belt", "the first two were beltless",
    ],
)  # fmt: skip
def test_what_several_sets_were_like_adds_no_set_of_two(told):
    assert standing_after(f"squat 3x5 100 | {told}") == "barbell back squat 3×5 at 100 kg"


LOAD_BEHIND = """
squat 5x5 | 80 => barbell back squat 5×5 at 80 kg
squat 5x5 | at 80 => barbell back squat 5×5 at 80 kg
dumbbell curl 3x10 | 12kg => dumbbell curl 3×10 at 12 kg each
dumbbell curl 3x10 | 9 => dumbbell curl 3×10, 9
squat 5x5 | 80x5 => barbell back squat 5×5, 5 at 80 kg
squat 5x5 100 | 110 => barbell back squat 5×5 at 100 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(LOAD_BEHIND))
def test_a_load_told_behind_sets_without_one_is_theirs(told, standing):
    assert standing_after(told) == standing
