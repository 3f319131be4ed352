"""One step more taken back, in words that go on with an undo."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading import read
from engine.reading.values import Act, NoSets
from tests.engine.reading.saying import KNOWN, Conversation, in_words, situation


def _read(text: str, *, undone: bool) -> object:
    talk = Conversation()
    for before in ("hip thrust 95x10", "105x8"):
        talk.say(before)
    return read(text, replace(situation(), now=talk.now, recent=tuple(talk.log), undone=undone), KNOWN)


@pytest.mark.parametrize("undone", [False, True])
@pytest.mark.parametrize(
    "told",
    ["undo that one too", "undo again", "undo once more", "undo another", "and undo that one as well", "undo it again",
     "undo that too pls", "one more undo", "ok undo this one also", "das auch rückgängig machen", "deshacer otra vez"],
)  # fmt: skip
def test_undo_with_little_words_is_undo(told: str, undone: bool) -> None:
    assert _read(told, undone=undone) == Act("undo", count=1 if undone else None)


@pytest.mark.parametrize(
    "told",
    ["and the one before", "and the one before that", "that one too", "this one too please", "the previous one too",
     "also the one before", "delete that one too", "remove that too", "undo the one before", "das auch",
     "esa también", "y la anterior"],
)  # fmt: skip
def test_behind_an_undo_words_that_point_go_on_with_it(told: str) -> None:
    assert _read(told, undone=True) == Act("undo", count=1)
    assert not (isinstance(found := _read(told, undone=False), Act) and found.name == "undo")


def test_redo_goes_on_too() -> None:
    assert _read("redo that one too", undone=True) == Act("redo")


@pytest.mark.parametrize("told", ["one more", "same again", "100x8 too", "last one was 9", "that felt good too"])
def test_other_words_behind_an_undo_undo_nothing(told: str) -> None:
    assert not (isinstance(found := _read(told, undone=True), Act) and found.name == "undo")


def test_again_behind_an_undo_is_asked_and_elsewhere_one_more_set() -> None:
    assert isinstance(_read("again", undone=True), NoSets)
    found = _read("again", undone=False)

    assert isinstance(found, Act)
    assert in_words(found) == "request: repeat"
