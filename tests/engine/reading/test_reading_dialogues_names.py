"""Sets under another name, and sets taken away."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
bench 3x8 60 | in pounds => barbell bench press 3×8 at 60 lb
bench 3x8 60 | i meant lbs => barbell bench press 3×8 at 60 lb
plank 60s | no, 50s => plank 50 s
barbell row 3x8 70 | last at 65 => barbell row 2×8 at 70 kg, 8 at 65 kg
barbell row 3x8 70 | last set at 65 => barbell row 2×8 at 70 kg, 8 at 65 kg
incline bench 3x8 24 | those were dumbbells => incline dumbbell bench press 3×8 at 24 kg each
squat 4x6 80 | that was on the smith machine => smith machine squat 4×6 at 80 kg
incline bench 4x6 80 | that was on the smith => smith machine incline press 4×6 at 80 kg
beinpresse 150kg 3x12 | letzten Satz löschen => leg press 2×12 at 150 kg
beinpresse 150kg 3x12 | letzten Satz bitte löschen => leg press 2×12 at 150 kg
leg press 3x12 140 | leg ext 3x15 50 | the leg press was hack squat => hack squat 3×12 at 140 kg; leg extension 3×15 at 50 kg
leg press 3x12 140 | leg ext 3x15 50 | leg press was actually hack squat => hack squat 3×12 at 140 kg; leg extension 3×15 at 50 kg
leg press 3x12 140 | the leg press was hack squat => hack squat 3×12 at 140 kg
leg press 3x12 140 | leg ext 3x15 50 | hack squat not leg press => hack squat 3×12 at 140 kg; leg extension 3×15 at 50 kg
leg press 3x12 140 | leg ext 3x15 50 | i meant hack squat not leg press => hack squat 3×12 at 140 kg; leg extension 3×15 at 50 kg
leg press 3x12 140 | leg ext 3x15 50 | change leg press to hack squat => hack squat 3×12 at 140 kg; leg extension 3×15 at 50 kg
leg press 3x12 140 | leg ext 3x15 50 | the leg ext was leg curl => leg press 3×12 at 140 kg; leg extension 3×15 at 50 kg
bb curl 3x10 30 | the curls were hammer curls => hammer curl 3×10 at 30 kg each
bench 3x10 60 | squat 3x5 100 | the bench was incline => incline barbell bench press 3×10 at 60 kg; barbell back squat 3×5 at 100 kg
bench 3x10 60 | squat 3x5 100 | bench was close grip => close-grip bench press 3×10 at 60 kg; barbell back squat 3×5 at 100 kg
bench 3x10 22 | squat 3x5 100 | the bench was dumbbells => dumbbell bench press 3×10 at 22 kg each; barbell back squat 3×5 at 100 kg
bench 3x10 60 | that was incline => incline barbell bench press 3×10 at 60 kg
bench 3x10 60 | no, incline => incline barbell bench press 3×10 at 60 kg
bench 3x10 60 | incline, sorry => incline barbell bench press 3×10 at 60 kg
bench 3x10 60 | *incline => incline barbell bench press 3×10 at 60 kg
bench 3x10 60 | incline* => incline barbell bench press 3×10 at 60 kg
bench 60x10 | 60x9 | last one was incline => barbell bench press 10 at 60 kg; incline barbell bench press 9 at 60 kg
bench 60x10 | 60x9 | those were close grip => close-grip bench press 10 at 60 kg, 9 at 60 kg
bench 60x10 | 60x9 | both were incline => incline barbell bench press 10 at 60 kg, 9 at 60 kg
squat 3x5 100 | wrong exercise, front squat => barbell front squat 3×5 at 100 kg
squat 3x5 100 | wrong lift, that was deadlift => conventional deadlift 3×5 at 100 kg
squat 3x5 100 | it was front squats not back squats => barbell front squat 3×5 at 100 kg
squat 3x5 100 | that was deadlift not squat => conventional deadlift 3×5 at 100 kg
squat 3x5 100 | meant deadlift => conventional deadlift 3×5 at 100 kg
squat 3x5 100 | should be deadlift => conventional deadlift 3×5 at 100 kg
squat 3x5 100 | make that deadlift => conventional deadlift 3×5 at 100 kg
bench 3x5 80 | squat 3x5 100 | remove the bench => barbell back squat 3×5 at 100 kg
bench 3x5 80 | delete the last two => barbell bench press 5 at 80 kg
bench 3x5 80 | delete the last 2 sets => barbell bench press 5 at 80 kg
bench 3x5 80 | delete last 2 => barbell bench press 5 at 80 kg
bench 3x5 80 | remove the second set => barbell bench press 2×5 at 80 kg
bench 80x5 | 82.5x4 | 85x3 | delete the second one => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | 82.5x4 | 85x3 | delete the 82.5 => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | 82.5x4 | 85x3 | remove the 85 one => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | 85x3 | delete the first two => barbell bench press 3 at 85 kg
bench 80x5 | 82.5x4 | 85x3 | delete the middle one => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | 82.5x4 | 85x3 | remove all of them =>
bench 80x5 | 82.5x4 | 85x3 | delete both => barbell bench press 5 at 80 kg
bench 80x5 | 82.5x4 | squat 100x5 | delete the bench sets => barbell back squat 5 at 100 kg
bench 80x5 | 82.5x4 | squat 100x5 | delete last bench set => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg
bench 80x5 | 82.5x4 | squat 100x5 | remove the last set of bench => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg
bench 80x5 | 82.5x4 | squat 100x5 | delete one bench set => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg
bench 80x5 | 82.5x4 | squat 100x5 | drop the squat => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | squat 100x5 | get rid of the squats => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | squat 100x5 | take the squats out => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | squat 100x5 | i didn't do the squats => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | squat 100x5 | the squat never happened => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | squat 100x5 | delete the deadlift => barbell bench press 5 at 80 kg, 4 at 82.5 kg; barbell back squat 5 at 100 kg
bench 80x5 | 82.5x4 | squat 100x5 | delet the squat => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | squat 100x5 | remvoe the squat => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | scrap the last one => barbell bench press 5 at 80 kg
bench 3x8 80 | scrap the last one, half repped it => barbell bench press 2×8 at 80 kg
bench 3x8 80 | delete the last set, it was a half rep => barbell bench press 2×8 at 80 kg
bench 80x5 | 82.5x4 | the last one doesn't count => barbell bench press 5 at 80 kg
bench 80x5 | 82.5x4 | scratch the last set => barbell bench press 5 at 80 kg
bench 80x5 | 82.5x4 | ignore the last set => barbell bench press 5 at 80 kg
bench 80x5 | 82.5x4 | delete set 1 => barbell bench press 4 at 82.5 kg
bench 80x5 | 82.5x4 | remove the warm up => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | that was wrong => barbell bench press 5 at 80 kg, 4 at 82.5 kg
bench 80x5 | 82.5x4 | that's wrong => barbell bench press 5 at 80 kg, 4 at 82.5 kg
front squat 70x5 | 5 | 5 | all three were back squats => barbell back squat 3×5 at 70 kg
front squat 70x5 | 5 | 5 | all 3 of those were back squats sorry => barbell back squat 3×5 at 70 kg
front squat 70x5 | 5 | all three were back squats => barbell front squat 2×5 at 70 kg
bench 3x8 60 | dumbbells, not barbell => dumbbell bench press 3×8 at 60 kg each
bench 3x8 60 | not barbell, dumbbells => dumbbell bench press 3×8 at 60 kg each
bench 3x8 60 | with dumbbells => dumbbell bench press 3×8 at 60 kg each
db bench 3x8 30 | barbell not dumbbell => barbell bench press 3×8 at 30 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_names(told: str, standing: str) -> None:
    assert standing_after(told) == standing


THE_ONES = """
squat 2x5 100 | bench 2x5 80 | the squat ones were 102.5 => barbell back squat 2×5 at 102.5 kg; barbell bench press 2×5 at 80 kg
bench 2x8 60 | incline bench 2x8 50 | the incline ones were really decline => barbell bench press 2×8 at 60 kg; decline barbell bench press 2×8 at 50 kg
chin ups 8 7 | the chin ups ones were pull ups => pull-up 8, 7
lat raises 3x12 9 | cable ones actually => cable lateral raise 3×12 at 9 kg
lat raises 3x12 9 | they were cable ones => cable lateral raise 3×12 at 9 kg
bench 3x8 60 | the machine ones are taken => barbell bench press 3×8 at 60 kg
overhead press 40x5 | rope face pull 20x12 | the rope ones were 22.5 => barbell overhead press 5 at 40 kg
bench 2x8 60 | bench 2x8 70 | the 60 ones were 9 => barbell bench press 2×9 at 60 kg, 2×8 at 70 kg
bench 2x8 60 | that was really incline => incline barbell bench press 2×8 at 60 kg
bench 2x8 60 | that was really hard => barbell bench press 2×8 at 60 kg
bench 2x8 60 | the good ones were hard => barbell bench press 2×8 at 60 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(THE_ONES))
def test_ones_are_the_lift_whose_word_stands_ahead(told, standing):
    assert standing_after(told) == standing
