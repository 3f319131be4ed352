"""What an answer settles is taught, also where more had to be asked behind it."""

from __future__ import annotations

import pytest

from tests.bot.chatting import buttons, said


@pytest.fixture
def ana(chats):
    chats.says("ana", "/start", "skip", "kg")
    return chats


def settled(chats):
    return dict(chats.standing("ana")["settled"])


@pytest.mark.parametrize(
    ("told", "answers", "term", "lift"),
    [
        pytest.param("curl 12x10", ["dumbbell", "12 kg"], "curl", "dumbbell curl", id="the lift, then its numbers"),
        pytest.param("curl 14x11", ["ez", "load first"], "curl", "ez-bar curl", id="then which is first"),
        pytest.param("fly 12x10", ["cable", "10 reps"], "fly", "cable fly", id="then the reps"),
    ],
)
def test_a_lift_is_taught_where_its_numbers_are_asked_about_behind_it(ana, told, answers, term, lift):
    out = said(ana.says("ana", told, *answers))

    assert settled(ana) == {term: lift}
    assert f"“{term}” means {lift} from now on" in out


def test_each_of_several_lifts_is_taught(ana):
    out = said(ana.says("ana", "row 3x10 50, curl 3x10 12", "barbell", "dumbbell"))

    assert settled(ana) == {"row": "barbell row", "curl": "dumbbell curl"}
    assert "“row” means barbell row" in out


def test_each_of_several_lifts_tapped_is_taught(ana):
    out = ana.says("ana", "row 3x10 50, curl 3x10 12")
    out = ana.taps("ana", buttons(out)["seated cable row"])
    ana.taps("ana", buttons(out)["barbell curl"])

    assert settled(ana) == {"row": "seated cable row", "curl": "barbell curl"}


def test_undo_of_the_answer_forgets_what_it_taught(ana):
    ana.says("ana", "curl 12x10", "dumbbell", "12 kg", "undo")

    assert settled(ana) == {}
    assert ana.log("ana") == []
