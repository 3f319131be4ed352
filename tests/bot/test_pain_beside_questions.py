"""Pain told beside a question is noted and answered at once; pain of a whole day is of no lift alone."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import buttons, said, texts

ADVICE = "see a doctor"


def pain_notes(chats):
    me = chats.person("ana").id
    with chats.store() as store:
        return [note.exercise for note in store.notes.latest(me, 100) if note.pain]


def test_pain_beside_sets_that_are_asked_about_is_answered_ahead_of_the_question(begun):
    out = begun.says("ana", "row 3x10 50 elbow hurts")

    assert ADVICE in texts(out)[0]
    assert "Which" in texts(out)[-1]
    assert pain_notes(begun) == [None]


@pytest.mark.parametrize("answer", ["barbell", "the barbell one"])
def test_the_answer_holds_the_lift_that_it_settles(begun, answer):
    out = begun.says("ana", "row 3x10 50 elbow hurts", answer)

    assert "I won't push barbell row's load" in said(out)
    assert ADVICE not in said(out)
    assert pain_notes(begun) == ["barbell row"]


def test_a_tapped_answer_holds_the_lift_too(begun):
    out = begun.says("ana", "curl 3x12 14 and my wrist is painful")
    begun.taps("ana", buttons(out)["dumbbell curl"])

    assert pain_notes(begun) == ["dumbbell curl"]


@pytest.mark.parametrize("answer", ["forget it", "squat 3x5 100"])
def test_pain_stays_noted_where_the_sets_are_left_out(begun, answer):
    begun.says("ana", "row 3x10 50 elbow hurts", answer)

    assert len(pain_notes(begun)) == 1


def test_signs_of_danger_are_answered_ahead_of_any_question(begun):
    out = begun.says("ana", "row 3x10 50 chest pain and dizzy")

    assert "emergency services" in texts(out)[0]
    assert "it hurts on" not in said(out)


@pytest.mark.parametrize("answer", ["barbell but my elbow hurts", "barbell. elbow pain now"])
def test_pain_told_in_an_answer_is_noted(begun, answer):
    out = begun.says("ana", "row 3x10 50", answer)

    assert ADVICE in said(out)
    assert begun.log("ana") == [("barbell row", 10, "50 kg")] * 3
    assert pain_notes(begun) == ["barbell row"]


@pytest.mark.parametrize("text", ["row 3x10 50 elbow hurts", "knee pain, curl 3x12 14", "press 3x8 40 sharp shoulder"])
def test_undo_takes_back_the_pain_beside_a_question_and_no_sets_before_it(begun, text):
    out = said(begun.says("ana", "squat 3x5 100", text, "undo"))

    assert begun.log("ana") == [("barbell back squat", 5, "100 kg")] * 3
    assert pain_notes(begun) == []
    assert "Undone: the pain note" in out
    assert "undo again takes back barbell back squat" in out
    assert "Still asked, and not saved" in out

    begun.says("ana", "redo")
    assert len(pain_notes(begun)) == 1

    begun.says("ana", "undo", "undo")
    assert begun.log("ana") == []


def test_undo_leaves_out_a_message_with_pain_and_its_note_where_nothing_stands_before_it(begun):
    begun.says("ana", "squat 3x5 100")
    begun.at += timedelta(days=1)
    out = said(begun.says("ana", "row 3x10 50 elbow hurts", "undo"))

    assert "Left out" in out
    assert pain_notes(begun) == []
    assert begun.log("ana") == [("barbell back squat", 5, "100 kg")] * 3


def test_pain_taken_back_is_noted_anew_by_the_answer_that_tells_its_sets(begun):
    begun.says("ana", "squat 3x5 100", "row 3x10 50 elbow hurts", "undo", "barbell")

    assert pain_notes(begun) == ["barbell row"]


@pytest.mark.parametrize(
    ("text", "lift"),
    [
        ("back is sore today", None),
        ("shoulder hurts since yesterday", None),
        ("knie schmerzt heute", None),
        ("elbow hurts on bench today", "barbell bench press"),
        ("my elbow hurts", "barbell bench press"),
        ("left shoulder pinched on that one", "barbell bench press"),
    ],
)
def test_pain_of_a_whole_day_is_of_no_lift_alone(begun, text, lift):
    begun.says("ana", "bench 3x8 60", text)

    assert pain_notes(begun) == [lift]
