"""Repetitions to spare twice running offer a heavier load; taking it is lifting it."""

from __future__ import annotations

import pytest

from engine.progression.explain import why
from engine.progression.sessions import taken
from engine.values.plan import Deload
from engine.values.schemes import DoubleProgression, Hold, LoadStep, SetWave
from tests.engine.progression.logged import MONDAY, WEEK, after, asks, between, kg, slot, weekly

WAVE = slot(SetWave(5, kg("2.5")), 3, 6, "42.5")
RANGE = slot(DoubleProgression(kg("2.5")), 3, between(8, 12), "40")


@pytest.mark.parametrize(
    ("planned", "sessions", "load"),
    [
        pytest.param(WAVE, ("42.5: 6 6 8", "42.5: 6 6 6 8"), "45", id="two to spare, twice"),
        pytest.param(WAVE, ("42.5: 6 6 8", "42.5: 6 6 6 7"), None, id="only one the second time"),
        pytest.param(WAVE, ("42.5: 6 6 8", "42.5: 6 6 6 6", "42.5: 6 6 6 6 8"), None, id="not running"),
        pytest.param(WAVE, ("42.5: 6 6 7", "42.5: 6 6 6 8", "42.5: 6 6 6 6 9"), None, id="the load goes up by itself"),
        pytest.param(WAVE, ("42.5: 6 6 8",), None, id="once"),
        pytest.param(WAVE, ("42.5: 8 6 6", "42.5: 9 6 6 6"), None, id="not the last set"),
        pytest.param(WAVE, ("40: 6 6 8", "42.5: 6 6 6 8"), None, id="the first of them lighter"),
        pytest.param(RANGE, ("40: 10 9 14", "40: 11 10 14"), "42.5", id="past the top of a range"),
        pytest.param(slot(LoadStep(kg("2.5"))), ("100: 5 4 7", "100: 5 4 7"), "102.5", id="a set short all the same"),
        pytest.param(slot(LoadStep(kg("2.5"))), ("100: 5 5 7", "102.5: 5 5 7"), None, id="made: it goes up anyway"),
        pytest.param(slot(Hold()), ("100: 5 5 8", "100: 5 5 8"), None, id="the plan holds it"),
    ],
)
def test_two_for_two(planned, sessions, load):
    offer = after(planned, *sessions).offer

    assert (None if offer is None else offer.load) == (None if load is None else kg(load))


def test_it_says_why_in_five_lines_and_asks_nothing():
    sessions = ("42.5: 6 6 8", "42.5: 6 6 6 8")
    asked = after(WAVE, *sessions)
    records = [record for exposure in weekly(*sessions) for record in exposure.sets]

    assert asks(WAVE, *sessions) == "5×6 at 42.5 kg"
    assert len(why(asked, records)) <= 5
    assert why(asked, records)[-1] == (
        "Make 5×6 to go to 3×6 at 45 kg. 2 or more reps to spare in the last set on Mon 2 Mar and Mon 9 Mar: "
        "take 45 kg if you like, and it goes on from there."
    )


def test_taking_it_is_lifting_it():
    assert asks(WAVE, "42.5: 6 6 8", "42.5: 6 6 6 8", "45: 6 6 6") == "4×6 at 45 kg"


@pytest.mark.parametrize(
    ("today", "load"),
    [
        pytest.param("45: 6", "45", id="taken"),
        pytest.param("47.5: 6", "45", id="more than offered"),
        pytest.param("42.5: 6", "42.5", id="left"),
        pytest.param("45: 6, 42.5: 6", "42.5", id="given up again"),
    ],
)
def test_once_taken_the_sets_still_to_do_are_asked_at_it(today, load):
    asked = after(WAVE, "42.5: 6 6 8", "42.5: 6 6 6 8")
    done = [record for part in today.split(", ") for record in weekly(part)[0].sets]

    assert {one.load for one in taken(asked, done).sets} == {kg(load)}
    assert (taken(asked, done).offer is None) == (load == "45")


@pytest.mark.parametrize(
    "over",
    [
        pytest.param({"deload": Deload()}, id="in a deload"),
        pytest.param({"pain": True}, id="with pain"),
        pytest.param({"today": MONDAY + 6 * WEEK}, id="after time away"),
    ],
)
def test_nothing_is_offered_where_nothing_should_be_pushed(over):
    assert after(WAVE, "42.5: 6 6 8", "42.5: 6 6 6 8", **over).offer is None
