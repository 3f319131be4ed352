"""A swap that comes too close to another day is offered with its caution before anything is changed."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import buttons, said

RUNNING = """plan: three days running, 4 weeks
day mon: pull
romanian deadlift 3x8 at 80 kg, +2.5 kg when all reps are made
day tue: knees
leg extension 3x12 at 40 kg, then +2.5 kg
barbell bench press 3x5 at 60 kg, then +2.5 kg
day wed: press
barbell overhead press 3x6 at 40 kg, then +2.5 kg"""
NORDIC = "swap leg extension for nordic curl"


@pytest.fixture
def tuesday(chats):
    """The day after three hard sets of Romanian deadlift."""
    chats.says("ana", "/start", "London", "kg", RUNNING, "rdl 3x8 80")
    chats.at += timedelta(days=1)
    return chats


def swaps(chats):
    return [(exercise, to) for _, _, exercise, to, _ in chats.standing("ana")["choices"]]


def test_the_caution_comes_before_the_swap(tuesday):
    out = tuesday.says("ana", NORDIC)

    assert "the day after romanian deadlift" in said(out)
    assert "Keep 2 reps in reserve on nordic curl, or take sissy squat" in said(out)
    assert list(buttons(out)) == ["Swap anyway", "Sissy squat", "Leave it"]
    assert swaps(tuesday) == []


def test_a_swap_without_a_caution_is_made_at_once(tuesday):
    tuesday.says("ana", "swap bench for machine chest press")

    assert swaps(tuesday) == [("barbell bench press", "machine chest press")]


@pytest.mark.parametrize(
    ("words", "made"),
    [
        pytest.param("yes", "nordic curl", id="yes"),
        pytest.param("Anyway.", "nordic curl", id="anyway"),
        pytest.param("swap anyway", "nordic curl", id="the button typed"),
        pytest.param("nordic curl", "nordic curl", id="its name"),
        pytest.param("sissy squat", "sissy squat", id="the other lift"),
        pytest.param("take the sissy squats", "sissy squat", id="the other lift in a sentence"),
        pytest.param("the other one", "sissy squat", id="the other one"),
        pytest.param("leave it", None, id="leave it"),
        pytest.param("no", None, id="no"),
        pytest.param("never mind", None, id="never mind"),
        pytest.param("leg extension", None, id="the planned lift"),
    ],
)
def test_the_offer_is_answered_in_words(tuesday, words, made):
    tuesday.says("ana", NORDIC, words)
    after = swaps(tuesday)
    tuesday.says("ana", "yes")

    assert after == ([("leg extension", made)] if made else [])
    assert swaps(tuesday) == after, "the offer was settled"


def test_a_third_lift_that_may_stand_in_is_looked_at_in_its_turn(tuesday):
    out = said(tuesday.says("ana", NORDIC, "leg press"))

    assert "Leg press puts long-length work on glutes" in out
    assert swaps(tuesday) == []
    tuesday.says("ana", "yes")
    assert swaps(tuesday) == [("leg extension", "leg press")]


@pytest.mark.parametrize(
    ("label", "made"),
    [
        pytest.param("Swap anyway", "nordic curl", id="anyway"),
        pytest.param("Sissy squat", "sissy squat", id="the other lift"),
        pytest.param("Leave it", None, id="leave it"),
    ],
)
def test_the_offer_is_answered_by_a_button_once(tuesday, label, made):
    shown = buttons(tuesday.says("ana", NORDIC))
    tuesday.taps("ana", shown[label])
    again = said(tuesday.taps("ana", shown["Swap anyway"]))

    assert swaps(tuesday) == ([("leg extension", made)] if made else [])
    assert "anyway" not in again
    assert "instead of" not in again


@pytest.mark.parametrize(
    "words",
    [
        pytest.param("bench 3x5 60", id="another lift"),
        pytest.param("nordic curl 3x8", id="the lift of the offer"),
        pytest.param("leg extension 3x12 40", id="the planned lift"),
        pytest.param("sissy squat 2x8", id="the other lift"),
        pytest.param("squat 100 5 5 5", id="a lift that is not planned"),
    ],
)
def test_sets_are_never_swallowed_by_an_open_offer(tuesday, words):
    before = len(tuesday.log("ana"))
    tuesday.says("ana", NORDIC, words)

    assert len(tuesday.log("ana")) > before
    assert swaps(tuesday) == []


def test_the_offer_outlives_sets_of_other_lifts_but_not_of_the_planned_one(tuesday):
    tuesday.says("ana", NORDIC, "bench 3x5 60", "week", "yes")
    outlived = swaps(tuesday)
    tuesday.says("ana", "undo")
    shown = buttons(tuesday.says("ana", NORDIC))
    tuesday.says("ana", "leg extension 40 12", "anyway")
    tuesday.taps("ana", shown["Swap anyway"])

    assert outlived == [("leg extension", "nordic curl")]
    assert swaps(tuesday) == []


def test_the_remedy_is_said_again_when_it_is_swapped_anyway(tuesday):
    assert "Keep 2 reps in reserve on nordic curl." in said(tuesday.says("ana", NORDIC, "yes"))


def test_the_session_of_the_next_day_counts_too(chats):
    pull = "stiff-leg deadlift 3x8 at 70 kg"
    chats.says("ana", "/start", "London", "kg", RUNNING.replace("barbell overhead press 3x6 at 40 kg", pull))
    chats.at += timedelta(days=1)
    out = said(chats.says("ana", NORDIC))

    assert "Wed 4 Mar, stiff-leg deadlift: nordic curl, a new exercise, worked hamstrings" in out
    assert "Keep 2 reps in reserve on stiff-leg deadlift, Wed 4 Mar, or take sissy squat." in out
    assert swaps(chats) == []


def test_a_lift_chosen_from_the_list_is_looked_at_as_well(tuesday):
    tuesday.says("ana", "swap leg extension", "good morning")

    assert swaps(tuesday) == []
    assert "Good morning" in said(tuesday.says("ana", "swap leg extension", "good morning"))


@pytest.mark.parametrize("data", ["v1:swap-offer", "v1:swap-offer:²:yes", "v1:swap-offer:99:yes", "v1:swap-offer:1:7"])
def test_a_button_of_no_offer_changes_nothing(tuesday, data):
    tuesday.says("ana", NORDIC)
    tuesday.taps("ana", data)

    assert swaps(tuesday) == []
