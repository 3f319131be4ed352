"""Loads of several lifts with their reps behind, two sides so many times, and ladders told by their ends."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize("text", ["squat/bench/dl 100/80/140 x5", "squat, bench, dl 100/80/140 x5"])
def test_loads_behind_as_many_lifts_are_one_each(text) -> None:
    lifts = "barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg; conventional deadlift 5 at 140 kg"
    assert said(text) == lifts


@pytest.mark.parametrize(
    "text",
    [
        "db row 30 10L 10R x3",
        "db row 30 kg 10L 10R x3",
        "kb snatch 24 10L 10R x5",
        "db row 30 kg 10 left, 10 right, x3",
        "10 to 1 ladder push ups",
        "push ups 10 down to 1",
        "pull up ladder 1-5",
    ],
)
def test_sides_repeated_and_ladders_are_asked(text) -> None:
    assert said(text).startswith("ask:")


def test_a_drop_of_the_body_is_one() -> None:
    assert said("push ups 12 drop 8") == "push-up 12, 8 drop"
