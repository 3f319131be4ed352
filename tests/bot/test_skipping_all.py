"""A whole session left out, and what is left of one that is begun."""

from __future__ import annotations

import pytest

from tests.bot.chatting import PLAN, said


@pytest.fixture
def planned(chats):
    chats.says("ana", "/start", "skip", "kg", PLAN)
    return chats


def skipped(chats):
    return [exercise for _, _, exercise, _, _ in chats.standing("ana")["choices"]]


@pytest.mark.parametrize("words", ["skip everything", "skip the session", "skip workout", "skip it all", "skip today"])
def test_the_whole_session_is_left_out(planned, words):
    planned.says("ana", words)

    assert skipped(planned) == [None]


@pytest.mark.parametrize(
    "words", ["skip the rest of the workout", "skip everything else", "skip the rest of today", "skip whats left"]
)
def test_what_is_left_is_left_out_and_what_was_begun_stays(planned, words):
    planned.says("ana", "squat 3x5 90", words)

    assert skipped(planned) == ["leg extension"]


def test_with_no_plan_nothing_is_left_to_skip(chats):
    out = chats.says("ana", "/start", "skip", "kg", "squat 3x5 90", "skip the rest of the workout")

    assert "left to skip" in said(out)
