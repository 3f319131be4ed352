"""A load told alone, of a lift or of the one in hand: the reps told behind it are done at that load."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import PLAN, said

SQUAT, BENCH, ROW = "barbell back squat", "barbell bench press", "barbell row"


@pytest.fixture
def begun(chats):
    chats.says("ana", "/start", "skip", "kg")
    return chats


@pytest.mark.parametrize(
    ("messages", "log"),
    [
        (["bench 60", "8", "8"], [(BENCH, 8, "60 kg")] * 2),
        (["bench 60", "8 8 8"], [(BENCH, 8, "60 kg")] * 3),
        (["bench 60kg", "for 8"], [(BENCH, 8, "60 kg")]),
        (["bench", "60", "8"], [(BENCH, 8, "60 kg")]),
        (["bench 60", "62.5", "8"], [(BENCH, 8, "62.5 kg")]),
        (["bench 60", "62.5x8"], [(BENCH, 8, "62.5 kg")]),
        (["squat 100x5", "105", "5"], [(SQUAT, 5, "100 kg"), (SQUAT, 5, "105 kg")]),
        (
            ["squat 100x5", "105kg now", "5", "110", "3"],
            [(SQUAT, 5, "100 kg"), (SQUAT, 5, "105 kg"), (SQUAT, 3, "110 kg")],
        ),
        (["squat 100x5", "105", "another 5"], [(SQUAT, 5, "100 kg"), (SQUAT, 5, "105 kg")]),
        (["squat 100x5", "105 people in here", "5"], [(SQUAT, 5, "100 kg")] * 2),
        (["row 60", "10", "barbell"], [(ROW, 10, "60 kg")]),
        (["bench 60", "what a queue", "8"], [(BENCH, 8, "60 kg")]),
    ],
)
def test_reps_are_done_at_the_load_that_was_told_last(begun, messages, log):
    begun.says("ana", *messages)

    assert begun.log("ana") == log


def test_a_load_told_alone_stands_before_the_planned_one(begun):
    begun.says("ana", PLAN, "squat 95", "5", "5")

    assert begun.log("ana") == [(SQUAT, 5, "95 kg")] * 2


def test_hours_later_it_is_forgotten(begun):
    begun.says("ana", "bench 60")
    begun.at += timedelta(hours=6)
    begun.says("ana", "8")

    assert begun.log("ana") == []


def test_a_lift_named_at_the_first_contact_is_no_town(chats):
    out = chats.says("ana", "/start", "bench")
    chats.says("ana", "60x8")

    assert "clock" not in said(out)
    assert chats.log("ana") == [(BENCH, 8, "60 kg")]


def test_a_question_is_answered_on_the_way_home(begun):
    begun.says("ana", "row 3x10 60")
    begun.at += timedelta(hours=2)
    begun.says("ana", "barbell")

    assert begun.log("ana") == [(ROW, 10, "60 kg")] * 3
