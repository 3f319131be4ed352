"""Corrections told with how they came about, with another sort of the lift, and as sets added or taken off."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

SET_RIGHT = """
squat 3x5 100 | dropped to 95 on the last => barbell back squat 2×5 at 100 kg, 5 at 95 kg
squat 3x5 100 | had to drop to 95 on the last set => barbell back squat 2×5 at 100 kg, 5 at 95 kg
squat 3x5 100 | dropped to 95kg for the last two => barbell back squat 5 at 100 kg, 2×5 at 95 kg
squat 3x5 100 | dropped the last two to 95 => barbell back squat 5 at 100 kg, 2×5 at 95 kg
squat 3x5 100 | went up to 105 on the last one => barbell back squat 2×5 at 100 kg, 5 at 105 kg
squat 3x5 100 | dropped to 95 on set 2 => barbell back squat 5 at 100 kg, 5 at 95 kg, 5 at 100 kg
row 3x8 60 barbell | bumped it to 65 for the last => barbell row 2×8 at 60 kg, 8 at 65 kg
squat 3x5 100 | did the last two at 95 => barbell back squat 5 at 100 kg, 2×5 at 95 kg
squat 3x5 100 | did the last set at 95 => barbell back squat 2×5 at 100 kg, 5 at 95 kg
squat 3x5 100 | dropped to 4 on the last => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | dropped to 80 for 8 => barbell back squat 3×5 at 100 kg, 8 at 80 kg
squat 3x5 100 | front not back => barbell front squat 3×5 at 100 kg
squat 3x5 100 | front, not back => barbell front squat 3×5 at 100 kg
squat 3x5 100 | it was front => barbell front squat 3×5 at 100 kg
front squat 3x5 80 | back not front => barbell back squat 3×5 at 80 kg
deadlift 3x5 100 | sumo not conventional => sumo deadlift 3×5 at 100 kg
cable row 3x10 60 | incline not flat => seated cable row 3×10 at 60 kg
squat 3x5 100 | back was sore => barbell back squat 3×5 at 100 kg
hammer curl 3x10 12 | all wer 12 => hammer curl 3×12 at 12 kg each
hammer curl 3x10 12 | they wre all 12 => hammer curl 3×12 at 12 kg each
squat 3x5 100 | add a set => barbell back squat 4×5 at 100 kg
squat 3x5 100 | add 2 sets => barbell back squat 5×5 at 100 kg
squat 3x5 100 | add one more set please => barbell back squat 4×5 at 100 kg
squat 3x5 100 | add 5 kg => barbell back squat 3×5 at 100 kg
squat 3x5 100 | remove a set => barbell back squat 2×5 at 100 kg
squat 3x5 100 | press 40x6 overhead | bench 60x8 | delete the squat and the bench => barbell overhead press 6 at 40 kg
squat 100x5 | bench 60x8 | delete squat and row => barbell back squat 5 at 100 kg; barbell bench press 8 at 60 kg
squat 3x5 100 | take a set off => barbell back squat 2×5 at 100 kg
"""


@pytest.mark.parametrize(("messages", "standing"), dialogues(SET_RIGHT))
def test_what_stands_is_set_right(messages, standing):
    assert standing_after(messages) == standing
