"""Two lifts or two things put right in one message: both, or none, and no set more."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

BOTH_OR_NONE = """
bench 2x8 60 | squat 2x5 90 | last bench 6, last squat 4 => bench 8 at 60 kg, 6 at 60 kg; squat 5 at 90 kg, 4 at 90 kg
bench 3x8 60 | squat 3x5 100 | last bench 6 => bench 2×8 at 60 kg, 6 at 60 kg; squat 3×5 at 100 kg
bench 3x8 60 | bench last 6 => bench 2×8 at 60 kg, 6 at 60 kg
bench 60x8 | last bench 6 => bench 8 at 60 kg, 6 at 60 kg
bench 3x8 60 | last bench 62.5x6 => bench 3×8 at 60 kg, 6 at 62.5 kg
bench 3x8 60 | squat 3x5 100 | bench was rpe 8 and squat 9 => bench 3×8 at 60 kg; squat 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | bench was rpe 8 and squat 105 => bench 3×8 at 60 kg RPE 8; squat 3×5 at 105 kg
bench 3x8 60 | squat 3x5 100 | delete last squat and last bench => bench 3×8 at 60 kg; squat 3×5 at 100 kg
bench 3x8 60 | squat 3x5 100 | delete the last squat => bench 3×8 at 60 kg; squat 2×5 at 100 kg
bench 3x8 60 | monday, last was 7 => bench 3×8 at 60 kg
bench 3x8 60 | yesterday the last was 7 => bench 3×8 at 60 kg
bench 3x8 60 | it was yesterday, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | das war gestern, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | fue ayer, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | c'était hier, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | era ieri, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | het was gisteren, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | to było wczoraj, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | foi ontem, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | это было вчера, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 3x8 60 | det var igår, rpe 9 => bench 3×8 at 60 kg RPE 9 on 2025-03-13
bench 60x8 | 65x8 | 70x8 | those were 7 reps, not 8 => bench 7 at 60 kg, 7 at 65 kg, 7 at 70 kg
bench 60x8 | 65x8 | 70x8 | it was 7 reps, not 8 => bench 8 at 60 kg, 8 at 65 kg, 7 at 70 kg
bench 3x8 60 | squat 3x5 100 | bench was thursday, squat friday => squat 3×5 at 100 kg; bench 3×8 at 60 kg on 2025-03-13
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(BOTH_OR_NONE))
def test_both_are_put_right_or_none(told: str, standing: str) -> None:
    stands = standing_after(told).replace("barbell bench press", "bench").replace("barbell back squat", "squat")

    assert stands == standing
