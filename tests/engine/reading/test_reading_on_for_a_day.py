"""Sets that are on for a day or a time to come, told as of now: whether they were done is asked."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Asked, Doubt
from tests.engine.reading.saying import KNOWN, said, situation


@pytest.mark.parametrize(
    "text",
    [
        "friday im benching 100x2",
        "on saturday i'm benching 100x2",
        "im benching 100x2 on saturday",
        "today i'm benching 100x2",
        "saturday i bench 100x2",
        "saturday i do bench 100x2",
        "on friday we bench 100x2",
        "samstag drücke ich bank 100x2",
        "el sábado hago press banca 100x2",
        "samedi je fais développé couché 100x2",
        "zaterdag doe ik bankdrukken 100x2",
        "sábado faço supino 100x2",
        "på lördag kör jag bänkpress 100x2",
        "in two weeks bench 100x2",
        "bench 100x2 in two weeks",
        "in zwei wochen bank 100x2",
        "dans 2 semaines développé couché 100x2",
        "ready to bench 100x2",
    ],
)
def test_what_is_told_as_of_now_of_a_day_is_asked(text: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Asked)
    assert outcome.doubt is Doubt.WHETHER
    assert said(text) == "ask: barbell bench press 2 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "saturday bench 100x2",
        "saturday: bench 100x2",
        "saturday i benched 100x2",
        "saturday i did bench 100x2",
        "on saturday i was benching 100x2",
        "samedi j'ai fait développé couché 100x2",
        "zaterdag deed ik bankdrukken 100x2",
        "i lördags körde jag bänkpress 100x2",
        "el sábado hice press banca 100x2",
    ],
)
def test_what_was_done_on_a_day_is_recorded(text: str) -> None:
    assert said(text) == "barbell bench press 2 at 100 kg on 2025-03-08"


def test_which_of_the_sets_were_done_is_asked_where_some_may_be_on_for_a_day() -> None:
    assert said("squat 3x5 100, tuesday i'm benching 100x2") == "ask: "


def test_a_time_since_the_last_session_leaves_the_sets() -> None:
    assert said("first session in two weeks: squat 3x5 100") == "barbell back squat 3×5 at 100 kg"
    assert said("squat 3x5 100 first time in 2 weeks") == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "club record: bench 180x1",
        "gym record bench 180x1",
        "once i bench 180x1 i stop",
        "saturday i go for bench 180x1",
    ],
)
def test_records_of_others_and_what_is_to_come_are_no_sets(text: str) -> None:
    assert said(text) == "no sets"


@pytest.mark.parametrize(
    "behind",
    [
        "in my dreams",
        "if only",
        "next year",
        "lol no",
        "jk",
        "(not really)",
        "pre covid",
        "says the app",
        "according to the app",
    ],
)
def test_a_set_that_is_said_to_be_none_is_asked_about(behind: str) -> None:
    assert said(f"bench 140x1 {behind}") == "ask: barbell bench press 1 at 140 kg"


@pytest.mark.parametrize("text", ["almost bench 140x1", "so close to squat 140x1", "close to bench 140x1"])
def test_what_was_nearly_done_is_no_set(text: str) -> None:
    assert said(text) == "no sets"


@pytest.mark.parametrize(
    "text", ["almost forgot: squat 3x5 100", "nearly there, squat 3x5 100", "squat 3x5 100 almost died"]
)
def test_other_words_for_nearly_leave_the_sets(text: str) -> None:
    assert said(text) == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "old log: bench 140x1",
        "e1rm bench 140x1",
        "old max bench 140x1",
        "on the whiteboard: bench 140x1",
        "todays wod: bench 140x1",
    ],
)
def test_sets_that_stand_elsewhere_are_asked_about(text: str) -> None:
    assert said(text) == "ask: barbell bench press 1 at 140 kg"
