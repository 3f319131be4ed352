"""Another lift, unit or load for sets that it loads otherwise: no load is made up. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

OF_THE_BODY_ALONE = """
pull ups 12 | i meant squat => barbell back squat 12
push ups 20 18 | those were bench => barbell bench press 20, 18
bodyweight squat 20 | that was goblet squat => goblet squat 20
pull ups +10kg 6 | i meant lat pulldown => lat pulldown 6 at 10 kg
"""

TIMED = """
plank 45s | i meant bench => plank 45 s
plank 3x40s | that was squat => plank 3×40 s
plank 45s | that was side plank => side plank 45 s
"""

NO_LOAD = """
pull ups 10 9 | lbs not kg => pull-up 10, 9
plank 45s | that was in pounds => plank 45 s
squat 3x5 185 | lbs not kg => barbell back squat 3×5 at 185 lb
"""

A_FIRST_LOAD = """
dumbbell curl 12 | make that 14kg => dumbbell curl 12 at 14 kg each
dumbbell bench 9 reps | that was with 30kg => dumbbell bench press 9 at 30 kg each
lat pulldown 12 | that was 50kg => lat pulldown 12 at 50 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(OF_THE_BODY_ALONE))
def test_sets_of_the_body_alone_give_another_lift_no_load(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(TIMED))
def test_seconds_of_a_hold_go_to_no_lift_that_is_counted_in_reps(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(NO_LOAD))
def test_a_unit_is_put_right_where_there_is_a_load(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(A_FIRST_LOAD))
def test_a_load_told_later_is_as_the_lift_has_it(told, standing):
    assert standing_after(told) == standing
