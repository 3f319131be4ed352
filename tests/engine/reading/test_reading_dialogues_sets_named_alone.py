"""Sets that are named and nothing told of them, a number at a set, and how a day was. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

NAMED = """
bench 3x8 60 | set 2 and 3 => barbell bench press 3×8 at 60 kg
squat 4x6 80 | sets 2 and 3 => barbell back squat 4×6 at 80 kg
squat 4x6 80 | set two and three => barbell back squat 4×6 at 80 kg
bench 3x8 60 | satz 2 und 3 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | set 2 and 3 were 7 => barbell bench press 8 at 60 kg, 2×7 at 60 kg
squat 4x6 80 | delete set 2 and 3 => barbell back squat 2×6 at 80 kg
"""

ASKED = """
barbell row 3x12 55 | bench 100x5, 2 @ 105x5 => barbell row 3×12 at 55 kg
barbell row 3x12 55 | squat 120x5, 3@125x4 => barbell row 3×12 at 55 kg
pull ups 8 | bench 3x5@100, 2x5@105 => pull-up 8; barbell bench press 3×5 at 100 kg, 2×5 at 105 kg
barbell row 3x12 55 | squat 3x8 60 long day yesterday => barbell row 3×12 at 55 kg
barbell row 3x12 55 | squat 3x8 60, rough day yesterday => barbell row 3×12 at 55 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(NAMED))
def test_sets_named_alone_change_and_add_none(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(ASKED))
def test_a_number_at_a_set_and_how_a_day_was_are_asked_about(told, standing):
    assert standing_after(told) == standing
