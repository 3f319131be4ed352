"""A grip told beside a lift of another movement than that the grip is the short name of."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

GRIPS = """
barbell row, close grip 50x8 => barbell row 8 at 50 kg
barbell row: close grip 50x8, 55x8 => barbell row 8 at 50 kg, 8 at 55 kg
barbell row, wide grip 50x8 => barbell row 8 at 50 kg
barbell row 60x8, close grip 50x8 => barbell row 8 at 60 kg, 8 at 50 kg
pulldown, close grip 50x8 => close-grip lat pulldown 8 at 50 kg
pull ups, close grip 8 8 8 => pull-up 3×8
lat pulldown, close grip 3x10 50, bench 80x5 => close-grip lat pulldown 3×10 at 50 kg; barbell bench press 5 at 80 kg
bench, close grip 70x8 => close-grip bench press 8 at 70 kg
bench 80x5, close grip 70x8 => barbell bench press 5 at 80 kg; close-grip bench press 8 at 70 kg
squat, close grip bench 60x8 => close-grip bench press 8 at 60 kg
"""


@pytest.mark.parametrize(("message", "context", "meant"), readings(GRIPS))
def test_a_grip_beside_a_row_is_no_bench_press(message: str, context: Context, meant: str) -> None:
    assert said(message, context) == meant
