"""Several things put right in one message, joined by a sign or by "and": all of them, or none."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
bench 3x8 70 | 72.5 not 70 and 7 not 8 => barbell bench press 3×7 at 72.5 kg
bench 3x8 70 | 7 not 8, 💪, and it was 72.5kg => barbell bench press 3×7 at 72.5 kg
bench 3x8 70 | it was incline and 60 not 70 => incline barbell bench press 3×8 at 60 kg
bench 3x8 70 | it was 72.5 and incline => incline barbell bench press 3×8 at 72.5 kg
bench 3x8 70 | last was 7 and it was incline => incline barbell bench press 2×8 at 70 kg, 7 at 70 kg
ohp 3x5 45 | 4 sets not 3, and that was yesterday => barbell overhead press 4×5 at 45 kg on 2025-03-13
bench 3x8 70 | that was incline and yesterday => incline barbell bench press 3×8 at 70 kg on 2025-03-13
bench 3x8 70 | that was yesterday and incline => incline barbell bench press 3×8 at 70 kg on 2025-03-13
press banca 3x8 70 | era inclinado y ayer => incline barbell bench press 3×8 at 70 kg on 2025-03-13
squat 3x5 100 | het waren 4 sets niet 3 en dat was gisteren => barbell back squat 4×5 at 100 kg on 2025-03-13
squat 3x5 100 | to było wczoraj i 4 serie nie 3 => barbell back squat 4×5 at 100 kg on 2025-03-13
bench 70 8 8 7 // cable row 3x12 50 | bench was 72.5 and the cable row only 2 sets => barbell bench press 2×8 at 72.5 kg, 7 at 72.5 kg; seated cable row 2×12 at 50 kg
squat 3x5 95 | rdl 3x8 80 | move the squat to tuesday and the rdl to wednesday => romanian deadlift 3×8 at 80 kg on 2025-03-12; barbell back squat 3×5 at 95 kg on 2025-03-11
squat 3x5 95 | rdl 3x8 80 | squat was tuesday and rdl was wednesday => romanian deadlift 3×8 at 80 kg on 2025-03-12; barbell back squat 3×5 at 95 kg on 2025-03-11
bench 80x8 82.5x7 | the 80 was 82.5 and the 82.5 was 85 => barbell bench press 8 at 82.5 kg, 7 at 85 kg
bench 3x8 70 | it was 72.5 and 7 reps => barbell bench press 3×8 at 70 kg
bench 80x8 | it was 7 not 8 and tom was 9 => barbell bench press 8 at 80 kg
squat 3x5 100, bench 3x8 60 | squat was 105 and bench was fine => barbell back squat 3×5 at 105 kg; barbell bench press 3×8 at 60 kg
squat 3x5 100 | it was 105, no bench today => barbell back squat 3×5 at 100 kg
squat 3x5 100 | 4 sets not 3 and all were 95 => barbell back squat 4×5 at 95 kg
squat 3x5 100 | first was a warmup and the last a drop set => barbell back squat 5 at 100 kg warmup, 5 at 100 kg, 5 at 100 kg drop
bench 80x8 | it was 7, no warm up => barbell bench press 7 at 80 kg
bench 80x8 | that was 7 and squat 100x5 => barbell bench press 8 at 80 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_several_things_put_right_at_once(told: str, standing: str) -> None:
    assert standing_after(told) == standing
