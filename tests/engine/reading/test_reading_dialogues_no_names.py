"""Words that are also the names of lifts, behind sets that stand: they rename nothing. And what the rename still is."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

NO_NAMES = """
squat 3x5 100 | wrong log, ignore => barbell back squat 3×5 at 100 kg
squat 3x5 100 | wrong log => barbell back squat 3×5 at 100 kg
squat 3x5 100 | the log was wrong => barbell back squat 3×5 at 100 kg
squat 3x5 100 | that was a hack lol => barbell back squat 3×5 at 100 kg
squat 3x5 100 | that was a good morning workout => barbell back squat 3×5 at 100 kg
squat 3x5 100 | that was easy, good morning all => barbell back squat 3×5 at 100 kg
squat 3x5 100 | that was a snatch of a session => barbell back squat 3×5 at 100 kg
squat 3x5 100 | sorry that was my dip partner's => barbell back squat 3×5 at 100 kg
squat 3x5 100 | that was front squat day => barbell back squat 3×5 at 100 kg
squat 3x5 100 | it wasn't a front squat => barbell back squat 3×5 at 100 kg
deadlift 3x5 100 | that was not sumo => conventional deadlift 3×5 at 100 kg
deadlift 3x5 100 | that wasn't sumo, it was conventional => conventional deadlift 3×5 at 100 kg
bench 3x5 100 | that was on incline day, normal bench though => barbell bench press 3×5 at 100 kg
"""

NAMES = """
bench 3x5 100 | that was incline => incline barbell bench press 3×5 at 100 kg
bench 3x5 100 | that was an incline => incline barbell bench press 3×5 at 100 kg
bench 3x5 100 | it was dumbbells => dumbbell bench press 3×5 at 100 kg each
bench 3x5 100 | wrong exercise, that was incline => incline barbell bench press 3×5 at 100 kg
bench 3x5 100 | that was my incline, sorry => incline barbell bench press 3×5 at 100 kg
squat 3x5 100 | that was a front squat lol => barbell front squat 3×5 at 100 kg
squat 3x5 100 | that was front squat bro => barbell front squat 3×5 at 100 kg
squat 3x5 100 | that was a hack squat => hack squat 3×5 at 100 kg
squat 3x5 100 | that wasn't a back squat, it was a front squat => barbell front squat 3×5 at 100 kg
squat 3x5 100 | wrong, log press => log press 3×5 at 100 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(NO_NAMES))
def test_words_that_rename_nothing(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(NAMES))
def test_the_whole_name_renames(told: str, standing: str) -> None:
    assert standing_after(told) == standing
