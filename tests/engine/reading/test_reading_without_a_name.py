"""Numbers without a lift, none in hand: their load may tell which planned lift they are of, reps alone never do."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, said, situation, standing_after

DAY = situation(
    plan=[("barbell back squat", 3, 5, "85"), ("barbell overhead press", 3, 6, "40"), ("push-up", 2, None, None)],
    last={"barbell back squat": "85", "barbell overhead press": "37.5"},
)


@pytest.mark.parametrize(
    "text", ["85", "100", "60 40", "20 16", "warm ups 20 40 60", "20 40 60 warm up", "45", "8 8 8"]
)
def test_repetitions_alone_are_asked_about(text):
    assert said(text, DAY).startswith("ask: ")


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("85 5 5 5", "barbell back squat 3×5 at 85 kg"),
        ("push-ups 20 16", "push-up 20, 16"),
    ],
)
def test_a_load_or_a_name_tells_the_lift(text, meant):
    assert said(text, DAY) == meant


@pytest.mark.parametrize(
    ("messages", "standing"),
    dialogues("""
squat 3x5 85 | oh and a back off set 70x8 => barbell back squat 3×5 at 85 kg, 8 at 70 kg
squat 3x5 85 | oh and 70x8 => barbell back squat 3×5 at 85 kg, 8 at 70 kg
squat 3x5 85 | oh, plus 70x8 => barbell back squat 3×5 at 85 kg, 8 at 70 kg
squat 3x5 85 | wait also 70x8 => barbell back squat 3×5 at 85 kg, 8 at 70 kg
squat 3x5 85 | oh 70x8 => barbell back squat 2×5 at 85 kg, 8 at 70 kg
squat 3x5 85 | sorry, and 8 on the second => barbell back squat 5 at 85 kg, 8 at 85 kg, 5 at 85 kg
"""),
)
def test_a_set_left_out_before_is_added_and_corrects_none(messages, standing):
    assert standing_after(messages) == standing
