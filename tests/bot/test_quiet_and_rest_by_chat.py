"""Quiet hours, a rest, something else for a lift and what stands today, asked for in the chat."""

from __future__ import annotations

import pytest

from storage.database import open_database
from tests.bot.chatting import Chats, said, texts


@pytest.fixture
def chats(tmp_path):
    database = open_database(f"sqlite:///{tmp_path / 'chat.db'}")
    with_her = Chats(database)
    with_her.says("ann", "/start", "squat 3x5 100")
    yield with_her
    database.close()


@pytest.mark.parametrize(
    ("text", "hours"),
    [
        pytest.param("no messages after 9pm", "between 21:00 and 08:00", id="the morning's end stays"),
        pytest.param("don't text me before 9", "between 21:30 and 09:00", id="the evening's begin stays"),
        pytest.param("quiet 10 to 7", "between 22:00 and 07:00", id="nobody goes to bed in the morning"),
        pytest.param("quiet 9:00 to 17:00", "between 09:00 and 17:00", id="unless the other hour says so"),
        pytest.param("mute me at night", "it is quiet between 21:30 and 08:00", id="no hours: which are quiet now"),
    ],
)
def test_quiet_hours_are_told_by_one_end_or_by_both(chats, text, hours):
    assert hours in said(chats.says("ann", text))


def test_a_mistyped_wish_for_quiet_is_asked_and_never_done(chats):
    reply = said(chats.says("ann", "no mesages after 9pm"))

    assert reply.startswith("Did you mean “no messages after 9pm”?")


@pytest.mark.parametrize("text", ["90 sec rest please", "ping me in 90 seconds"])
def test_a_word_wished_for_in_a_moment_is_a_rest(chats, text):
    assert said(chats.says("ann", text)).startswith("Rest 90 s")


def test_without_a_plan_what_works_the_same_is_named(chats):
    reply = said(chats.says("ann", "rower's broken, what else for rows"))

    assert reply.startswith("Much the same work as barbell row: pendlay row")


def test_without_a_plan_today_tells_what_stands(chats):
    reply = said(chats.says("ann", "what did i log"))

    assert reply.startswith("So far today, 3 sets:\nBarbell back squat 3×5 at 100 kg\nNo plan yet.")


@pytest.mark.parametrize("text", ["shoulder hurt on the presses", "my shoulder hurts when pressing"])
def test_pain_is_put_to_the_lift_of_the_day_that_its_words_name(chats, text):
    chats.says("ann", "ohp 3x8 40", "squat 2x5 100")

    assert said(chats.says("ann", text)).startswith("Stop or ease barbell overhead press")


def test_a_set_told_far_below_its_lift_says_itself_and_how_many_stand(chats):
    for lift in ("bench 3x8 70", "row 3x8 60", "curl 3x8 10", "dips 3x8", "ohp 3x8 40", "rdl 3x8 80", "plank 60s"):
        chats.says("ann", lift, "undo", "redo")

    assert texts(chats.says("ann", "squat 105x3")) == ["Barbell back squat 1 set of 3 at 105 kg. Saved. 4 sets today."]
