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


@pytest.mark.parametrize(("told", "standing"), dialogues(ONE_OF_SEVERAL))
def test_a_pair_reaches_the_sets_that_it_can_be_of(told, standing):
    assert standing_after(told).replace("; ", ", ") == standing.replace("; ", ", ")
