"""Which number of a light pair is the load: settled by an answer or in words, shown in settings, taken back."""

from __future__ import annotations

import pytest

from tests.bot.chatting import said

OPEN = "lateral raise 12x10"
LOAD_FIRST, REPS_FIRST = "10 at 12 kg each hand", "12 at 10 kg each hand"


@pytest.fixture
def ana(chats):
    chats.says("ana", "/start", "skip", "skip", "squat 100x5")
    return lambda *words: said(chats.says("ana", *words))


@pytest.mark.parametrize(
    ("answer", "sets", "kept"),
    [
        pytest.param("load first", LOAD_FIRST, "load first", id="load first"),
        pytest.param("weight first", LOAD_FIRST, "load first", id="weight first"),
        pytest.param("reps first", REPS_FIRST, "reps first", id="reps first"),
        pytest.param("12 reps", REPS_FIRST, "reps first", id="by its reps"),
        pytest.param("12 kg", LOAD_FIRST, "load first", id="by its load"),
    ],
)
def test_an_answer_settles_the_order_and_says_so(ana, answer, sets, kept):
    ana(OPEN)
    told = ana(answer)

    assert sets in told
    assert f"Where a pair is open, {kept} from now on (forget {kept})." in told
    assert f"Open pairs: {kept} (forget {kept})" in ana("settings")
    assert "Saved." in ana("front raise 14x11")


def test_what_was_settled_is_taken_back_by_its_words(ana):
    ana(OPEN, "load first")

    assert "Forgotten: load first" in ana("forget load first")
    assert "Open pairs" not in ana("settings")
    assert "How is" in ana("front raise 14x11")


def test_undo_takes_the_set_and_what_it_taught(ana):
    ana(OPEN, "load first", "undo")

    assert "Open pairs" not in ana("settings")
    assert "How is" in ana(OPEN)


def test_the_same_open_numbers_turned_round_are_no_answer(ana):
    ana(OPEN)

    assert "How is “lateral raise 10x12” meant?" in ana("lateral raise 10x12")


def test_it_may_be_said_before_any_question(ana):
    assert "Where a pair is open, reps first from now on: 12x10 is 12 reps at 10." in ana("i write the reps first")
    assert REPS_FIRST in ana(OPEN)


def test_numbers_that_tell_more_than_habit_stand(ana):
    ana("reps first")

    assert "8 at 60 kg" in ana("bench 60x8")
    assert "3×12 at 8 kg each hand" in ana("lateral raise 3x12 8")
