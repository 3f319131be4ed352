"""Another lift or equipment told with its load, places with their numbers and no comma, and one more with chat."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, log_after, standing_after

AT_ITS_LOAD = """
bench 3x8 60 | those were dumbbells, 28 each => dumbbell bench press 3×8 at 28 kg each
bench 3x8 60 | those were db, 28s => dumbbell bench press 3×8 at 28 kg each
bench 3x8 60 | it was dumbbells at 28 => dumbbell bench press 3×8 at 28 kg each
bench 3x8 60 | sorry that was dumbbell bench 28 each => dumbbell bench press 3×8 at 28 kg each
bench 3x8 60 | that was incline at 55 => incline barbell bench press 3×8 at 55 kg
bench 60x8 | that was incline db, 24s => incline dumbbell bench press 8 at 24 kg each
squat 100x5 | that was front squat, 80 => barbell front squat 5 at 80 kg
bench 3x8 60 | that was incline, 3x10 => incline barbell bench press 3×10 at 60 kg
bench 3x8 60 | those were dumbbells => dumbbell bench press 3×8 at 60 kg each
"""

OPEN = ("db, 28 each", "that was front squat, 8", "it was db, 12")

PLACES = """
bench 80 8 7 6 | first two were 8 last one 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 7 6 | set 1 was 7 set 2 was 6 => barbell bench press 7 at 80 kg, 2×6 at 80 kg
bench 80 8 7 6 | did 5 on the last one => barbell bench press 8 at 80 kg, 7 at 80 kg, 5 at 80 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(AT_ITS_LOAD))
def test_the_sets_get_the_other_name_and_its_load(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize("told", OPEN)
def test_a_number_that_may_be_reps_or_load_changes_nothing_and_adds_nothing(told):
    assert standing_after(f"bench 3x8 60 | {told}") == "barbell bench press 3×8 at 60 kg"


@pytest.mark.parametrize(("told", "standing"), dialogues(PLACES))
def test_each_place_gets_its_number(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize("told", ["one more actually", "one more set lol", "oh and one more", "one more tho"])
def test_one_more_is_one_more_in_any_words(told):
    assert log_after("bench 3x8 60", told) == "barbell bench press 4×8 at 60 kg"
