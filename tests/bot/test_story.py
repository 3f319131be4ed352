"""Transcripts line by line."""

from __future__ import annotations

from datetime import datetime

import pytest

from bot.story import Edits, Event, Passes, Says, Sends, StoryError, Taps, read_story

AT = datetime.fromisoformat("2026-03-02T18:05")


@pytest.mark.parametrize(
    ("rest", "who", "deed"),
    [
        pytest.param("ana: row 3x12 55", "ana", Says("row 3x12 55"), id="says"),
        pytest.param("ana: a\\nb", "ana", Says("a\nb"), id="a line break"),
        pytest.param("ana edits: row 3x12 60", "ana", Edits("row 3x12 60", None), id="edits her last"),
        pytest.param("ana edits 3: squat 5x5", "ana", Edits("squat 5x5", 3), id="edits her third"),
        pytest.param("ana taps: undo", "ana", Taps("undo"), id="taps"),
        pytest.param("ana sends plan.txt", "ana", Sends("plan.txt"), id="sends"),
        pytest.param("--", "", Passes(), id="time passes"),
        pytest.param("ana: edits: no", "ana", Says("edits: no"), id="a colon first is speech"),
    ],
)
def test_a_line_is_a_deed(rest, who, deed):
    assert list(read_story(f"2026-03-02 18:05 {rest}")) == [Event(1, AT, who, deed)]


def test_comments_and_empty_lines_are_passed_over():
    assert list(read_story("# a comment\n\n  # another")) == []


@pytest.mark.parametrize(
    "line", ["ana: hello", "2026-02-30 18:00 ana: hi", "2026-03-02 18:05 ana hums", "2026-03-02 18:05 "]
)
def test_a_line_that_is_none_is_named(line):
    with pytest.raises(StoryError, match="line 2"):
        list(read_story(f"# first\n{line}"))
