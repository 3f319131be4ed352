"""What was on the bar, or what the bar weighs, beside the load that is put right. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

GEAR = """
ohp 3x5 40 | chin ups 8 8 | just noticed i had 1.25s on. the ohp was 42.5 => \
barbell overhead press 3×5 at 42.5 kg; chin-up 2×8
ohp 3x5 40 | dips 8 8 | had the 2.5s on, the press was 45 => barbell overhead press 3×5 at 45 kg; dip 2×8
squat 3x5 100 | forgot the 5 plates, the squat was 110 => barbell back squat 3×5 at 110 kg
squat 2x5 100 | rdl 2x8 80 | theres 2.5s on there, squats were 105 => \
barbell back squat 2×5 at 105 kg; romanian deadlift 2×8 at 80 kg
bench 60x8 | actually 55, used the technique bar which is 15 => barbell bench press 8 at 55 kg
bench 60x8 | sorry 55, the bar was 15 not 20 => barbell bench press 8 at 55 kg
bench 60x8 | it was 55, short bar is 15 kg => barbell bench press 8 at 55 kg
"""
STILL_SETS = """
db bench 24 10 10 | those were the 28s. last one 7 => dumbbell bench press 10 at 28 kg each, 7 at 28 kg each
dips 8 8 | those had 10kg on => dip 2×8 at +10 kg
bench 4x6 75 | hold on the bar is 15 so 70 => barbell bench press 4×6 at 75 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(GEAR.replace("\\\n", "")))
def test_gear_beside_a_new_load_changes_nothing_else(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(STILL_SETS))
def test_loads_that_were_held_are_put_right_as_before(told, standing):
    assert standing_after(told) == standing
