"""Parts of what stands that a correction points at: places, loads, marks told later."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
deadlift 60x5 100x5 140x5 | drop the 60 => conventional deadlift 5 at 100 kg, 5 at 140 kg
deadlift 3x5 140 | only got 4 on the third => conventional deadlift 2×5 at 140 kg, 4 at 140 kg
deadlift 3x5 140 | 4 on the 2nd => conventional deadlift 5 at 140 kg, 4 at 140 kg, 5 at 140 kg
deadlift 140x5 | only 4 counted => conventional deadlift 4 at 140 kg
deadlift 140x5 | only 4 were good => conventional deadlift 4 at 140 kg
deadlift 3x5 140 | only 2 counted => conventional deadlift 2×5 at 140 kg
bench 80x5 | that one rpe 8 => barbell bench press 5 at 80 kg RPE 8
bench 80x5 | rpe 8 on that one => barbell bench press 5 at 80 kg RPE 8
bench 80x5 | that was an rpe 9 => barbell bench press 5 at 80 kg RPE 9
bench 80x5 | the last one was rpe 9 => barbell bench press 5 at 80 kg RPE 9
bench 80 5 5 5 | last one rpe 9 => barbell bench press 2×5 at 80 kg, 5 at 80 kg RPE 9
bench 80 5 5 5 | rpe 7, 8, 9 => barbell bench press 5 at 80 kg RPE 7, 5 at 80 kg RPE 8, 5 at 80 kg RPE 9
bench 80 5 5 5 | first one rpe 7 => barbell bench press 5 at 80 kg RPE 7, 2×5 at 80 kg
bench 80 5 5 5 | the second one was rpe 8 => barbell bench press 5 at 80 kg, 5 at 80 kg RPE 8, 5 at 80 kg
bench 80 5 5 5 | 2 in the tank on the last one => barbell bench press 2×5 at 80 kg, 5 at 80 kg 2 in reserve
bench 80x5 | had 2 left => barbell bench press 5 at 80 kg 2 in reserve
bench 80x5 | had one left in me => barbell bench press 5 at 80 kg 1 in reserve
bench 80x5 | that one was easy => barbell bench press 5 at 80 kg
bench 80x5 | that one felt heavy => barbell bench press 5 at 80 kg
bench 80x5 | left knee twinged on the last one => barbell bench press 5 at 80 kg
bench 80x5 | no one was here today => barbell bench press 5 at 80 kg
bench 80x5 | one of the guys helped me => barbell bench press 5 at 80 kg
bench 80x5 | this one is hard => barbell bench press 5 at 80 kg
bench 80x5 | the other one was better => barbell bench press 5 at 80 kg
bench 80x5 | that one was to failure => barbell bench press 5 at 80 kg to failure
bench 80 5 5 4 | failed the last one => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
bench 80 5 5 4 | last one failed => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
bench 80x5 | rir 2 that one => barbell bench press 5 at 80 kg 2 in reserve
bench 80x5 | @8 that one => barbell bench press 5 at 80 kg RPE 8
bench 80x5 | last set @9 => barbell bench press 5 at 80 kg RPE 9
bench 80x5 | that was @8.5 => barbell bench press 5 at 80 kg RPE 8.5
bench 3x5 80 | all rpe 8 => barbell bench press 3×5 at 80 kg RPE 8
bench 3x5 80 | all of them rpe 8 => barbell bench press 3×5 at 80 kg RPE 8
bench 3x5 80 | they were all rpe 8 => barbell bench press 3×5 at 80 kg RPE 8
bench 3x5 80 | the first two were rpe 7 => barbell bench press 2×5 at 80 kg RPE 7, 5 at 80 kg
bench 3x5 80 | rpe 9 last set => barbell bench press 2×5 at 80 kg, 5 at 80 kg RPE 9
bench 3x5 80 | set 2 to failure => barbell bench press 5 at 80 kg, 5 at 80 kg to failure, 5 at 80 kg
bench 3x5 80 | the middle one was rpe 9 => barbell bench press 5 at 80 kg, 5 at 80 kg RPE 9, 5 at 80 kg
ohp 40 8 8 8 | second set was 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 8 8 | the second was 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 8 8 | third one was 7 => barbell overhead press 2×8 at 40 kg, 7 at 40 kg
ohp 40 8 8 8 | the third set was 7 => barbell overhead press 2×8 at 40 kg, 7 at 40 kg
ohp 40 8 8 8 | the middle one was 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 8 8 | middle set was 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 8 8 | the first was 9 => barbell overhead press 9 at 40 kg, 2×8 at 40 kg
ohp 40 8 8 8 | first one 9 => barbell overhead press 9 at 40 kg, 2×8 at 40 kg
ohp 40 8 8 8 | 2nd was 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 8 8 | third was only 6 => barbell overhead press 2×8 at 40 kg, 6 at 40 kg
ohp 40 8 8 8 | the last one was only 6 => barbell overhead press 2×8 at 40 kg, 6 at 40 kg
ohp 40 8 8 8 | make the second one 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 8 8 | change the third to 7 => barbell overhead press 2×8 at 40 kg, 7 at 40 kg
ohp 40 8 8 8 | second 7, third 6 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 6 at 40 kg
ohp 40 8 8 8 | 8 7 6 not 8 8 8 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 6 at 40 kg
ohp 40 8 8 8 | it was 8 7 6 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 6 at 40 kg
ohp 40 8 8 8 | the reps were 8 7 6 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 6 at 40 kg
ohp 40 8 8 8 | second to last was 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 8 8 | the last two were 7 => barbell overhead press 8 at 40 kg, 2×7 at 40 kg
ohp 40 8 8 8 | the first two were 9 => barbell overhead press 2×9 at 40 kg, 8 at 40 kg
ohp 40 8 8 8 | last two were 42.5 => barbell overhead press 8 at 40 kg, 2×8 at 42.5 kg
ohp 40 8 8 8 | both last sets were 7 => barbell overhead press 8 at 40 kg, 2×7 at 40 kg
ohp 40 8 | 8 | 8 | second set was 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 | 8 | 8 | the middle one was 42.5 => barbell overhead press 8 at 40 kg, 8 at 42.5 kg, 8 at 40 kg
ohp 40 8 | 8 | 8 | set two was 7 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 8 at 40 kg
ohp 40 8 | 8 | 8 | fourth set was 7 => barbell overhead press 3×8 at 40 kg
ohp 40 8 | 8 | 8 | set 4 was 7 => barbell overhead press 3×8 at 40 kg
squat 80x5 | 90x5 | 100x5 | the middle one was 92.5 => barbell back squat 5 at 80 kg, 5 at 92.5 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | second one was 92.5 => barbell back squat 5 at 80 kg, 5 at 92.5 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | the 90 was 92.5 => barbell back squat 5 at 80 kg, 5 at 92.5 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | the 90 was for 4 => barbell back squat 5 at 80 kg, 4 at 90 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | 90 was 4 reps => barbell back squat 5 at 80 kg, 4 at 90 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | 92.5 not 90 => barbell back squat 5 at 80 kg, 5 at 92.5 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | the 80 and 90 were warm ups => barbell back squat 5 at 80 kg warmup, 5 at 90 kg warmup, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | the 80 was a warm up => barbell back squat 5 at 80 kg warmup, 5 at 90 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | 80 was warmup => barbell back squat 5 at 80 kg warmup, 5 at 90 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | 80kg was just a warmup => barbell back squat 5 at 80 kg warmup, 5 at 90 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | first one was a warm up => barbell back squat 5 at 80 kg warmup, 5 at 90 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | the first two were warm up sets => barbell back squat 5 at 80 kg warmup, 5 at 90 kg warmup, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | everything but the last was warm up => barbell back squat 5 at 80 kg warmup, 5 at 90 kg warmup, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | that was a warm up => barbell back squat 5 at 80 kg, 5 at 90 kg, 5 at 100 kg warmup
squat 80x5 | 90x5 | 100x5 | the lightest was a warm up => barbell back squat 5 at 80 kg warmup, 5 at 90 kg, 5 at 100 kg
squat 80x5 | 90x5 | 100x5 | the 100 was rpe 9 => barbell back squat 5 at 80 kg, 5 at 90 kg, 5 at 100 kg RPE 9
squat 80x5 | 90x5 | 100x5 | the 70 was a warm up => barbell back squat 5 at 80 kg, 5 at 90 kg, 5 at 100 kg
bench 60x10, 80x5 | 60x10 was a warm up => barbell bench press 10 at 60 kg warmup, 5 at 80 kg
bench 60x10, 80x5 | the 60x10 was just warm up => barbell bench press 10 at 60 kg warmup, 5 at 80 kg
bench 60x10, 80x5 | mark the first as warm up => barbell bench press 10 at 60 kg warmup, 5 at 80 kg
bench 60x10 | warm up that was => barbell bench press 10 at 60 kg warmup
bench 80x5 85x3 90x1 | missed the 90 => barbell bench press 5 at 80 kg, 3 at 85 kg, 0 at 90 kg missed
bench 80x5 85x3 90x1 | the 85 was for 4 => barbell bench press 5 at 80 kg, 4 at 85 kg, 1 at 90 kg
squat 4x5 100 | all good except the last set, only got 3 => barbell back squat 3×5 at 100 kg, 3 at 100 kg
squat 4x5 100 | all fine except the third set, that was 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg, 5 at 100 kg
squat 4x5 100 | everything except the last set was 4 => barbell back squat 3×4 at 100 kg, 5 at 100 kg
squat 4x5 100 | as planned apart from the last set, only got 3 => barbell back squat 4×5 at 100 kg
bench 80x5 85x3 90x1 | all but the last were warm ups => barbell bench press 5 at 80 kg warmup, 3 at 85 kg warmup, 1 at 90 kg
bench 80x5 | dips 10 | 9 | the dips were 12 and 11 => barbell bench press 5 at 80 kg; dip 12, 11
bench 80x5 | dips 12 10 8 | last two dips were 9 and 7 => barbell bench press 5 at 80 kg; dip 12, 9, 7
leg press 3x12 150 | it was 160 for the last one => leg press 2×12 at 150 kg, 12 at 160 kg
leg press 3x12 150 | 10 not 12 on the last set => leg press 2×12 at 150 kg, 10 at 150 kg
leg press 3x12 150 | last one 160 not 150 => leg press 2×12 at 150 kg, 12 at 160 kg
bench 60x8 | 8 | 8 | and 7 on the third => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60x8 | 8 | and 7 on the third => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60x8 | 8 | 8 | all three were at 62.5 => barbell bench press 3×8 at 62.5 kg
bench 60x8 | felt like a 9 => barbell bench press 8 at 60 kg RPE 9
bench 60x8 | squat 100x5 | bench felt like an 8 => barbell bench press 8 at 60 kg RPE 8; barbell back squat 5 at 100 kg
bench 60x8 felt like an 8 => barbell bench press 8 at 60 kg RPE 8
bench 60x8 | felt like 8 reps => barbell bench press 8 at 60 kg
cable row 3x12 50 | 45 for the last => seated cable row 2×12 at 50 kg, 12 at 45 kg
cable row 3x12 50 | last one 45kg => seated cable row 2×12 at 50 kg, 12 at 45 kg
cable row 3x12 50 | 45kg for set 3 => seated cable row 2×12 at 50 kg, 12 at 45 kg
cable row 3x12 50 | 10 on set 3 => seated cable row 2×12 at 50 kg, 10 at 50 kg
cable row 3x12 50 | set 3: 10 => seated cable row 2×12 at 50 kg, 10 at 50 kg
cable row 50x12 | set 2: 11 | set 3: 10 => seated cable row 12 at 50 kg, 11 at 50 kg, 10 at 50 kg
cable row 50x12 | last one 45kg => seated cable row 12 at 50 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_parts(told: str, standing: str) -> None:
    assert standing_after(told) == standing
