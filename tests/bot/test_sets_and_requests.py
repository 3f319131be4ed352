"""Sets and a request in one message: the sets are saved and the request is done; neither is lost for the other."""

from __future__ import annotations

import pytest

from tests.bot.chatting import PLAN, said

BEGUN = ("/start", "London", "kg", PLAN)
SQUATS = [("barbell back squat", 5, "90 kg")] * 3
EXTENSIONS = [("leg extension", 12, "50 kg")] * 3


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("squat 3x5 90, skip leg extension", "Leg extension skipped"),
        ("squat 3x5 90\nskip leg extensions", "Leg extension skipped"),
        ("squat 3x5 90 and swap leg extension for leg press", "leg press 3×12 instead of leg extension"),
        ("squat 3x5 90, swpa leg extension for leg press", "leg press 3×12 instead of leg extension"),
        ("squat 3x5 90, can i do leg press instead of leg extension?", "leg press 3×12 instead of leg extension"),
        ("squat 3x5 90. why 50 on leg extension?", "the plan starts at 50 kg"),
        ("squat 3x5 90, remind me thu 18:30", "Reminders at 18:30: Thu"),
        ("squat 3x5 90, im done for today", "3 of 6 planned sets"),
        ("squat 3x5 90, pause until 20 march", "Paused until Fri 20 Mar"),
        ("did squats as planned, skip leg extension", "Leg extension skipped"),
        ("skip leg extension, squat 3x5 90", "Leg extension skipped"),
        ("squat 3x5 90, skip leg extension, remind me thu 18:30", "Reminders at 18:30: Thu"),
        ("kniebeuge 3x5 90, beinstrecker auslassen", "Leg extension skipped"),
    ],
)
def test_sets_and_a_request_are_both_heard(chats, text, answer):
    chats.says("ana", *BEGUN)

    assert answer in said(chats.says("ana", text))
    assert chats.log("ana") == SQUATS


@pytest.mark.parametrize(
    ("text", "log"),
    [
        ("squats done as planned, leg extension 55 3x10", [*SQUATS, *[("leg extension", 10, "55 kg")] * 3]),
        ("leg extension as planned and squat 3x5 90", [*EXTENSIONS, *SQUATS]),
        ("units lb, bench 135x8", [("barbell bench press", 8, "135 lb")]),
    ],
)
def test_one_part_tells_what_the_other_is_read_by(chats, text, log):
    chats.says("ana", *BEGUN, text)

    assert chats.log("ana") == log


def test_what_is_undone_in_front_of_sets_is_gone(chats):
    chats.says("ana", *BEGUN, "squat 3x5 85", "oops undo that. squat 3x5 90")

    assert chats.log("ana") == SQUATS


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x5 90, rest 3 min",
        "squat 3x5 90, week 2",
        "squat 3x5 90, skipped lunch",
        "squat 3x5 90, best set in weeks",
        "squat 3x5 90, swap meet soon",
    ],
)
def test_remarks_that_begin_as_a_request_ask_for_nothing(chats, text):
    chats.says("ana", *BEGUN)
    before = chats.standing("ana")["choices"]
    chats.says("ana", text)

    assert (chats.log("ana"), chats.standing("ana")["choices"]) == (SQUATS, before)


def test_each_part_is_a_step_of_undo(chats):
    chats.says("ana", *BEGUN, "squat 3x5 90, skip leg extension", "undo")

    assert (chats.log("ana"), chats.standing("ana")["choices"]) == (SQUATS, [])

    chats.says("ana", "undo")

    assert chats.log("ana") == []


def test_a_set_that_stands_is_not_logged_again_by_the_plan(chats):
    chats.says("ana", *BEGUN, "squat 90x5", "2nd as planned, last one 4")

    assert chats.log("ana") == [*SQUATS[:2], ("barbell back squat", 4, "90 kg")]
