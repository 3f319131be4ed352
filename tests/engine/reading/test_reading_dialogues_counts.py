"""Sets told again, all of them, or fewer and more."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
bench 3x5 80 | the last set was only 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | last set was 4 reps => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | only 4 on the last set => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | only got 4 on the last one => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | got 4 on the last => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | set 3 was 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | 3rd set 4 reps => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | third set at 75 => barbell bench press 2×5 at 80 kg, 5 at 75 kg
bench 3x5 80 | last was at 75 for 4 => barbell bench press 2×5 at 80 kg, 4 at 75 kg
bench 3x5 80 | last set was 75x4 => barbell bench press 2×5 at 80 kg, 4 at 75 kg
bench 3x5 80 | the second was 82.5 => barbell bench press 5 at 80 kg, 5 at 82.5 kg, 5 at 80 kg
bench 3x5 80 | second at 82.5 => barbell bench press 5 at 80 kg, 5 at 82.5 kg, 5 at 80 kg
bench 3x5 80 | first was 77.5, rest at 80 => barbell bench press 5 at 77.5 kg, 2×5 at 80 kg
bench 3x5 80 | it was 5 5 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | 5 5 4 sorry => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | sorry 5 5 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | no, 5/5/4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | should be 5,5,4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | i mean 5 5 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg
bench 3x5 80 | actually 5,4,4 => barbell bench press 5 at 80 kg, 2×4 at 80 kg
bench 3x5 80 | it was 3x6 => barbell bench press 3×6 at 80 kg
bench 3x5 80 | 3x6 not 3x5 => barbell bench press 3×6 at 80 kg
bench 3x5 80 | sorry 3x6 => barbell bench press 3×6 at 80 kg
bench 3x5 80 | 4x5 sorry => barbell bench press 4×5 at 80 kg
bench 3x5 80 | that was 5x3 => barbell bench press 5×3 at 80 kg
bench 3x5 80 | make it 4x5 => barbell bench press 4×5 at 80 kg
bench 3x5 80 | make it 4 sets => barbell bench press 4×5 at 80 kg
bench 3x5 80 | no, 2 sets => barbell bench press 2×5 at 80 kg
bench 3x5 80 | it was four sets => barbell bench press 4×5 at 80 kg
bench 3x5 80 | only 2 sets sorry => barbell bench press 2×5 at 80 kg
bench 3x5 80 | only did 2 of them => barbell bench press 2×5 at 80 kg
bench 3x5 80 | just did two => barbell bench press 2×5 at 80 kg
bench 3x5 80 | only managed 2 sets => barbell bench press 2×5 at 80 kg
bench 3x5 80 | all were 6 => barbell bench press 3×6 at 80 kg
bench 3x5 80 | they were 6s => barbell bench press 3×6 at 80 kg
bench 3x5 80 | those were 6 reps => barbell bench press 3×6 at 80 kg
bench 3x5 80 | all 6s => barbell bench press 3×6 at 80 kg
bench 3x5 80 | all sets were 6 => barbell bench press 3×6 at 80 kg
bench 3x5 80 | each was 6 => barbell bench press 3×6 at 80 kg
bench 3x5 80 | all at 82.5 => barbell bench press 3×5 at 82.5 kg
bench 3x5 80 | all of them at 82.5 => barbell bench press 3×5 at 82.5 kg
bench 3x5 80 | they were at 82.5 => barbell bench press 3×5 at 82.5 kg
bench 3x5 80 | those were 82.5 => barbell bench press 3×5 at 82.5 kg
bench 3x5 80 | it was 82.5 for all of them => barbell bench press 3×5 at 82.5 kg
bench 3x5 80 | first two at 75 => barbell bench press 2×5 at 75 kg, 5 at 80 kg
bench 3x5 80 | the first two sets were at 75 => barbell bench press 2×5 at 75 kg, 5 at 80 kg
bench 3x5 80 | last two at 75 => barbell bench press 5 at 80 kg, 2×5 at 75 kg
bench 3x5 80 | last 2 sets were 75 => barbell bench press 5 at 80 kg, 2×5 at 75 kg
bench 3x5 80 | the last two were 4s => barbell bench press 5 at 80 kg, 2×4 at 80 kg
bench 3x5 80 | sets 2 and 3 were 4 => barbell bench press 5 at 80 kg, 2×4 at 80 kg
bench 3x5 80 | set 1 and 2 were 6 => barbell bench press 2×6 at 80 kg, 5 at 80 kg
bench 3x5 80 | first and last were 6 => barbell bench press 6 at 80 kg, 5 at 80 kg, 6 at 80 kg
bench 3x5 80 | set 1 6, set 3 4 => barbell bench press 6 at 80 kg, 5 at 80 kg, 4 at 80 kg
bench 3x5 80 | first one was 6, last one was 4 => barbell bench press 6 at 80 kg, 5 at 80 kg, 4 at 80 kg
bench 3x5 80 | squat 3x5 100 | bench last set was 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | the last bench set was 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | last set of bench was 4 => barbell bench press 2×5 at 80 kg, 4 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | the second bench set was 4 => barbell bench press 5 at 80 kg, 4 at 80 kg, 5 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | set 2 of bench was 4 => barbell bench press 5 at 80 kg, 4 at 80 kg, 5 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | bench set 2 was 4 => barbell bench press 5 at 80 kg, 4 at 80 kg, 5 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | first bench set was a warm up => barbell bench press 5 at 80 kg warmup, 2×5 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | bench was only 2 sets => barbell bench press 2×5 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | bench was 82.5 not 80 => barbell bench press 3×5 at 82.5 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | 82.5 not 80 => barbell bench press 3×5 at 82.5 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | 82.5 on bench not 80 => barbell bench press 3×5 at 82.5 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | bench rpe 8 => barbell bench press 3×5 at 80 kg RPE 8; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | the bench was rpe 8 => barbell bench press 3×5 at 80 kg RPE 8; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | last bench set rpe 9 => barbell bench press 2×5 at 80 kg, 5 at 80 kg RPE 9; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | bench was in lbs => barbell bench press 3×5 at 80 lb; barbell back squat 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | bench 4 sets not 3 => barbell bench press 3×5 at 80 kg; barbell back squat 3×5 at 100 kg; barbell bench press 5 at 80 kg
bench 3x5 80 | squat 3x5 100 | both were 3x6 => barbell bench press 3×6 at 80 kg; barbell back squat 3×6 at 100 kg
bench 3x5 80 // squat 3x5 100 // curl bb 3x10 30 | squat was 102.5 => barbell bench press 3×5 at 80 kg; barbell back squat 3×5 at 102.5 kg; barbell curl 3×10 at 30 kg
bench 3x5 80 // squat 3x5 100 // bb curl 3x10 30 | curls were 32.5 => barbell bench press 3×5 at 80 kg; barbell back squat 3×5 at 100 kg; barbell curl 3×10 at 32.5 kg
bench 3x5 80 // squat 3x5 100 // bb curl 3x10 30 | squat was only 2 sets => barbell bench press 3×5 at 80 kg; barbell back squat 2×5 at 100 kg; barbell curl 3×10 at 30 kg
bench 3x5 80 // squat 3x5 100 // bb curl 3x10 30 | remove the curls => barbell bench press 3×5 at 80 kg; barbell back squat 3×5 at 100 kg
bench 3x5 80 // squat 3x5 100 // bb curl 3x10 30 | the curls were 12 reps => barbell bench press 3×5 at 80 kg; barbell back squat 3×5 at 100 kg; barbell curl 3×12 at 30 kg
bench 3x5 80 // squat 3x5 100 // bb curl 3x10 30 | all of it was yesterday => barbell bench press 3×5 at 80 kg; barbell back squat 3×5 at 100 kg; barbell curl 3×10 at 30 kg on 2025-03-13
bench 3x5 80 // squat 3x5 100 // bb curl 3x10 30 | that was yesterday => barbell bench press 3×5 at 80 kg; barbell back squat 3×5 at 100 kg; barbell curl 3×10 at 30 kg on 2025-03-13
bench 3x5 80 // squat 3x5 100 // bb curl 3x10 30 | last set was 8 => barbell bench press 3×5 at 80 kg; barbell back squat 3×5 at 100 kg; barbell curl 2×10 at 30 kg, 8 at 30 kg
lateral raise 12x10 | 12 kg | other way round => dumbbell lateral raise 12 at 10 kg each
lateral raise 12kg x10 | other way round => dumbbell lateral raise 12 at 10 kg each
lateral raise 12kg x10 | swapped reps and weight => dumbbell lateral raise 12 at 10 kg each
lateral raise 12kg x10 | wrong way round => dumbbell lateral raise 12 at 10 kg each
lateral raise 12kg x10 | it was 10kg x 12 => dumbbell lateral raise 12 at 10 kg each
lateral raise 12kg x10 | sorry 10 kg x 12 => dumbbell lateral raise 12 at 10 kg each
lateral raise 12kg x10 | oops 10kg for 12 => dumbbell lateral raise 12 at 10 kg each
lateral raise 12kg x10 | i mixed up reps and weight => dumbbell lateral raise 12 at 10 kg each
bench 3x5 80 | 5 sets of 3 not 3 sets of 5 => barbell bench press 5×3 at 80 kg
bench 3x5 80 | other way round, 5x3 => barbell bench press 5×3 at 80 kg
plank 60s | 50 not 60 => plank 50 s
plank 60s | it was 50 => plank 50 s
plank 60s | 50 sec sorry => plank 50 s
plank 3x60s | last one was 40 => plank 2×60 s, 40 s
pull ups 10 8 7 | last was 6 => pull-up 10, 8, 6
pull ups 10 8 7 | second was 9 => pull-up 10, 9, 7
pull ups 10 8 7 | the 7 was 6 => pull-up 10, 8, 6
pull ups 10 8 7 | 9 not 8 => pull-up 10, 9, 7
pull ups 10 8 7 | those were +5kg => pull-up 10 at +5 kg, 8 at +5 kg, 7 at +5 kg
pull ups 10 8 7 | they were weighted, 5kg => pull-up 10 at +5 kg, 8 at +5 kg, 7 at +5 kg
pull ups 10 8 7 | it was 10 8 8 => pull-up 10, 2×8
dips +10 3x8 | +15 not +10 => dip 3×8 at +15 kg
dips +10 3x8 | 15kg not 10 => dip 3×8 at +15 kg
leg press 3x12 145 | did 4 of those, not 3 => leg press 4×12 at 145 kg
leg press 3x12 145 | actualy it was 4 of them not 3 => leg press 4×12 at 145 kg
leg press 3x12 145 | 2 not 3 => leg press 2×12 at 145 kg
leg press 3x3 145 | 2 not 3 => leg press 3×2 at 145 kg
leg press 4x10 180 | only the first three => leg press 3×10 at 180 kg
leg press 4x10 180 | only the first two counted => leg press 2×10 at 180 kg
leg press 4x10 180 | i stopped after 3 => leg press 3×10 at 180 kg
leg press 4x10 180 | there was a fifth set too => leg press 5×10 at 180 kg
leg press 4x10 180 | did a 5th => leg press 5×10 at 180 kg
leg press 4x10 180 | the 5th was 8 => leg press 4×10 at 180 kg
squat 100x6 | bench 60x5 | it was 5 not 6 => barbell back squat 6 at 100 kg; barbell bench press 5 at 60 kg
squat 100x6 | bench 60x5 | the squat was 5 not 6 => barbell back squat 5 at 100 kg; barbell bench press 5 at 60 kg
bench 60x8 60x8 60x7 | first was 7 second 6 => barbell bench press 7 at 60 kg, 6 at 60 kg, 7 at 60 kg
bench 60x8 60x8 60x7 | first 7 second 6 third 5 => barbell bench press 7 at 60 kg, 6 at 60 kg, 5 at 60 kg
plank 60s 60s | first was 50 second => plank 50 s, 60 s
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_counts(told: str, standing: str) -> None:
    assert standing_after(told) == standing
