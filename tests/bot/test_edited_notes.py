"""Edits of words that are no sets: notes follow them, pain is answered and held, and taken back when it was none."""

from __future__ import annotations

import pytest

from tests.bot.chatting import PLAN, said


def notes(chats):
    return [(text, pain) for text, _, pain in chats.standing("ana")["notes"]]


@pytest.mark.parametrize(
    ("before", "after", "kept", "reply"),
    [
        pytest.param("slept badly", "slept well", [("slept well", False)], "Kept as a note", id="talk into other talk"),
        pytest.param("slept badly", "knee hurts", [("knee hurts", True)], "medical help", id="talk into pain"),
        pytest.param("knee hurts", "all good now", [("all good now", False)], "Kept as a note", id="pain into talk"),
        pytest.param("squat 90x5", "knee hurts", [("knee hurts", True)], "medical help", id="a set into pain"),
        pytest.param(
            "squat 90x5", "sharp chest pain", [("sharp chest pain", True)], "emergency", id="into urgent signs"
        ),
        pytest.param("squat 90x5 knee hurts", "wrong chat", [], "Deleted", id="a painful set into talk"),
        pytest.param(
            "squat 90x5 knee hurts", "squat 90x5", [], "Only the note with them", id="the pain alone taken out"
        ),
    ],
)
def test_a_note_follows_the_words_it_was_made_of(chats, before, after, kept, reply):
    chats.says("ana", "/start", "skip", "skip", PLAN, before)
    out = chats.edits("ana", after)

    assert notes(chats) == kept
    assert reply in said(out)


def test_undo_brings_a_painful_set_back_with_its_note(chats):
    chats.says("ana", "/start", "skip", "skip", PLAN, "squat 90x5 knee hurts")
    before = chats.standing("ana")
    chats.edits("ana", "wrong chat")
    chats.says("ana", "undo")

    assert chats.standing("ana") == before


def test_the_same_words_again_change_nothing_and_say_nothing(chats):
    chats.says("ana", "hello", "knee hurts")
    before = chats.standing("ana")

    assert chats.edits("ana", "knee hurts") == []
    assert chats.standing("ana") == before
