"""Loads far from what is lifted: the way up from an empty bar is no surprise, and only a load answers the question."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import Conversation, dialogues, log_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues(
        """
squat bar x10 | 60x5 | 80x5 => barbell back squat 10 at 20 kg, 5 at 60 kg, 5 at 80 kg
squat bar x10 | 5x5 100 => barbell back squat 10 at 20 kg, 5×5 at 100 kg
deadlift bar x8 | 70x5 | 120x5 => conventional deadlift 8 at 20 kg, 5 at 70 kg, 5 at 120 kg
bench 45lb x10 | 185lb x5 => barbell bench press 10 at 45 lb, 5 at 185 lb
ohp 20x10 | 60x5 => barbell overhead press 10 at 20 kg, 5 at 60 kg
squat 40x5 warm up | 120x5 => barbell back squat 5 at 40 kg warmup, 5 at 120 kg
squat bar x10 | 60x5 | 80x5 | first two were warm ups => \
barbell back squat 10 at 20 kg warmup, 5 at 60 kg warmup, 5 at 80 kg
squat bar x10 | 600x5 => barbell back squat 10 at 20 kg
ohp 20x8 | 200x8 => barbell overhead press 8 at 20 kg
bench 40x8 | 400x8 => barbell bench press 8 at 40 kg
""".replace("\\\n", "")
    ),
)
def test_the_way_up_from_an_empty_bar_or_a_warm_up_is_no_surprise(told: str, standing: str) -> None:
    assert log_after(*told.split(" | ")) == standing


ANSWERS = ("70", "70 kg", "no, 70", "nein 70", "i meant 70", "oops 70", "it was 70 on the bar", "70x5", "5 at 70")


@pytest.mark.parametrize("answer", ANSWERS)
def test_a_load_answers_whether_the_load_is_right(answer: str) -> None:
    assert log_after("bench 70x5", "700x5", answer) == "barbell bench press 2×5 at 70 kg"


TALK = (
    "the second one was 4",
    "last 3 days no sleep",
    "3 more to go",
    "only 8 though",
    "just 4",
    "set 3 next",
    "2 of them felt bad",
    "7 days to go",
    "#3",
    "rpe 8",
    "8 8 8",
    "5 reps",
)


@pytest.mark.parametrize("sets", ["bench 70x5 | 700x5", "ohp 40x8 | 400x8", "bench 30x12 | 95x5"])
@pytest.mark.parametrize("talk", TALK)
def test_other_numbers_leave_open_whether_the_load_is_right(sets: str, talk: str) -> None:
    conversation, before = Conversation(), Conversation()
    before.say(sets.split(" | ")[0])
    for message in (*sets.split(" | "), talk):
        conversation.say(message)
    assert conversation.open is not None
    assert conversation.standing() == before.standing()


@pytest.mark.parametrize(
    ("answer", "then", "standing"),
    [
        ("2", "70", "barbell bench press 2×5 at 70 kg"),
        ("600", "yes", "barbell bench press 5 at 70 kg, 5 at 600 kg"),
        ("3x5", "no", "barbell bench press 5 at 70 kg"),
        ("no 700", "70", "barbell bench press 2×5 at 70 kg"),
    ],
)
def test_a_load_as_unlikely_is_asked_about_in_its_turn(answer: str, then: str, standing: str) -> None:
    assert log_after("bench 70x5", "700x5", answer) == "barbell bench press 5 at 70 kg"
    assert log_after("bench 70x5", "700x5", answer, then) == standing


def test_a_slip_that_may_put_another_number_right_chooses_no_reading() -> None:
    assert log_after("bench 70x5", "17x5", "oops 70") == "barbell bench press 5 at 70 kg"
