"""What a set had, told later: reps of the one pointed at, and an effort for each single set of a row."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, log_after, standing_after

SINGLES = ("bench 60x8", "62.5x8", "65x6")


@pytest.mark.parametrize("words", ["second had 7 reps", "second one had 7", "the second had 7", "set 2 had 7 reps"])
def test_reps_that_a_set_had_are_its_own_and_no_set_more(words: str) -> None:
    assert log_after(*SINGLES, words) == "barbell bench press 8 at 60 kg, 7 at 62.5 kg, 6 at 65 kg"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
bench 3x8 60 | the last set had 7 => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 3x8 60 | second had 7 reps => barbell bench press 8 at 60 kg, 7 at 60 kg, 8 at 60 kg
bench 3x8 60 | the last set had 2 left => barbell bench press 2×8 at 60 kg, 8 at 60 kg 2 in reserve
"""),
)
def test_of_sets_told_together_too(told: str, standing: str) -> None:
    assert log_after(*told.split(" | ")) == standing


@pytest.mark.parametrize("words", ["rpe 7 8 9", "rpe was 7 8 9", "rpes 7, 8, 9"])
def test_as_many_efforts_as_single_sets_are_one_each(words: str) -> None:
    assert log_after(*SINGLES, words) == ("barbell bench press 8 at 60 kg RPE 7, 8 at 62.5 kg RPE 8, 6 at 65 kg RPE 9")


USED = """
db bench 3x8 26s | used the 24s => dumbbell bench press 3×8 at 24 kg each
db bench 3x8 26s | i used 24s => dumbbell bench press 3×8 at 24 kg each
db bench 3x8 26s | we used the 28s actually => dumbbell bench press 3×8 at 28 kg each
db bench 3x8 26s | grabbed the 24s => dumbbell bench press 3×8 at 26 kg each
db bench 3x8 26s | used the 24s to warm up => dumbbell bench press 3×8 at 26 kg each
bench 3x8 60 | used the 24s => barbell bench press 3×8 at 60 kg
db bench 3x8 26s | used the 60s => dumbbell bench press 3×8 at 26 kg each
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(USED))
def test_dumbbells_that_were_used_are_the_load(told, standing):
    assert standing_after(told) == standing
