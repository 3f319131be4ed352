"""Which of so many sets: "2nd of 3" tells how far she is, and "first of three at 90" which one is put right.

Common practice, no source.
"""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

PUT_RIGHT = """
squat 3x5 100 | first of three at 90 => barbell back squat 5 at 90 kg, 2×5 at 100 kg
squat 3x5 100 | second of three only 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
bench 3x8 60 | last of 3 was 6 => barbell bench press 2×8 at 60 kg, 6 at 60 kg
bench 3x8 60 | set 2 of 3 was 7 => barbell bench press 8 at 60 kg, 7 at 60 kg, 8 at 60 kg
bench 3x8 60 | set 2 of 3: 7 => barbell bench press 8 at 60 kg, 7 at 60 kg, 8 at 60 kg
bench 3x8 60 | first two of three at 55 => barbell bench press 2×8 at 55 kg, 8 at 60 kg
row machine 3x10 50 | last 2 of 3 were 9 => machine row 10 at 50 kg, 2×9 at 50 kg
bench 3x8 60 | 2nd out of 3 was to failure => barbell bench press 8 at 60 kg, 8 at 60 kg to failure, 8 at 60 kg
kniebeuge 3x5 100 | der 2. von 3 war 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
sentadilla 3x5 100 | la primera de 3 a 90 => barbell back squat 5 at 90 kg, 2×5 at 100 kg
squat 100x5 | 2nd of 3 100x4 => barbell back squat 5 at 100 kg, 4 at 100 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(PUT_RIGHT))
def test_the_set_that_is_one_of_so_many_is_put_right(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    "told",
    [
        "2nd of 3", "1st of 3", "first of three", "last of 3", "set 1 of 3", "set 2 of 3 done",
        "thats the first of 3", "2. von 3", "2 of 3", "1 of 3", "2/3", "1/3", "first 2 at 90", "first 2 @ 90",
        "first 3 were 90", "die ersten 2 mit 90", "only did 2", "i only did 4", "just did 3",
    ],
)  # fmt: skip
def test_how_far_she_is_and_more_sets_than_stand_change_and_add_nothing(told):
    assert standing_after(f"squat 100x5 | {told}") == "barbell back squat 5 at 100 kg"


@pytest.mark.parametrize("told", ["only did 2", "just did 2"])
def test_as_many_as_stand_add_no_set_of_two(told):
    assert standing_after(f"squat 2x5 100 | {told}") == "barbell back squat 2×5 at 100 kg"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues(
        """
squat 3x5 100 | first 2 at 90 => barbell back squat 2×5 at 90 kg, 5 at 100 kg
squat 2x5 100 | first 8 at 90 => barbell back squat 8 at 90 kg, 5 at 100 kg
squat 2x5 100 | first one 4 at 90 => barbell back squat 4 at 90 kg, 5 at 100 kg
squat 100x5 | 5/4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5 | 3 of 8 => barbell back squat 5 at 100 kg, 3×8 at 100 kg
squat 100x5 | only got 2 => barbell back squat 5 at 100 kg, 2 at 100 kg
squat 3x5 100 | only did 2 => barbell back squat 2×5 at 100 kg
"""
    ),
)
def test_what_is_told_in_full_counts_as_before(told, standing):
    assert standing_after(told) == standing
