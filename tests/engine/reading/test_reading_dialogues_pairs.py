"""A load and its reps told of one set, where several stand: of the sets that it can be of, or of none."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

ONE_OF_SEVERAL = """
squat 3x5 100 | the squat was 97.5x5 => barbell back squat 3×5 at 97.5 kg
squat 3x5 100 | that was 97.5x5 => barbell back squat 3×5 at 97.5 kg
squat 100 5 5 4 | the squat was 97.5x4 => barbell back squat 2×5 at 100 kg, 4 at 97.5 kg
squat 60x5 80x4 100x3 | squat was 85x4 => barbell back squat 5 at 60 kg, 4 at 85 kg, 3 at 100 kg
squat 100x5 | 100x5 | the squat was 97.5x4 => barbell back squat 5 at 100 kg, 4 at 97.5 kg
squat 3x5 100 | sorry 97.5x4 => barbell back squat 2×5 at 100 kg, 4 at 97.5 kg
squat 3x5 100 | it was 100x4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | my last set was 90x8 => barbell back squat 2×5 at 100 kg, 8 at 90 kg
squat 100x5 | bench 60x8 | the squat was 97.5x4 => barbell back squat 4 at 97.5 kg; barbell bench press 8 at 60 kg
squat 3x5 100 | it was 97.5x4 => barbell back squat 3×5 at 100 kg
squat 3x5 100 | the squat was 97.5x4 => barbell back squat 3×5 at 100 kg
squat 60x5 80x5 100x5 | it was 97.5x5 => barbell back squat 5 at 60 kg, 5 at 80 kg, 5 at 100 kg
squat 2x5 100 | row 60x8 | barbell | squat was 98x5 => barbell back squat 2×5 at 98 kg; barbell row 8 at 60 kg
squat 100x5 | 100x5 | chins 8 | squat was 98x5 => barbell back squat 2×5 at 100 kg; chin-up 8
"""

NAMED_BY_NUMBERS = """
leg press 50x12 70x6 | 50x12 should be 11 => leg press 11 at 50 kg, 6 at 70 kg
leg press 50x12 70x6 | the 50x12 was 55 => leg press 12 at 55 kg, 6 at 70 kg
leg press 50x12 70x6 | the 50x12 was 52.5x11 => leg press 11 at 52.5 kg, 6 at 70 kg
leg press 50x12 70x6 | delete the 50x12 => leg press 6 at 70 kg
leg press 50x12 70x6 | scrap the 50x12 => leg press 6 at 70 kg
leg press 50x12 70x6 | the 50x12 didnt count => leg press 6 at 70 kg
leg press 50x12 70x6 | make the 50x12 50x11 => leg press 11 at 50 kg, 6 at 70 kg
leg press 50x12 70x6 | the 50x12 was to failure => leg press 12 at 50 kg to failure, 6 at 70 kg
leg press 50x12 70x6 | the 50kg x 12 was a warm up => leg press 12 at 50 kg warmup, 6 at 70 kg
leg press 50x12 70x6 | the 50x12 was in lbs => leg press 12 at 50 lb, 6 at 70 kg
leg press 50x12 70x6 | the 50x12 felt like rpe 7 => leg press 12 at 50 kg RPE 7, 6 at 70 kg
leg press 50x12 70x6 | 50x12 was easy => leg press 12 at 50 kg, 6 at 70 kg
leg press 50x12 70x6 | the 50x12 felt great => leg press 12 at 50 kg, 6 at 70 kg
leg press 50x12 70x6 | the 50x12 was a pr => leg press 12 at 50 kg, 6 at 70 kg
leg press 50x12 70x6 | the 50x12 was yesterday => leg press 6 at 70 kg; leg press 12 at 50 kg on 2025-03-13
leg press 50x12 70x6 | the 50x10 was a warm up => leg press 12 at 50 kg, 6 at 70 kg
leg press 50x12 70x6 | die 50x12 waren zum aufwärmen => leg press 12 at 50 kg warmup, 6 at 70 kg
leg press 50x12 70x6 | el 50x12 era 11 => leg press 11 at 50 kg, 6 at 70 kg
leg press 3x6 70 | the 70x6 was a warm up => leg press 3×6 at 70 kg warmup
pec deck 30x4 | leg press 50x12 | the 30x4 was a warm up => pec deck 4 at 30 kg warmup; leg press 12 at 50 kg
pec deck 30x4 | leg press 50x12 70x6 | the 30x4 should be 5 => pec deck 5 at 30 kg; leg press 12 at 50 kg, 6 at 70 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(ONE_OF_SEVERAL))
def test_a_pair_reaches_the_sets_that_it_can_be_of(told, standing):
    assert standing_after(told).replace("; ", ", ") == standing.replace("; ", ", ")


@pytest.mark.parametrize(("told", "standing"), dialogues(NAMED_BY_NUMBERS))
def test_load_and_reps_ahead_of_a_verb_name_the_set_that_has_them(told, standing):
    assert standing_after(told) == standing
