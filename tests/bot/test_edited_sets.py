"""An edit loses no sets in silence: what still stands is said, and what goes is named."""

from __future__ import annotations

import pytest

from tests.bot.chatting import PLAN, said

SQUATS = ["barbell back squat 5 at 90 kg"] * 3


def told(chats):
    """Each set that stands, in words."""
    return [f"{lift} {reps} at {load}" for lift, reps, load in chats.log("ana")]


@pytest.fixture
def ana(chats):
    chats.says("ana", "/start", "skip", "skip", PLAN)
    return chats


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("squat", id="a bare name"),
        pytest.param("sqaut", id="a bare name, mistyped"),
        pytest.param("kniebeuge", id="a bare name in another language"),
        pytest.param("leg extension", id="the bare name of another lift"),
        pytest.param("squat, leg extension", id="several names"),
        pytest.param("squat?", id="a name and a question mark"),
        pytest.param("squat felt heavy", id="how a lift felt"),
        pytest.param(".", id="no words"),
        pytest.param("squat 90", id="no reps"),
        pytest.param("remove the bench", id="a correction of other sets"),
        pytest.param(PLAN, id="a plan"),
        pytest.param("done", id="a request"),
        pytest.param("today", id="another request"),
        pytest.param("skip leg extension", id="another lift skipped"),
    ],
)
def test_an_edit_that_says_not_that_the_sets_were_never_done_keeps_them_and_says_so(ana, text):
    ana.says("ana", "squat 3x5 90")
    out = said(ana.edits("ana", text))

    assert told(ana) == SQUATS
    assert "Still saved: Barbell back squat 3×5 at 90 kg." in out


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("wrong chat, sorry", id="chat"),
        pytest.param("no squat today", id="not done"),
        pytest.param("squats were my brothers", id="somebody else's"),
        pytest.param("squat tomorrow", id="to come"),
        pytest.param("undo", id="undo"),
        pytest.param("delete that", id="delete that"),
        pytest.param("skip squat", id="the lift skipped"),
    ],
)
def test_an_edit_that_says_so_takes_its_own_sets_and_names_them(ana, text):
    ana.says("ana", "leg extension 12 50", "squat 3x5 90")
    out = said(ana.edits("ana", text))

    assert told(ana) == ["leg extension 12 at 50 kg"]
    assert "Deleted: the edited message tells no sets any more." in out
    assert "Was: barbell back squat 3×5 at 90 kg" in out


@pytest.mark.parametrize(
    ("text", "left"),
    [
        pytest.param("no, 92.5", ["barbell back squat 5 at 92.5 kg"] * 3, id="another load"),
        pytest.param("only 2 sets", SQUATS[:2], id="fewer sets"),
        pytest.param("last one 4", [*SQUATS[:2], "barbell back squat 4 at 90 kg"], id="the last set"),
    ],
)
def test_an_edit_to_a_correction_corrects_the_sets_of_its_own_message(ana, text, left):
    ana.says("ana", "leg extension 12 50", "squat 3x5 90")
    ana.edits("ana", text)

    assert told(ana) == ["leg extension 12 at 50 kg", *left]


def test_an_edit_whose_lift_can_not_be_read_any_more_keeps_the_whole_message(ana):
    ana.says("ana", "squat 3x5 90, leg extension 12 50")
    out = said(ana.edits("ana", "squat 3x5 92.5, leg extension"))

    assert told(ana) == [*SQUATS, "leg extension 12 at 50 kg"]
    assert "Can't read the edit: “leg extension”: no numbers to it" in out
    assert "Still saved: Barbell back squat 3×5 at 90 kg; leg extension 12 at 50 kg." in out


def test_pain_that_an_edit_tells_of_beside_its_sets_is_answered(ana):
    ana.says("ana", "squat 3x5 90")
    out = said(ana.edits("ana", "squat 3x5 90 knee hurts"))

    assert told(ana) == SQUATS
    assert "I won't push its load" in out
    assert "push its load" not in said(ana.edits("ana", "squat 3x5 92.5 knee hurts"))


