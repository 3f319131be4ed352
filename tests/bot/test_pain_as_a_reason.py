"""Pain told as the reason of a request is noted like any pain: first, held against the load, and no step of undo."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import said
from tests.bot.test_coaching_by_chat import linked
from tests.bot.test_week_compared import PLAN


@pytest.fixture
def squatting(chats):
    """Ann on a plan whose session of the day is squats."""
    linked(chats, "ann")
    chats.says("ann", PLAN)
    chats.at += timedelta(days=3)
    return chats


@pytest.mark.parametrize("words", ["skip squat, my knee hurts", "swap squat for leg press, sharp pain in my knee"])
def test_pain_beside_a_request_is_noted_and_the_request_is_done(squatting, words):
    before = squatting.standing("ann")
    out = said(squatting.says("ann", words))
    after = squatting.standing("ann")

    assert (words, False, True) in after["notes"]
    assert out.index("Only you see this note") < out.index("squat", out.index("Only you see this note"))
    assert len(after["choices"]) == len(before["choices"]) + 1


def test_undo_takes_back_the_request_and_leaves_the_note(squatting):
    squatting.says("ann", "skip squat, my knee hurts")
    squatting.says("ann", "undo")

    assert squatting.standing("ann")["choices"] == []
    assert [pain for _, _, pain in squatting.standing("ann")["notes"]] == [True]


@pytest.mark.parametrize("words", ["skip squat", "skip squat, no pain just tired"])
def test_a_request_without_pain_notes_none(squatting, words):
    squatting.says("ann", words)

    assert not [pain for _, _, pain in squatting.standing("ann")["notes"] if pain]
