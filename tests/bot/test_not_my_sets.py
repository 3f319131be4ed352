"""Sets that were somebody else's, and the rest of a day that "skip the rest" may mean."""

from __future__ import annotations

import pytest

from tests.bot.chatting import PLAN, said


@pytest.mark.parametrize(
    "words",
    [
        "not mine",
        "that wasn't me",
        "sorry that wasn't mine",
        "that was my partner not me",
        "that was my brother's set",
        "wrong person",
        "ignore that last message",
    ],
)
def test_sets_of_somebody_else_are_taken_back_and_can_come_again(chats, words):
    chats.says("ana", "/start", "skip", "kg", "squat 100x5", "bench 3x8 60", words)
    left = chats.log("ana")
    chats.says("ana", "redo")

    assert left == [("barbell back squat", 5, "100 kg")]
    assert len(chats.log("ana")) == len(["squat"] + ["bench"] * 3)


@pytest.mark.parametrize("words", ["that was my coach", "my partner did 70x8", "wrong bar again"])
def test_talk_of_others_takes_nothing_back(chats, words):
    chats.says("ana", "/start", "skip", "kg", "bench 3x8 60", words)

    assert len(chats.log("ana")) == len(["bench"] * 3)


def test_skip_the_rest_with_no_rest_running_says_how_to_skip_the_day(chats):
    out = chats.says("ana", "/start", "skip", "kg", PLAN, "squat 3x5 90", "skip the rest")

    assert "skip today" in said(out)
    assert chats.standing("ana")["choices"] == []
