"""A small number behind a slip, right after an answer: another choice or reps, and nothing is changed on a guess."""

from __future__ import annotations

import pytest

ROW = ("barbell row", 12, "22.5 kg")


@pytest.fixture
def chosen(chats):
    """A row whose lift was asked about and chosen by its number."""
    chats.says("ana", "/start", "London", "kg", "row 3x12 22.5", "1")
    return chats


@pytest.mark.parametrize("told", ["no, 2", "sorry 2", "i meant 2", "nein, 2", "no, 3"])
def test_it_changes_no_reps(chosen, told):
    chosen.says("ana", told)

    assert chosen.log("ana") == [ROW] * 3


@pytest.mark.parametrize(("told", "reps"), [("no, 10", 10), ("that was 2", 2)])
def test_what_is_no_choice_changes_them(chosen, told, reps):
    chosen.says("ana", told)

    assert chosen.log("ana")[2] == ("barbell row", reps, "22.5 kg")


def test_behind_another_message_it_is_of_the_reps(chosen):
    chosen.says("ana", "bench 60x8", "no, 2")

    assert chosen.log("ana")[3] == ("barbell bench press", 2, "60 kg")
