"""Pain told beside a question is noted and answered at once; pain of a whole day is of no lift alone."""

from __future__ import annotations

import pytest

from tests.bot.chatting import buttons, said, texts

ADVICE = "see a doctor"


def pain_notes(chats):
    me = chats.person("ana").id
    with chats.store() as store:
        return [note.exercise for note in store.notes.latest(me, 100) if note.pain]


@pytest.fixture
def begun(chats):
    chats.says("ana", "/start", "skip", "kg")
    return chats


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


def test_undo_takes_back_what_stands_before_a_question_with_pain(begun):
    begun.says("ana", "squat 3x5 100", "row 3x10 50 elbow hurts", "undo")

    assert begun.log("ana") == []
    assert pain_notes(begun) == [None]


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
