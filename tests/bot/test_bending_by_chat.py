"""Short on time, a lighter week, another gym, no training today: answered with what to send, and nothing is changed."""

from __future__ import annotations

import pytest

from tests.bot.chatting import PLAN, said

BEGUN = ("/start", "London", "kg", PLAN)
SHORT, LIGHTER, ELSEWHERE, CANNOT = "stop when time is up", "no deload week", "Send: swap", "send: move to tue"


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("short on time", SHORT),
        ("in a rush today", SHORT),
        ("only 35 min today", SHORT),
        ("short on time, 25 mins", SHORT),
        ("got 40 mins, what should i do?", SHORT),
        ("wenig zeit heute", SHORT),
        ("deload pls", LIGHTER),
        ("can i deload?", LIGHTER),
        ("i need an easy week", LIGHTER),
        ("can we make this week lighter?", LIGHTER),
        ("travelling next week, only dumbbells", ELSEWHERE),
        ("hotel gym, no barbell", ELSEWHERE),
        ("cant make it today", CANNOT),
        ("cant train today, tomorrow instead", CANNOT),
        ("ok what now", "Barbell back squat 3×5 at 90 kg"),
    ],
)
def test_a_day_that_does_not_fit_is_answered(chats, text, answer):
    chats.says("ana", *BEGUN)
    before = chats.standing("ana")

    assert answer in said(chats.says("ana", text))
    assert chats.standing("ana") == before


@pytest.mark.parametrize("text", ["short on time", "deload", "hotel gym", "cant make it today"])
def test_without_a_plan_it_is_a_note(chats, text):
    chats.says("ana", "/start", "London", "kg")

    assert "Kept as a note" in said(chats.says("ana", text))


@pytest.mark.parametrize("text", ["trained 30 min today", "rested 3 min", "bike 25 min"])
def test_a_time_that_was_spent_lacks_none(chats, text):
    chats.says("ana", *BEGUN)

    assert SHORT not in said(chats.says("ana", text))


@pytest.mark.parametrize("asked", ["today sun", "what about tomorrow?"])
def test_a_rest_day_to_come_is_named_and_so_is_the_day_of_the_next_session(chats, asked):
    chats.says("ana", *BEGUN)

    answer = said(chats.says("ana", asked))

    assert "is a rest day. Next: " in answer
    assert "tomorrow" not in answer
