"""A word for one warm-up at the head of several sets: of the first, or of all."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

HEADS = """
squat wu 60x5, 100x5, 110x5 => ask: barbell back squat 5 at 60 kg warmup, 5 at 100 kg warmup, 5 at 110 kg warmup \
| barbell back squat 5 at 60 kg warmup, 5 at 100 kg, 5 at 110 kg
squat warm up 60kg x 5, 100kg x 5 => ask: barbell back squat 5 at 60 kg warmup, 5 at 100 kg \
| barbell back squat 5 at 60 kg warmup, 5 at 100 kg warmup
kniebeuge aufwärmen 60x5, 100x5 => ask: barbell back squat 5 at 60 kg warmup, 5 at 100 kg \
| barbell back squat 5 at 60 kg warmup, 5 at 100 kg warmup
squat wu 60x5, 80x3, 100x5, 100x5 => ask: barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 2×5 at 100 kg \
| barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 2×5 at 100 kg warmup
bench wu 40x10, wu 60x5, 80x5, 80x5 => ask: \
barbell bench press 10 at 40 kg warmup, 5 at 60 kg warmup, 2×5 at 80 kg \
| barbell bench press 10 at 40 kg warmup, 5 at 60 kg warmup, 2×5 at 80 kg warmup
squat wu 60x5, 80x3, 100x1 => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 1 at 100 kg warmup
squat wu: 60x5, 80x5 => barbell back squat 5 at 60 kg warmup, 5 at 80 kg warmup
squat warmups 60x5, 80x5 => barbell back squat 5 at 60 kg warmup, 5 at 80 kg warmup
squat wu 60x5, 80x5, work 100x5 => barbell back squat 5 at 60 kg warmup, 5 at 80 kg warmup, 5 at 100 kg
squat wu 60x5 then 100x5 => barbell back squat 5 at 60 kg warmup, 5 at 100 kg
"""


@pytest.mark.parametrize(("message", "context", "meant"), readings(HEADS))
def test_which_sets_a_warm_up_at_the_head_is_of(message: str, context: Context, meant: str) -> None:
    assert said(message, context) == meant
