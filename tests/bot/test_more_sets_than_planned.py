"""Sets beyond the plan's: their receipt counts them truly, and none goes to a lift that was not told."""

from __future__ import annotations

from tests.bot.chatting import PLAN, said


def test_a_receipt_told_anew_counts_more_sets_than_planned_in_words_that_hold(chats):
    chats.says("ana", "/start", "skip", "skip", PLAN, "squat 3x5 90")
    for _ in range(12):
        chats.says("ana", "what a day")
    out = said(chats.says("ana", "squat 4x5 90"))

    assert out.startswith("Barbell back squat 7 sets, 3 planned\n4×5 at 90 kg. Saved.")


def test_a_set_added_with_reps_of_its_own_goes_to_no_lift_that_is_only_next(chats):
    chats.says("ana", "/start", "skip", "skip", PLAN, "squat 3x5 90")
    out = said(chats.says("ana", "add a set of 4"))

    assert out.startswith("Nothing changed: “add a set of 4”")
    assert len(chats.log("ana")) == 3


def test_a_set_added_without_reps_is_of_the_last_lift(chats):
    chats.says("ana", "/start", "skip", "skip", PLAN, "squat 3x5 90", "add a set")

    assert chats.log("ana") == [("barbell back squat", 5, "90 kg")] * 4
