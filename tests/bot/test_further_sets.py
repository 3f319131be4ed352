"""A set more of a lift whose planned sets are in: it is of that lift, or asked about where it may be of the next."""

from __future__ import annotations

import pytest

from tests.bot.chatting import said

TWO_LIFTS = """plan: two lifts, 4 weeks
day mon: both
barbell back squat 3x5 at 90 kg, then +2.5 kg
barbell overhead press 3x6 at 40 kg, then +2.5 kg"""
SQUAT, PRESS = "barbell back squat", "barbell overhead press"


@pytest.fixture
def done(chats):
    """All squats of the plan are in; the press is next."""
    chats.says("ana", "/start", "London", "kg", TWO_LIFTS, "squat 3x5 90")
    return chats


@pytest.mark.parametrize(
    ("told", "kept"),
    [
        ("another 5", (SQUAT, 5, "90 kg")),
        ("+10 for 3", (SQUAT, 3, "100 kg")),
        ("-20 for 8", (SQUAT, 8, "70 kg")),
        ("6", (PRESS, 6, "40 kg")),
        ("40x6", (PRESS, 6, "40 kg")),
    ],
)
def test_more_on_top_is_of_the_lift_just_done(done, told, kept):
    done.says("ana", told)

    assert done.log("ana")[3:] == [kept]


@pytest.mark.parametrize("told", ["another 5 at 40", "another set, 5 at 42.5"])
def test_another_at_a_load_of_the_next_lift_is_asked_about(done, told):
    out = done.says("ana", told)

    assert "Not saved yet" in said(out)
    assert len(done.log("ana")) == 3


def test_another_of_a_lift_that_was_named_is_of_it(done):
    done.says("ana", "ohp", "another 6")

    assert done.log("ana")[3:] == [(PRESS, 6, "40 kg")]


def test_a_change_of_load_behind_another_name_is_asked_about(done):
    out = done.says("ana", "ohp", "+10 for 3")

    assert "Not saved yet" in said(out)
    assert len(done.log("ana")) == 3


@pytest.mark.parametrize("words", ["add 5", "added 5", "plus 5", "add 10", "up 5"])
def test_a_step_of_plates_alone_is_asked_about(chats, words):
    chats.says("ana", "/start", "skip", "kg", "bench 60x8", words)

    assert chats.log("ana") == [("barbell bench press", 8, "60 kg")]


@pytest.mark.parametrize(("sets", "words", "reps"), [("60x8", "add 7", 7), ("60x8", "add 8", 8), ("60x5", "add 5", 5)])
def test_reps_that_are_no_step_of_plates_are_one_more_set(chats, sets, words, reps):
    chats.says("ana", "/start", "skip", "kg", f"bench {sets}", words)

    assert chats.log("ana")[1:] == [("barbell bench press", reps, "60 kg")]
