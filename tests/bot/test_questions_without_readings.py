"""A question that offers nothing to choose says what was not clear, that nothing is saved, and what to send instead."""

from __future__ import annotations

import pytest

from tests.bot.chatting import PLAN, said

BEGUN = ("/start", "London", "kg", PLAN)


@pytest.mark.parametrize(
    ("text", "asked", "hint"),
    [
        ("squat as planned, missed a rep", "What was different from the plan? Not saved yet.", "Write the sets out"),
        ("bench 5x5 70 50 60 x2 9", "I could not read the numbers of “bench”", "Try: bench 3x5 80"),
    ],
)
def test_the_reason_and_the_way_out_are_told(chats, text, asked, hint):
    chats.says("ana", *BEGUN)

    answer = said(chats.says("ana", text))

    assert asked in answer
    assert "Not saved yet." in answer
    assert hint in answer
    assert "None of these" not in answer
    assert chats.log("ana") == []
