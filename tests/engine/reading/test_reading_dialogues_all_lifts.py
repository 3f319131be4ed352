"""Other equipment for all lifts of a message: a word for both or all reaches each; "those" of several is not clear."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading import read
from engine.reading.values import Context, NoSets
from tests.engine.reading.saying import KNOWN, Conversation, log_after, situation

TWO = "bench 3x8 60\nbarbell row 3x10 50"
BOTH = "dumbbell bench press 3×8 at 60 kg each, dumbbell row 3×10 at 50 kg each"


@pytest.mark.parametrize(
    "words",
    [
        "both were with dumbbells",
        "did both with dumbbells",
        "all with dumbbells",
        "all of those were dumbbells",
        "both with dumbbells sorry",
        "beide mit Kurzhanteln",
    ],
)
def test_a_word_for_both_reaches_each_lift(words: str) -> None:
    assert log_after(TWO, words).replace("; ", ", ") == BOTH


def test_both_reaches_over_two_messages() -> None:
    assert log_after(*TWO.splitlines(), "did both with dumbbells").replace("; ", ", ") == BOTH


@pytest.mark.parametrize("words", ["those were dumbbells", "did those with dumbbells", "they were on the machine"])
def test_those_of_two_lifts_changes_none_and_says_so(words: str) -> None:
    conversation = Conversation()
    conversation.say(TWO)
    before = conversation.standing()
    outcome = read(words, situation_after(conversation), KNOWN)

    assert isinstance(outcome, NoSets)
    assert "one lift or of all" in outcome.unread[0].why
    conversation.say(words)
    assert conversation.standing() == before


def situation_after(conversation: Conversation) -> Context:
    return replace(situation(), now=conversation.now, recent=tuple(conversation.log))


@pytest.mark.parametrize(
    ("first", "standing"),
    [
        ("squat 3x5 100\nbench 3x8 60", "barbell back squat 3×5 at 100 kg, dumbbell bench press 3×8 at 60 kg each"),
        ("bench 3x8 60", "dumbbell bench press 3×8 at 60 kg each"),
    ],
)
def test_those_is_the_only_lift_that_is_known_so(first: str, standing: str) -> None:
    assert log_after(first, "those were dumbbells").replace("; ", ", ") == standing


def test_both_with_one_that_is_not_known_so_changes_none() -> None:
    told = log_after("bench 3x8 60\nsquat 3x5 100", "both were with dumbbells").replace("; ", ", ")

    assert told == "barbell bench press 3×8 at 60 kg, barbell back squat 3×5 at 100 kg"
