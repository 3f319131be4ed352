"""Corrections that point by place, in ranges and counts, with words of talk around them."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
machine chest press 62 12 10 9 | set 2 was 11 tho => machine chest press 12 at 62 kg, 11 at 62 kg, 9 at 62 kg
bench 82.5x5 | 5 | 4 | tbh the last one was 3 => barbell bench press 2×5 at 82.5 kg, 3 at 82.5 kg
bench 3x5 92 | pendlay row 3x8 72 | third set of bench i only got 4 => \
barbell bench press 2×5 at 92 kg, 4 at 92 kg; pendlay row 3×8 at 72 kg
bench 3x5 92 | pendlay row 3x8 72 | bench, last set i only got 4 => \
barbell bench press 2×5 at 92 kg, 4 at 92 kg; pendlay row 3×8 at 72 kg
deadlift 72x5 102x3 132x1 152x3 | sets 1 to 3 were warm ups => \
conventional deadlift 5 at 72 kg warmup, 3 at 102 kg warmup, 1 at 132 kg warmup, 3 at 152 kg
deadlift 72x5 102x3 132x1 152x3 | sets 1-2 were warm ups => \
conventional deadlift 5 at 72 kg warmup, 3 at 102 kg warmup, 1 at 132 kg, 3 at 152 kg
ohp 42x8 | 8 | 7 | all three at 37.5 => barbell overhead press 2×8 at 37.5 kg, 7 at 37.5 kg
bench 62x8 | bench 62 9 7 all to failure => \
barbell bench press 8 at 62 kg, 9 at 62 kg to failure, 7 at 62 kg to failure
bench 4x5 80 | last set 4 not 5 => barbell bench press 3×5 at 80 kg, 4 at 80 kg
bench 4x5 80 | last 3 not 5 => barbell bench press 3×5 at 80 kg, 3 at 80 kg
deadlift 160x2x4 | four dobules => conventional deadlift 4×2 at 160 kg
ohp 3x8 42 | all 8 at 37.5 => barbell overhead press 3×8 at 37.5 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_places(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    "told",
    ["take out the last set, too many", "delete the last set, my mate did it", "scrap the last one, wasn't a full one"],
)
def test_a_reason_behind_a_set_taken_out_takes_out_no_more(told: str) -> None:
    assert standing_after(f"front squat 4x4 80 | {told}") == "barbell front squat 3×4 at 80 kg"
