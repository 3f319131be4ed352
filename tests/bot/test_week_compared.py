"""What went up and down in a week, told to the athlete and her coach: like is compared with like."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import said
from tests.bot.test_coaching_by_chat import linked

PLAN = """plan: legs, 6 weeks, deload week 3
day mon: legs
leg press 3x10-12 at 100 kg, then +5 kg
day thu: squats
barbell back squat 3x5 at 80 kg, then +2.5 kg
"""
FIRST_WEEK = ("leg press 3x12 100",), ("squat 3x5 80",)


def weeks(chats, *weeks_done):
    """Ann's weeks, each its Monday's and its Thursday's words; then a Sunday evening."""
    linked(chats, "ann")
    chats.says("ann", PLAN)
    for monday, thursday in weeks_done:
        chats.says("ann", *monday)
        chats.at += timedelta(days=3)
        chats.says("ann", *thursday)
        chats.at += timedelta(days=4)
    chats.at -= timedelta(days=1)


@pytest.mark.parametrize(
    ("second", "told", "looked_at"),
    [
        pytest.param(
            (("skip leg press",), ("swap squat for leg press", "leg press 3x5 100")), None, False, id="a swap"
        ),
        pytest.param((("leg press 3x10 105",), ("squat 3x5 82.5",)), "Up: leg press 105 kg (+5 kg)", False, id="steps"),
        pytest.param(
            (("leg press 9 8 8 105",), ("squat 5 5 4 77.5",)), "Down: barbell back squat 77.5 kg", True, id="true drops"
        ),
        pytest.param((("leg press 3x8 95",), ("squat 3x5 82.5",)), "Down: leg press 95 kg (-5 kg)", True, id="lighter"),
    ],
)
def test_a_lift_is_down_only_where_less_was_done_than_asked(chats, second, told, looked_at):
    weeks(chats, FIRST_WEEK, second)
    week, digest = said(chats.says("ann", "week")), said(chats.says("kit", "digest"))

    assert (told or "Same: leg press") in week
    assert ("Down:" in week) is looked_at
    assert ("down:" in digest) is looked_at


def test_a_deload_week_is_no_loss(chats):
    second = (("leg press 3x12 105",), ("squat 3x5 82.5",))
    weeks(chats, FIRST_WEEK, second, (("leg press 2x12 100",), ("squat 2x5 75",)))

    assert "Down:" not in said(chats.says("ann", "week"))
    assert "down:" not in said(chats.says("kit", "digest"))


def test_one_session_is_one_session(chats):
    linked(chats, "ann")
    chats.says("ann", PLAN.replace("day thu: squats\n", ""), "leg press 3x12 100")

    assert "1 of 1 session\n" in said(chats.says("ann", "week"))


def test_the_whole_of_a_long_session_asked_for_by_its_own_words_moves_no_set(chats):
    chats.says("ann", "/start", "skip", "skip", PLAN, "leg press 3x12 100")
    chats.at += timedelta(days=3)

    assert "Barbell back squat 3×5 at 80 kg" in said(chats.says("ann", "today all"))
    assert "Mon 2 Mar" in said(chats.says("ann", "history leg press"))
