"""Times between the sets of a lift that is counted in reps are rests. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
leg press 160x12, 90s, 160x12, 90s, 160x10 => leg press 2×12 at 160 kg, 10 at 160 kg
leg press 160x12 90s 160x12 => leg press 2×12 at 160 kg
leg press 160x12 (90s) 160x12 (2 min) 160x10 => leg press 2×12 at 160 kg, 10 at 160 kg
leg press 160x12 / 90s / 160x12 => leg press 2×12 at 160 kg
leg press 160x12, 1:30, 160x12 => leg press 2×12 at 160 kg
leg press // 160x12 // 90s // 160x12 => leg press 2×12 at 160 kg
bench 80: 8, 90s, 8, 2min, 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
push ups 20, 60s, 18, 60s, 15 => push-up 20, 18, 15
squat 100 for 5, 3 min, 100 for 5 => barbell back squat 2×5 at 100 kg
kniebeuge 100x5, 3 min, 100x5 => barbell back squat 2×5 at 100 kg
присед 100х5, 3 мин, 100х5 => barbell back squat 2×5 at 100 kg
{doing: leg press} 160x12, 90s, 160x12 => leg press 2×12 at 160 kg
plank 60s, 45s, 30s => plank 60 s, 45 s, 30 s
db bench 30s 8, 32s 8 => dumbbell bench press 8 at 30 kg each, 8 at 32 kg each
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_time_between_two_sets_is_a_rest(text, context, meant) -> None:
    assert said(text, context) == meant
