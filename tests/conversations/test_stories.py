"""Each folder here is a whole conversation: story.txt is what people do, replies.txt what they are answered."""

from __future__ import annotations

import difflib

import pytest

from tests.conversations.playing import STORIES, Played


@pytest.mark.parametrize("story", STORIES, ids=lambda story: story.parent.name)
def test_the_conversation_is_answered_as_accepted(story):
    played = Played(story)

    accepted = (story.parent / "replies.txt").read_text("utf-8")
    difference = difflib.unified_diff(accepted.splitlines(), played.text.splitlines(), "accepted", "now", lineterm="")
    assert played.failures == []
    assert played.text == accepted, "\n".join(difference) + "\nto accept: python tests/conversations/accept.py"
