"""Undo and redo of several changes at once, said in one message; and what a correction added is said as added."""

from __future__ import annotations

import pytest

from storage.database import open_database
from tests.bot.chatting import Chats, said, texts


@pytest.fixture
def chats(tmp_path):
    database = open_database(f"sqlite:///{tmp_path / 'chat.db'}")
    with_her = Chats(database)
    with_her.says("ann", "/start", "squat 100x5", "4", "3")
    yield with_her
    database.close()


@pytest.mark.parametrize("text", ["undo x2", "undo twice", "undo 2", "undo 2 times", "undo two steps"])
def test_so_many_changes_are_taken_back_as_she_says(chats, text):
    undone = texts(chats.says("ann", text))

    assert [one.splitlines()[0] for one in undone if one.startswith("Undone")] == [
        "Undone: barbell back squat 3 at 100 kg.",
        "Undone: barbell back squat 4 at 100 kg.",
    ]
    assert "back squat 5, 4, 3 at 100 kg" in said(chats.says("ann", "redo twice", "what did i log"))


def test_more_steps_than_there_are_changes_take_back_what_there_is(chats):
    assert said(chats.says("ann", "undo 5 times")).count("Undone:") == 3
    assert said(chats.says("ann", "undo twice")) == "Nothing to undo. Nothing changed."


def test_sets_that_a_correction_adds_are_said_as_added(chats):
    chats.says("ann", "bench 3x5 60")

    assert said(chats.says("ann", "was 5x5")) == "Added: barbell bench press 2×5 at 60 kg"
