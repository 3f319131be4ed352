"""A correction that goes on in the next message, and what a number was not behind "and". Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

GOING_ON = """
leg press 42.5x12 | meant 40 | and 11 reps => leg press 11 at 40 kg
leg press 42.5x12 | meant 40 | and 11 reps, sigh => leg press 11 at 40 kg
leg press 42.5x12 | meant 40 | and i got 11 reps => leg press 11 at 40 kg
leg press 42.5x12 | no, 40 | y 11 reps => leg press 11 at 40 kg
leg press 42.5x12 | no, 40 | und 11 wdh => leg press 11 at 40 kg
leg press 42.5x12 | no, 40 | en 11 reps => leg press 11 at 40 kg
leg press 42.5x12 | no, 40 | i 11 powt => leg press 11 at 40 kg
leg press 42.5x12 | meant 11 reps | and 40 kg => leg press 11 at 40 kg
leg press 42.5x12 | meant 40 | and 12 reps => leg press 12 at 40 kg
leg press 42.5 3x12 | meant 40 | and 11 reps => leg press 3×12 at 40 kg
leg press 42.5x12 | and 11 reps => leg press 12 at 42.5 kg, 11 at 42.5 kg
leg press 42.5x12 | no, 40 | squat 99x5 | and 6 reps => leg press 12 at 40 kg; barbell back squat 5 at 99 kg, 6 at 99 kg
plank 60s | meant 70s | and 10 reps => plank 70 s
"""

AND_NOT = """
sentadilla 3x6 82.5 | perdón, eran 77,5 y no 82,5 => barbell back squat 3×6 at 77.5 kg
sentadilla 3x6 82.5 | 77,5 y no 82,5 => barbell back squat 3×6 at 77.5 kg
sentadilla 3x6 82.5 | eran 5 repes y no 6 => barbell back squat 3×5 at 82.5 kg
sentadilla 3x6 82.5 | eran 77,5 kg, y no 82,5 kg => barbell back squat 3×6 at 77.5 kg
sentadilla 3x6 82.5 | oops eran 2 series y no 3 => barbell back squat 2×6 at 82.5 kg
squat 3x6 82.5 | it was 77.5 and not 82.5 => barbell back squat 3×6 at 77.5 kg
squat 3x6 82.5 | waren 77,5 und nicht 82,5 => barbell back squat 3×6 at 77.5 kg
squat 3x6 82.5 | c'était 77,5 et pas 82,5 => barbell back squat 3×6 at 77.5 kg
squat 3x6 82.5 | erano 77,5 e non 82,5 => barbell back squat 3×6 at 77.5 kg
squat 3x6 82.5 | het was 77,5 en niet 82,5 => barbell back squat 3×6 at 77.5 kg
squat 3x6 82.5 | foram 77,5 e não 82,5 => barbell back squat 3×6 at 77.5 kg
squat 3x6 82.5 | było 77,5 a nie 82,5 => barbell back squat 3×6 at 77.5 kg
squat 3x6 82.5 | было 77,5 а не 82,5 => barbell back squat 3×6 at 77.5 kg
squat 3x6 82.5 | det var 77,5 och inte 82,5 => barbell back squat 3×6 at 77.5 kg
sentadilla 3x6 82.5 | eran 77,5 y no 80 => barbell back squat 3×6 at 82.5 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(GOING_ON))
def test_reps_with_and_behind_a_correction_are_of_the_set_put_right(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(AND_NOT))
def test_the_number_that_it_was_not_may_stand_behind_and(told, standing):
    assert standing_after(told) == standing
