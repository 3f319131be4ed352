"""Numbers without a lift, none in hand: their load may tell which planned lift they are of, reps alone never do."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said, situation

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
