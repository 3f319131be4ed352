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


@pytest.mark.parametrize(
    "text",
    [
        "push ups 10 to 1",
        "push ups 10-1",
        "push ups from 10 to 1",
        "push ups 10..1",
        "push ups 10 -> 1",
        "push ups 10 all the way to 1",
        "push ups 10 through 1",
        "push ups 10 down to 1",
        "push ups 10, 9, ... 1",
        "10 to 1 ladder push ups",
        "push ups 10 to 1 in 12 min",
        "liegestütze 10 bis 1",
        "flexiones 10 a 1",
        "pompes de 10 à 1",
        "flessioni da 10 a 1",
        "flexões de 10 a 1",
        "opdrukken 10 tot 1",
        "armhävningar 10 till 1",
        "pompki od 10 do 1",
        "отжимания от 10 до 1",
    ],
)
def test_ends_of_a_ladder_may_stand_for_all_its_rungs(text) -> None:
    told = said(text)

    assert told.startswith("ask:")
    assert "push-up 10, 9, 8, 7, 6, 5, 4, 3, 2, 1" in told


@pytest.mark.parametrize(
    ("text", "rungs"),
    [
        ("bench 60 5-1", "barbell bench press 5 at 60 kg, 4 at 60 kg, 3 at 60 kg, 2 at 60 kg, 1 at 60 kg"),
        ("squat 5 to 1 at 100", "barbell back squat 5 at 100 kg, 4 at 100 kg, 3 at 100 kg, 2 at 100 kg, 1 at 100 kg"),
        ("pull ups 1-5", "pull-up 1, 2, 3, 4, 5"),
        ("pull ups 1-4-1", "pull-up 1, 2, 3, 4, 3, 2, 1"),
        ("pull ups 4-1 x2", "pull-up 4, 3, 2, 1, 4, 3, 2, 1"),
        ("pull ups 2 4 6 ... 10", "pull-up 2, 4, 6, 8, 10"),
        ("push ups 12 to 2 by 2s", "push-up 12, 10, 8, 6, 4, 2"),
        ("dips 10 to 8", "dip 10, 9, 8"),
    ],
)
def test_ladders_may_rise_turn_and_skip(text, rungs) -> None:
    told = said(text)

    assert told.startswith("ask:")
    assert rungs in told


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("pull ups 12-8", "pull-up 12, 8"),
        ("bench 60 8-6", "barbell bench press 8 at 60 kg, 6 at 60 kg"),
        ("bench 60 8... 8... 6", "barbell bench press 2×8 at 60 kg, 6 at 60 kg"),
        ("bench 3x5 80 tempo 3-1-3", "barbell bench press 3×5 at 80 kg"),
        ("pull ups 3 2 1", "pull-up 3, 2, 1"),
    ],
)
def test_two_sets_and_ranges_are_no_ladders(text, meant) -> None:
    assert said(text) == meant


def test_a_drop_of_the_body_is_one() -> None:
    assert said("push ups 12 drop 8") == "push-up 12, 8 drop"
