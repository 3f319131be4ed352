"""A session moved to another day is planned there and nowhere else: for what comes next, for the week, for its sets."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import PLAN, said

ROW = "barbell row"


def later(chats, days):
    chats.at += timedelta(days=days)


@pytest.fixture
def moved(chats):
    """Thursday's pull session, moved to Saturday on Thursday."""
    chats.says("ana", PLAN, "squat 3x5 90", "leg extension 3x12 50")
    later(chats, 3)
    chats.says("ana", "move to sat")
    return chats


def test_what_comes_next_is_the_moved_session_on_its_new_day(moved):
    assert "Next: pull, Sat 7 Mar" in said(moved.says("ana", "today"))


def test_the_week_asks_for_its_sets_once(moved):
    later(moved, 2)
    moved.says("ana", "row 3x12 55")

    told = said(moved.says("ana", "week"))
    assert "2 of 2 sessions" in told
    assert "Sets: 9 of 9 planned" in told


def test_why_looks_at_the_new_day(moved):
    assert "Make 3×12" in said(moved.says("ana", "why row"))


def test_moved_twice_it_is_where_it_went_last(moved):
    later(moved, 2)
    moved.says("ana", "move to sun")
    assert "Next: pull, tomorrow" in said(moved.says("ana", "today"))

    later(moved, 1)
    assert "pull" in said(moved.says("ana", "today")).splitlines()[0]
    assert "3×12 at 55 kg" in said(moved.says("ana", "next"))


def test_into_the_next_week_it_counts_there(moved):
    later(moved, 2)
    moved.says("ana", "move to mon")

    assert "Sets: 6 of 6 planned" in said(moved.says("ana", "week"))
    later(moved, 2)
    assert "of 3 sessions" in said(moved.says("ana", "week"))


def test_undone_it_is_back_on_its_day(moved):
    moved.says("ana", "undo")

    assert said(moved.says("ana", "today")).startswith("Thu 5 Mar, pull")


@pytest.mark.parametrize("words", ["push it to tuesday", "can we do this tomorrow instead", "postpone to tuesday"])
def test_a_session_pushed_in_other_words_is_moved(chats, words):
    chats.says("ana", "/start", PLAN)

    assert "Legs moved to tomorrow" in said(chats.says("ana", words))
