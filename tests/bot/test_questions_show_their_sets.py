"""A question shows every set that saying yes to it would save, also where they are of several lifts."""

from __future__ import annotations

import pytest

from tests.bot.chatting import buttons, said


@pytest.fixture
def ana(chats):
    chats.says("ana", "/start", "skip", "skip")
    return chats


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        pytest.param(
            "squat 3x4 120, xyz 3x5 85, deadlift 2x3 145",
            ("barbell back squat 3×4 at 120 kg", "conventional deadlift 2×3 at 145 kg"),
            id="an unknown lift between two",
        ),
        pytest.param(
            "squat 3x4 120, db bench 3x5 150, deadlift 2x3 145",
            ("squat 3×4 at 120 kg", "bench press 3×5 at 150 kg each hand", "deadlift 2×3 at 145 kg"),
            id="an unusual load among three",
        ),
    ],
)
def test_all_sets_stand_in_the_question(ana, text, shown):
    out = said(ana.says("ana", text))
    assert "Not saved yet." in out
    for one in shown:
        assert one in out
    assert "…" not in out.partition("Not saved yet.")[2].partition("[")[0]


def test_buttons_of_long_readings_that_begin_alike_are_told_apart(ana):
    labels = list(buttons(ana.says("ana", "squat warm up bar 2x10, 3x5 90")))

    assert len(labels) == 3
    assert labels[0].endswith("3×5 at 90 kg")
    assert labels[1].endswith("3×5 at 90 kg, warm-up")


def test_two_lifts_in_doubt_are_asked_about_one_after_the_other(chats):
    first = chats.says("ana", "/start", "skip", "kg", "row 3x10 60\ncurl 3x12 14")
    second = chats.taps("ana", buttons(first)["seated cable row"])
    chats.taps("ana", buttons(second)["dumbbell curl"])

    assert len(buttons(first)) == len(("barbell", "dumbbell", "cable", "none of these"))
    assert "Which “curl”?" in said(second)
    assert chats.log("ana") == [("seated cable row", 10, "60 kg")] * 3 + [("dumbbell curl", 12, "14 kg")] * 3
