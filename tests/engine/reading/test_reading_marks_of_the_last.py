"""What is told of the last sets of a group, of each of several loads, and of a group counted behind its first set."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said, situation

PLAIN = situation()


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x8 100 to failure on the last",
        "squat 3x8 100, to failure on the last set",
        "squat 3x8 at 100, failure on the last one",
        "squat 100 3x8 to failure for the last set",
        "Kniebeuge 3x8 100 bis zum versagen beim letzten satz",
    ],
)
def test_failure_on_the_last_set_is_of_that_set_alone(text: str) -> None:
    assert said(text, PLAIN) == "barbell back squat 2×8 at 100 kg, 8 at 100 kg to failure"


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x8 100 straps on last two",
        "squat 3x8 100 straps for the last 2",
        "squat 3x8 100, belt on for the last",
        "squat 3x8 100 belt for the last set",
        "squat 3x8 100, grindy for the last one",
        "squat 3x8 100 hard on the last two",
    ],
)
def test_what_some_of_the_last_sets_were_like_changes_no_set(text: str) -> None:
    assert said(text, PLAIN) == "barbell back squat 3×8 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x8 100 to failure on the last two",
        "squat 3x8 100 rpe 9 on the last two",
        "squat 3x8 100, easy, last two",
        "squat 3x8 100, drop on the last 2",
    ],
)
def test_marks_of_several_last_sets_are_asked(text: str) -> None:
    assert said(text, PLAIN).startswith("ask")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param(
            "deadlift (110,120,130)x3 @6 @7 @8",
            "conventional deadlift 3 at 110 kg RPE 6, 3 at 120 kg RPE 7, 3 at 130 kg RPE 8",
            id="loads in brackets",
        ),
        pytest.param(
            "squat 5x100, 5x110, 5x120 @7 @8 @9",
            "barbell back squat 5 at 100 kg RPE 7, 5 at 110 kg RPE 8, 5 at 120 kg RPE 9",
            id="reps first",
        ),
        pytest.param(
            "bench 4x80 4x85 @8 @9",
            "barbell bench press 4 at 80 kg RPE 8, 4 at 85 kg RPE 9",
            id="two of them",
        ),
    ],
)
def test_as_many_efforts_as_loads_are_one_each(text: str, meant: str) -> None:
    assert said(text, PLAIN) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("deadlift 130x5 (2 sets of 5)", "conventional deadlift 2×5 at 130 kg"),
        ("deadlift 130 3x5 (3 sets of 5)", "conventional deadlift 3×5 at 130 kg"),
        ("bench 80x8 (all 3 sets of 8)", "barbell bench press 3×8 at 80 kg"),
        ("bench 80x8 (3 Sätze zu je 8), danach Klimmzüge 8 7", "barbell bench press 3×8 at 80 kg; pull-up 8, 7"),
        ("did 3 lots of 12 on the squat with 82.5", "barbell back squat 3×12 at 82.5 kg"),
    ],
)
def test_a_group_counted_in_brackets_behind_one_set_is_that_group(text: str, meant: str) -> None:
    assert said(text, PLAIN) == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("ohp 30x8,8", "barbell overhead press 2×8 at 30 kg"),
        ("z press 25x10,9,8", "z press 10 at 25 kg, 9 at 25 kg, 8 at 25 kg"),
        ("db curl 20x10,8", "dumbbell curl 10 at 20 kg each, 8 at 20 kg each"),
    ],
)
def test_a_load_that_is_no_count_of_sets_heads_a_list(text: str, meant: str) -> None:
    assert said(text, PLAIN) == meant


def test_small_numbers_ahead_of_a_list_stay_open() -> None:
    assert said("lateral raise 12x15,15", PLAIN).startswith("ask")


def test_a_group_behind_a_result_has_its_own_load() -> None:
    assert said("squat 115x5+ got 9, then 5x10 70", PLAIN) == "barbell back squat 9 at 115 kg, 5×10 at 70 kg"
