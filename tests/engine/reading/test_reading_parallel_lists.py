"""Reps and loads told in lists of their own, a time for each distance, and ranges in words."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

LISTS = """
lat pulldown 13, 11, 9 @ 48, 52, 56 => lat pulldown 13 at 48 kg, 11 at 52 kg, 9 at 56 kg
{doing: lat pulldown} 13 11 9 with 48 52 56 => lat pulldown 13 at 48 kg, 11 at 52 kg, 9 at 56 kg
lat pulldown 13,11,9 at 48,52,56 => lat pulldown 13 at 48 kg, 11 at 52 kg, 9 at 56 kg
{doing: lat pulldown} each set 10 reps: 42, 46, 50 => lat pulldown 10 at 42 kg, 10 at 46 kg, 10 at 50 kg
deadlift 95, 115, 135 all for 5, then 155x3 => \
conventional deadlift 5 at 95 kg, 5 at 115 kg, 5 at 135 kg, 3 at 155 kg
deadlift 95, 115 all for 5 => conventional deadlift 5 at 95 kg, 5 at 115 kg
meadows row 11 reps of 35 kg, 3 times => meadows row 3×11 at 35 kg
hack squat 8 at 95, 8 at 105, only 5 at 115 => hack squat 8 at 95 kg, 8 at 105 kg, 5 at 115 kg
sled drag 65kg: 30m, 30m (35s, 38s) => sled drag 30 m in 35 s at 65 kg, 30 m in 38 s at 65 kg
"""
RANGES = """
bench 3x7 to 9 62 => ask: barbell bench press 3×7 at 62 kg | barbell bench press 3×9 at 62 kg
squat 92 for 5 to 6 => ask: barbell back squat 5 at 92 kg | barbell back squat 6 at 92 kg
kniebeuge 3x7 bis 9 92 => ask: barbell back squat 3×7 at 92 kg | barbell back squat 3×9 at 92 kg
plank 35 to 45 s => ask: plank 35 s | plank 45 s
squat 62 to 82 x5 => barbell back squat 5 at 62 kg, 5 at 82 kg
"""


UNCLEAR = ("deadlift 95, 115 for 5", "sled drag 65kg 3x30m (35s, 38s, 40s)")


@pytest.mark.parametrize(("text", "context", "meant"), readings(LISTS + RANGES.lstrip()))
def test_lists_told_apart_belong_together(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("text", UNCLEAR)
def test_lists_that_do_not_fit_are_asked(text: str) -> None:
    assert said(text).startswith("ask:")
