"""Days of their own, what a formula makes of a set, two at a bar, and what it was. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

RECKONED = """
bench 110x1 (116x1 est) => barbell bench press 1 at 110 kg
bench 110x1 e1rm 116x1 => barbell bench press 1 at 110 kg
squat 100x5 (e1rm 117x1) => barbell back squat 5 at 100 kg
deadlift 140x3 (154x1 estimated) => conventional deadlift 3 at 140 kg
kniebeuge 100x5 (117x1 geschätzt) => barbell back squat 5 at 100 kg
squat 105x5 melhor que segunda 100x5 => barbell back squat 5 at 105 kg
"""

ASKED = """
bench 60x5 | squat today 105x5 monday 100x5 => barbell bench press 5 at 60 kg
bench 60x5 | today squat 105x5 monday 100x5 => barbell bench press 5 at 60 kg
bench 60x5 | squat heute 105x5 montag 100x5 => barbell bench press 5 at 60 kg
bench 60x5 | squat 105x5 today 100x5 monday => barbell bench press 5 at 60 kg
bench 60x5 | squat 105x5 monday 100x5 today => barbell bench press 5 at 60 kg
bench 60x5 | squat 105x5 (today) 100x5 (monday) => barbell bench press 5 at 60 kg
bench 60x5 | squat 105x5 today bench 80x5 monday => barbell bench press 5 at 60 kg
bench 60x5 | sentadilla 105x5 hoy 100x5 lunes => barbell bench press 5 at 60 kg
bench 60x5 | mon 100x5 wed 105x5 squat => barbell bench press 5 at 60 kg
bench 60x5 | monday 100x5, wednesday 105x5, friday 110x5 squat => barbell bench press 5 at 60 kg
bench 60x5 | squat me/anna 100x5/60x5 => barbell bench press 5 at 60 kg
bench 60x5 | squat tove/me 60x5/100x5 => barbell bench press 5 at 60 kg
bench 60x5 | deadlift ich/tove 100x5/60x5 => barbell bench press 5 at 60 kg
squat 100x5 | 100x5, bench on tuesday => barbell back squat 5 at 100 kg
squat 100x5 | 105x5 and deadlift on monday => barbell back squat 5 at 100 kg
"""

OF_THE_BAR = """
ohp 35x8 | the bar was 15, 35 then => barbell overhead press 8 at 35 kg
ohp 35x8 | the bar was 15 => barbell overhead press 8 at 35 kg
bench 3x8 60 | bar was only 15, so 55 => barbell bench press 3×8 at 60 kg
squat 100x5 | last 2 with belt => barbell back squat 5 at 100 kg
bench 3x8 60 | last 3 with straps => barbell bench press 3×8 at 60 kg
squat 100x5 | last 8 with belt => barbell back squat 5 at 100 kg, 8 at 100 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(RECKONED))
def test_what_is_reckoned_or_compared_is_no_set(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(ASKED))
def test_sets_of_two_days_or_two_people_are_asked_about(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(OF_THE_BAR))
def test_what_the_bar_was_and_what_sets_had_add_no_set(told, standing):
    assert standing_after(told) == standing
