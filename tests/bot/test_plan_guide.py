"""help plan: every progression can be found, and every example of the guide is read as what it says."""

from __future__ import annotations

from typing import get_args

import pytest

from bot.replies.plan_guide import GUIDE, SHORT, plan_guide
from bot.replies.screen import fits_card
from engine.catalogue.catalogue import catalogue
from engine.plan.text import parse_plan
from engine.values.load import Unit
from engine.values.schemes import Scheme
from tests.bot.chatting import said


def schemes(text):
    parsed = parse_plan(text, catalogue(), Unit.KG)
    assert parsed.errors == ()
    assert parsed.plan is not None
    days = [day for block in parsed.plan.blocks for kind in block.kinds for day in kind.days]
    return {type(slot.scheme) for day in days for slot in day.slots}


def test_the_file_holds_every_progression():
    assert schemes(GUIDE) == set(get_args(Scheme))


def test_the_screen_holds_every_progression():
    lifts = [
        "squat",
        "deadlift",
        "bench press",
        "push-up",
        "chin-up",
        "front squat",
        "rdl",
        "hip thrust",
        "plank",
        "dip",
    ]
    lines = [f"{lift} {words}" for lift, words in zip(lifts, SHORT, strict=True)]

    assert schemes("\n".join(["plan: x, 8 weeks", "day mon: a", *lines])) == set(get_args(Scheme))


def test_it_fits_the_screen():
    assert fits_card(plan_guide().text.split("\n"))


@pytest.mark.parametrize("words", ["/help plan", "/help progression", "/plan help"])
def test_it_is_found_by_chat(chats, words):
    out = chats.says("ana", words)

    assert "no progression" in said(out)
    assert any(one.outgoing.attachment_name == "plan-guide.txt" for one in out)


def test_the_guide_sent_back_is_a_plan(chats):
    chats.says("ana", "hello")
    out = chats.sends("ana", "plan-guide.txt", GUIDE.encode())

    assert "Plan saved: winter base" in said(out)
