"""Shares of a load: a per cent is no kilogram, and the load that it comes to is asked."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import log_after, readings, said

SHARES = """
bench 100x1, 90%x3, 80%x5 => ask: barbell bench press 1 at 100 kg, 3 at 90 kg, 5 at 80 kg
deadlift 180x1, -20% 3x5 => ask: conventional deadlift 1 at 180 kg, 3×5 at 144 kg
squat top single 150 @8 then -10% 4x4 => ask: barbell back squat 1 at 150 kg RPE 8, 4×4 at 135 kg
squat 150x5, -20% for 10 => ask: barbell back squat 5 at 150 kg, 10 at 120 kg
squat 100x5 then 80% of that 3x8 => ask: barbell back squat 5 at 100 kg, 3×8 at 80 kg
bench 80% 3x5 (100 max) => ask: barbell bench press 3×5 at 100 kg
squat 150x5, 80% 110x3 => barbell back squat 5 at 150 kg, 3 at 110 kg
squat 3x5 100 (80%) => barbell back squat 3×5 at 100 kg
squat 80% 100x5, 85% 110x3 => barbell back squat 5 at 100 kg, 3 at 110 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SHARES))
def test_a_share_is_never_taken_for_kilograms(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


def test_a_share_behind_a_set_of_the_conversation_is_asked() -> None:
    assert log_after("squat 150x5", "-20% for 10") == "barbell back squat 5 at 150 kg"
