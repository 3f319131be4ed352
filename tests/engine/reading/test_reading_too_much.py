"""More than anybody tells at once, and signs that no lifter means: asked about or told, and never an error."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from engine.reading import read
from engine.reading.values import Logged, NoSets
from tests.bench.generated_messages import pasted_week
from tests.engine.reading.saying import KNOWN, said, situation

NEWLINE = "\n"


def test_a_message_of_more_sets_than_a_day_holds_is_asked() -> None:
    assert said("squat 80 5\n" * 60).startswith("ask: ")
    assert said("squat 80 5\n" * 10) == "barbell back squat 10×5 at 80 kg"


def test_a_message_of_hundreds_of_numbers_is_not_read() -> None:
    outcome = read("squat 80 5\n" * 300, situation(), KNOWN)

    assert isinstance(outcome, NoSets)
    assert "send it in parts" in outcome.unread[0].why


def test_a_week_pasted_up_to_what_a_message_may_hold_is_read_in_full() -> None:
    text = pasted_week()
    outcome = read(text, situation(), KNOWN)

    assert 3_900 < len(text) <= 4_096
    assert isinstance(outcome, Logged)
    assert outcome.unread == ()
    assert len(outcome.sets) == 320
    assert len(set(outcome.days)) == 5


def test_a_lift_with_hundreds_of_numbers_costs_no_other_line() -> None:
    endless = "bench " + "60 " * 200
    outcome = read(f"squat 3x5 80\n{endless}\nbarbell row 3x8 60", situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [one.exercise for one in outcome.sets] == ["barbell back squat"] * 3 + ["barbell row"] * 3
    assert [(piece.text, piece.why) for piece in outcome.unread] == [
        (endless.strip(), "more numbers than one exercise can have")
    ]


def test_a_lift_with_hundreds_of_numbers_alone_is_not_read() -> None:
    assert said("bench " + "60 " * 200).startswith(("ask: ", "no sets"))


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("squat x (2x5)", id="a multiplier without a number, and a pair in brackets"),
        pytest.param("squat x x (2x52,5 x cable fly", id="two of them, and brackets left open"),
        pytest.param("199999999999999999999999999999993.3.: squat 3x5 100", id="a day of dozens of digits"),
        pytest.param("3.199999999999999999999999999999993.: squat 3x5 100", id="a month of dozens of digits"),
        pytest.param("squat 3o10.3. 5", id="a letter within a day"),
        pytest.param("db bench x8 last set failed 80x5 at 80", id="no load ahead of the x, and the last of it failed"),
        pytest.param("deads in bw , x3 missed last set", id="no sets ahead of the x, and the last of them missed"),
        pytest.param("plank rpe 8 8 twice at 80 dassist / same again", id="an effort without a set, of a lift helped"),
        pytest.param("dips+1.) 8@135lbх2 by 100 then lat raise for per leg", id="three factors behind an at sign"),
        pytest.param("up 2.5°lat raise for", id="a degree behind a number that may be a day"),
    ],
)
def test_what_no_lifter_means_is_asked_or_left_unread(text: str) -> None:
    assert not isinstance(read(text, situation(), KNOWN), Logged)


def test_more_lifts_than_a_week_holds_are_not_read_whether_known_or_not() -> None:
    outcome = read("zwargl 3x5 80\n" * 150, situation(), KNOWN)

    assert isinstance(outcome, NoSets)
    assert outcome.why.startswith("more than I can read in one message")


def test_more_lines_than_a_week_holds_are_not_read() -> None:
    outcome = read("80x5\n" * 600, situation(), KNOWN)

    assert isinstance(outcome, NoSets)
    assert outcome.why.startswith("more than I can read in one message")


def test_more_days_than_can_have_a_lift_each_are_not_read() -> None:
    days = [date(2024, 11, 20) + timedelta(day) for day in range(101)]
    lines = [f"{day:%Y-%m-%d} 3x{5 + at % 5} 100" for at, day in enumerate(days)]
    few, many = (read(f"squat{NEWLINE}{NEWLINE.join(told)}", situation(), KNOWN) for told in (lines[:90], lines))

    assert isinstance(few, Logged)
    assert len(few.sets) == 90 * 3
    assert isinstance(many, NoSets)
    assert many.why.startswith("more than I can read in one message")


@pytest.mark.parametrize("text", ["31/02 - ; \n", "undo 1/0 +\n"])
def test_what_no_diary_holds_so_often_is_left_before_it_is_read(text: str) -> None:
    outcome = read((text * 400)[:4_096], situation(), KNOWN)

    assert isinstance(outcome, NoSets)
    assert outcome.why.startswith("more than I can read in one message")


@pytest.mark.parametrize("text", ["squat 7,½$", "12,a€ squat", "up 2.5°lat raise for", "3.5°squat - 5"])
def test_odd_signs_beside_numbers_break_nothing(text: str) -> None:
    assert read(text, situation(), KNOWN) is not None