def test_an_edit_to_same_where_no_other_set_stands_keeps_the_sets(ana):
    ana.says("ana", "squat 3x5 90")
    out = said(ana.edits("ana", "same"))

    assert told(ana) == SQUATS
    assert out.startswith("Can't read the edit: “same”: there is no set to repeat yet")


def test_an_edit_to_same_repeats_the_set_of_another_message(ana):
    ana.says("ana", "leg extension 12 50", "squat 3x5 90")
    ana.edits("ana", "same")

    assert told(ana) == ["leg extension 12 at 50 kg"] * 2


def test_an_edit_to_chat_of_what_was_asked_about_says_that_it_is_left_out(ana):
    ana.says("ana", "curl 3x10 12")
    out = said(ana.edits("ana", "oh well"))

    assert out == "Left out: “curl 3x10 12”. Nothing saved for it."


def test_the_question_about_an_edit_let_go_says_that_the_old_sets_stay(ana):
    ana.says("ana", "squat 3x5 90")
    ana.edits("ana", "curl 3x10 12")
    out = said(ana.says("ana", "forget it"))

    assert out == "Left out: “curl 3x10 12”. The sets from before the edit stay."


def test_an_edited_plan_is_a_plan_and_no_sets(ana):
    ana.says("ana", PLAN)
    out = said(ana.edits("ana", PLAN.replace("90 kg", "95 kg")))

    assert out.startswith("Plan saved: short and plain")
    assert told(ana) == []
    assert "3×5 at 95 kg" in said(ana.says("ana", "today"))


@pytest.mark.parametrize(
    ("text", "left"),
    [
        pytest.param("same", ["leg extension 12 at 50 kg"] * 2, id="same"),
        pytest.param("x2 more", ["leg extension 12 at 50 kg"] * 3, id="x2 more"),
    ],
)
def test_an_edit_to_repeated_sets_is_one_step_of_undo(ana, text, left):
    ana.says("ana", "leg extension 12 50", "squat 3x5 90")
    before = told(ana)
    ana.edits("ana", text)
    assert told(ana) == left

    ana.says("ana", "undo")
    assert told(ana) == before
    ana.says("ana", "redo")
    assert told(ana) == left


@pytest.mark.parametrize("text", ["squat 90 3x5", "squats 90 5 5 5", "squat 3x5 at 90kg"])
def test_an_edit_that_tells_the_same_sets_is_no_step(ana, text):
    ana.says("ana", "leg extension 12 50", "squat 3x5 90")
    out = said(ana.edits("ana", text))
    assert out == "The same sets. Still saved: Barbell back squat 3×5 at 90 kg. Nothing changed."

    ana.says("ana", "undo")
    assert told(ana) == ["leg extension 12 at 50 kg"]


def test_an_edit_that_tells_only_pain_beside_the_same_sets_says_what_was_changed(ana):
    ana.says("ana", "squat 3x5 90")
    out = said(ana.edits("ana", "squat 3x5 90 knee hurts"))
    assert "Was:" not in out
    assert "Only the note with them was changed." in out

    ana.says("ana", "undo")
    assert ana.standing("ana")["notes"] == []
    assert told(ana) == SQUATS


def test_the_sets_of_an_edit_are_told_in_the_order_of_the_log(ana):
    ana.says("ana", "squat 3x5 90")
    out = said(ana.edits("ana", "first one was a warm up"))

    assert "Now: barbell back squat 5 at 90 kg, warm-up, then 2×5 at 90 kg" in out


@pytest.mark.parametrize("text", ["skip squat", "swap squat for leg press"])
def test_an_edit_of_sets_to_a_request_of_their_lift_is_one_step_of_undo(ana, text):
    ana.says("ana", "squat 3x5 90")
    before = ana.standing("ana")
    ana.edits("ana", text)
    assert told(ana) == []

    ana.says("ana", "undo")
    assert ana.standing("ana") == before


def test_sets_edited_to_a_skip_and_back_are_saved_and_nothing_is_skipped(ana):
    ana.says("ana", "squat 3x5 90")
    before = ana.standing("ana")
    ana.edits("ana", "skip squat")
    ana.edits("ana", "squat 3x5 90")

    assert told(ana) == SQUATS
    assert ana.standing("ana") == before
