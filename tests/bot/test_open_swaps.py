"""Swaps for a name that several lifts go by, for what there is, and a set more or less of a lift."""

from __future__ import annotations

import pytest

from tests.bot.chatting import buttons, said

PRESSES = """plan: presses, 4 weeks
day mon: press
barbell back squat 3x5 at 90 kg, then +2.5 kg
barbell overhead press 3x6 at 40 kg, then +2.5 kg"""


@pytest.fixture
def ana(chats):
    chats.says("ana", "/start", "London", "kg", PRESSES)
    return chats


def swaps(chats):
    return [(exercise, to) for _, _, exercise, to, _ in chats.standing("ana")["choices"]]


def test_an_open_name_is_the_lift_that_works_the_same(ana):
    ana.says("ana", "swap ohp for db press")

    assert swaps(ana) == [("barbell overhead press", "dumbbell shoulder press")]


def test_an_open_name_of_none_alike_is_asked_and_answered(ana):
    out = ana.says("ana", "swap squat for row")

    assert "Barbell row" in buttons(out)
    assert swaps(ana) == []
    ana.says("ana", "seated cable row")
    assert swaps(ana) == [("barbell back squat", "seated cable row")]


@pytest.mark.parametrize("told", ["only bands", "i only have bands today", "only kettlebells"])
def test_what_there_is_leaves_a_choice(ana, told):
    out = ana.says("ana", told)

    assert len(buttons(out)) > 1
    assert "\n\n" not in said(out)


@pytest.mark.parametrize("told", ["-1 set squat", "squat -1 set", "-1 set of squats", "+1 set squat"])
def test_a_set_more_or_less_of_a_lift_says_what_to_send(ana, told):
    ana.says("ana", "squat 90x5", "squat 90x5")

    out = ana.says("ana", told)

    assert "Nothing changed" in said(out)
    assert "what if" in said(out)
    assert len(ana.log("ana")) == 2
