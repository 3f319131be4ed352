"""A load told between the reps and the count of their sets."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("bench 8 reps @ 80 x 3 sets", "barbell bench press 3×8 at 80 kg"),
        ("bench 8 reps at 80 x 3", "barbell bench press 3×8 at 80 kg"),
        ("bench 8 reps at 80kg x 3 sets", "barbell bench press 3×8 at 80 kg"),
        ("bench 8 reps 80kg x 3 sets, last one hard", "barbell bench press 3×8 at 80 kg"),
        ("dips 8 reps @ 20 x 3 sets", "dip 3×8 at +20 kg"),
        ("squat 5 reps @ 100 x 3, 5 reps @ 90 x 2", "barbell back squat 3×5 at 100 kg, 2×5 at 90 kg"),
        ("kniebeuge 8 wdh mit 80 kg x 3", "barbell back squat 3×8 at 80 kg"),
        ("sentadilla 8 reps con 80 kg x 3 series", "barbell back squat 3×8 at 80 kg"),
        ("bench 8 reps x 80kg x 3 sets", "barbell bench press 3×8 at 80 kg"),
        ("bench 10 reps at 60, 8 reps at 70 x 2", "barbell bench press 10 at 60 kg, 2×8 at 70 kg"),
    ],
)
def test_the_count_behind_it_is_of_the_sets(text: str, sets: str) -> None:
    assert said(text) == sets


@pytest.mark.parametrize("text", ["bench 3 x 8 reps @ 80 x 3", "lat raise 15 reps @ 8 x 3 sets"])
def test_where_more_than_one_number_may_count_sets_it_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")
