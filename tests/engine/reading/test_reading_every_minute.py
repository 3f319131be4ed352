"""Sets done every minute on the minute are as many as the minutes. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TEN = "barbell back squat 10×3 at 70 kg"
TOLD = f"""
squats emom 10 min 3 reps 70 => {TEN}
squat emom 10 min 70x3 => {TEN}
squat emom 10 min 3x70 => {TEN}
squat 70x3 emom 10 min => {TEN}
squat 70x3 emom for 10 min => {TEN}
squat 70x3 emom 10 => {TEN}
squat 10 min emom 3x70 => {TEN}
emom 10 min: squat 3 reps 70 => {TEN}
pull ups emom 10 min 5 reps => pull-up 10×5
pull ups emom 10 min 5 => pull-up 10×5
pull ups 5 emom 10 min => pull-up 10×5
squat emom 10x3 70 => {TEN}
squat 5x3 emom 60 => barbell back squat 5×3 at 60 kg
pull ups amrap 10 min 45 => pull-up 45
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_each_minute_has_its_set(text, context, meant) -> None:
    assert said(text, context) == meant
