"""Sets told with "or" between two numbers: each side is a reading, and the answer saves one of them alone."""

from __future__ import annotations

import pytest

from engine.reading.wording import describe
from tests.engine.reading.saying import Conversation, said


@pytest.mark.parametrize(
    ("text", "readings"),
    [
        ("bench 80x7 or 8", "barbell bench press 7 at 80 kg | barbell bench press 8 at 80 kg"),
        ("bench 80 or 82.5 x8", "barbell bench press 8 at 80 kg | barbell bench press 8 at 82.5 kg"),
        ("bench 80x8 or 85", "barbell bench press 8 at 80 kg | barbell bench press 8 at 85 kg"),
        ("bench 80x8 or 85x8", "barbell bench press 8 at 80 kg | barbell bench press 8 at 85 kg"),
        ("bench 3x8 80 or 82.5", "barbell bench press 3×8 at 80 kg | barbell bench press 3×8 at 82.5 kg"),
    ],
)
def test_each_side_is_a_reading(text: str, readings: str) -> None:
    assert said(text) == f"ask: {readings}"


@pytest.mark.parametrize(
    ("told", "standing"),
    [
        ("bench 80x7 or 8 | 8", "barbell bench press 8 at 80 kg"),
        ("bench 80x7 or 8 | think it was 7", "barbell bench press 7 at 80 kg"),
        ("bench 80 or 82.5 x8 | 82.5", "barbell bench press 8 at 82.5 kg"),
    ],
)
def test_the_answer_saves_one_of_them(told: str, standing: str) -> None:
    talk = Conversation()
    for text in told.split(" | "):
        talk.say(text)

    assert describe([one.done for one in talk.log]) == standing
