"""How often what stands was done, and of each lift: counts of sets, and no new set of so few reps."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, log_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
squat 100x5 | did that 3 times => barbell back squat 3×5 at 100 kg
squat 100x5 | did it three times => barbell back squat 3×5 at 100 kg
squat 100x5 | i did it 3x => barbell back squat 3×5 at 100 kg
squat 100x5 | 3 times => barbell back squat 3×5 at 100 kg
squat 100x5 | that x3 => barbell back squat 3×5 at 100 kg
squat 100x5 | thats x3 => barbell back squat 3×5 at 100 kg
squat 100x5 | 3 sets of that => barbell back squat 3×5 at 100 kg
squat 100x5 | for 3 sets => barbell back squat 3×5 at 100 kg
squat 100x5 | did 3 sets => barbell back squat 3×5 at 100 kg
squat 100x5 | 3 séries => barbell back squat 3×5 at 100 kg
squat 3x5 100 | did 4 sets => barbell back squat 4×5 at 100 kg
squat 100x5 | 5 | 5 | did that 4 times => barbell back squat 4×5 at 100 kg
plank 60s | 3 times => plank 3×60 s
"""),
)
def test_so_many_of_them_stand_then(told: str, standing: str) -> None:
    assert log_after(*told.split(" | ")) == standing


@pytest.mark.parametrize("words", ["3 sets", "did that 3 times", "thats 3 now", "3 sets done", "das sind jetzt 3"])
def test_as_many_as_stand_changes_nothing(words: str) -> None:
    assert log_after("squat 100x5", "same", "same", words) == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize("words", ["one rep less", "1 rep fewer", "one less rep", "one more rep", "2 reps fewer"])
def test_reps_apart_are_no_set_of_so_few(words: str) -> None:
    assert log_after("squat 100x5", words) == "barbell back squat 5 at 100 kg"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
squat 100x5 | x3 => barbell back squat 4×5 at 100 kg
squat 100x5 | another 3 sets => barbell back squat 4×5 at 100 kg
squat 100x5 | 5 reps => barbell back squat 2×5 at 100 kg
squat 100x5 | minus a rep => barbell back squat 4 at 100 kg
"""),
)
def test_more_of_them_and_reps_are_read_as_before(told: str, standing: str) -> None:
    assert log_after(*told.split(" | ")) == standing


@pytest.mark.parametrize("words", ["only did 2 sets of each", "only did 2 of each", "only 2 sets of each"])
def test_a_count_of_each_reaches_each_lift(words: str) -> None:
    told = log_after("bench 3x5 80\nsquat 3x5 100", words).replace("; ", ", ")

    assert told == "barbell bench press 2×5 at 80 kg, barbell back squat 2×5 at 100 kg"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
bench 3x5 80 | bench 3x5 82.5 not 80 => barbell bench press 3×5 at 82.5 kg
bench 3x5 80 | 3x5 at 82.5 not 80 => barbell bench press 3×5 at 82.5 kg
bench 3x5 80 | 3x6 not 3x5 => barbell bench press 3×6 at 80 kg
"""),
)
def test_sets_told_again_with_a_load_and_the_old_one(told: str, standing: str) -> None:
    assert log_after(*told.split(" | ")) == standing
