"""Hours and lengths of sessions beside the sets, and times that are sets."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said

SQUAT = "barbell back squat 3×5 at 95 kg"


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x5 95 at 17:45",
        "17:45 squat 3x5 95",
        "at 17:45: squat 3x5 95",
        "17h45 squat 3x5 95",
        "um 17:45 uhr kniebeuge 3x5 95",
        "6am session: squat 3x5 95",
        "trained 1h20: squat 3x5 95",
        "squat 3x5 95 (50 min total)",
        "squat 3x5 95 (50 min)",
        "squat 3x5 95, 1h20 in total",
        "squat 3x5 95, 1:20h",
        "squat 3x5 95, session took 50 min",
        "squat 3x5 95, total time 50 min",
        "kniebeuge 3x5 95, dauer 50 min",
        "i only had 25 min so just squats, 95, 3x5",
        "after a 4k run, squat 3x5 95",
    ],
)
def test_the_hour_and_the_length_of_a_session_are_no_sets(text: str) -> None:
    assert said(text) == SQUAT


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("plank 1:20", "plank 80 s"),
        ("4:30 plank", "plank 270 s"),
        ("plank 3x 1:20", "plank 3×80 s"),
        ("plank for a minute, twice", "plank 2×60 s"),
        ("plank a minute and a half", "plank 90 s"),
        ("plank eine minute, zweimal", "plank 2×60 s"),
    ],
)
def test_a_hold_is_a_set(text: str, meant: str) -> None:
    assert said(text) == meant


def test_a_time_with_no_word_to_it_is_asked() -> None:
    assert said("squat 3x5 95, 50 min") == f"ask: {SQUAT}"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("dips 9 8 8 at 81kg bodyweight", "dip 9, 2×8"),
        ("pull ups 9 8 8 bodyweight 81", "pull-up 9, 2×8"),
        ("klimmzüge 9 8 8 bei 81 kg körpergewicht", "pull-up 9, 2×8"),
        ("dominadas 9 8 8 con 81 kg de peso corporal", "pull-up 9, 2×8"),
        ("push ups 45 bodyweight", "push-up 45"),
    ],
)
def test_what_somebody_weighs_is_no_load_of_a_set(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x5 95, elbow pain 2 out of 10",
        "squat 3x5 95, pain 3 out of 10 in the knee",
        "squat 3x5 95, knee 2 of 10",
    ],
)
def test_a_scale_in_words(text: str) -> None:
    assert said(text) == f"{SQUAT}, pain"


@pytest.mark.parametrize("hour", ["7 pm", "at 7 pm", "7 am", "at 7pm", "took 1 hr", "took 1 h 10"])
def test_an_hour_behind_a_space_is_no_set(hour):
    assert said(f"pull ups 10 8 7, {hour}") == "pull-up 10, 8, 7"
    assert said(f"bench 80x8 {hour}") == "barbell bench press 8 at 80 kg"


def test_the_german_word_ahead_of_a_day_is_no_half_of_one():
    assert said("klimmzüge 10 8 7 am montag") == "pull-up 10, 8, 7 on 2025-03-10"


def test_the_rate_of_the_heart_is_no_hour():
    assert said("bench 100 5 4 3 hr 150") == "barbell bench press 5 at 100 kg, 4 at 100 kg, 3 at 100 kg"


@pytest.mark.parametrize("remark", ["session 12", "workout 5", "i'm 40 now", "200 g of rice", "5 g creatine", "hrv 65"])
def test_what_else_is_counted_beside_sets_is_no_set(remark):
    assert said(f"pull ups 10 8 7, {remark}") == "pull-up 10, 8, 7"
    assert said(f"incline db press 30s x 10, {remark}") == "incline dumbbell bench press 10 at 30 kg each"
