"""A question that offers nothing to choose says what was not clear, that nothing is saved, and what to send instead."""

from __future__ import annotations

import pytest

from tests.bot.chatting import PLAN, said

BEGUN = ("/start", "London", "kg", PLAN)


@pytest.mark.parametrize(
    ("text", "asked", "hint"),
    [
        ("squat as planned, missed a rep", "What was different from the plan? Not saved yet.", "Write the sets out"),
        ("bench 5x5 70 50 60 x2 9", "I could not read the numbers of “bench”", "as in barbell bench press 3x5 80"),
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


@pytest.mark.parametrize(
    ("before", "text", "example"),
    [
        pytest.param(
            "squat 97.5x4", "asdf 3 3 3 qwe", "A set looks like barbell back squat 97.5 kg x 4", id="her own set"
        ),
        pytest.param("chin-ups 9", "asdf 3 3 3 qwe", "A set looks like chin-up 9", id="a lift of the body"),
        pytest.param(
            "squat 97.5x4", "deadlift 5x5 70 50 60 x2 9", "as in conventional deadlift 3x5 80", id="the lift she named"
        ),
        pytest.param("what a day", "asdf 3 3 3 qwe", "A set looks like row 3x12 55", id="no lift in hand"),
    ],
)
def test_the_example_is_of_the_lift_in_hand_or_named(chats, before, text, example):
    answer = said(chats.says("ana", before, text))

    assert example in answer


def test_a_correction_of_no_set_in_particular_says_how_to_name_one(chats):
    answer = said(chats.says("ana", "squat 3x5 100", "it was 97.5x4"))

    assert "Nothing changed" in answer
    assert "set 2 was" in answer
