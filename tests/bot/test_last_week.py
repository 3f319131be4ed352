"""What last week came to: told of its own sets, and of none of this week's."""

from __future__ import annotations

import pytest

from tests.bot.chatting import said


@pytest.fixture
def ana(chats):
    chats.says("ana", "/start", "squat 3x5 90 on wednesday", "bench 2x8 60")
    return lambda words: said(chats.says("ana", words))


def test_the_week_before_is_told(ana):
    assert "Last week: 1 session" in ana("how was last week")
    assert "This week so far: 1 session" in ana("week")


def test_its_volume_is_told(ana):
    last, this = ana("volume last week"), ana("volume")

    assert "Hard sets last week" in last
    assert "quads 3" in last
    assert "chest" not in last
    assert "chest 2" in this


def test_the_volume_of_one_muscle_is_told(ana):
    assert "quads, last week: 3 hard sets" in ana("quads volume last week")
    assert "No hard sets for chest last week" in ana("chest volume last week")
