"""The unit of so many sets, told behind them. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

SO_MANY = """
deadlift 155x8 | 155x7 | those two are pounds => conventional deadlift 8 at 155 lb, 7 at 155 lb
deadlift 155x8 | 155x7 | oops these 2 r lbs => conventional deadlift 8 at 155 lb, 7 at 155 lb
deadlift 155x8 | 155x7 | make those two lbs => conventional deadlift 8 at 155 lb, 7 at 155 lb
deadlift 155x8 | 155x7 | both sets in lb => conventional deadlift 8 at 155 lb, 7 at 155 lb
deadlift 155x8 | 155x7 | 155x6 | the last two are in lbs => conventional deadlift 8 at 155 kg, 7 at 155 lb, 6 at 155 lb
deadlift 155x8 | 155x7 | 155x6 | first two were pounds => conventional deadlift 8 at 155 lb, 7 at 155 lb, 6 at 155 kg
deadlift 155x8 | 155x7 | 155x6 | all three are lb not kg => conventional deadlift 8 at 155 lb, 7 at 155 lb, 6 at 155 lb
deadlift 155lb x8 | 155lb x7 | those two were kilos => conventional deadlift 8 at 155 kg, 7 at 155 kg
deadlift 155 3x8 | those 3 are pounds => conventional deadlift 3×8 at 155 lb
deadlift 155x8 | squat 315x5 | those two are pounds => conventional deadlift 8 at 155 lb; barbell back squat 5 at 315 lb
deadlift 155x8 | 155x7 | squat 315x5 | the two deadlift sets were pounds => \
conventional deadlift 8 at 155 lb, 7 at 155 lb; barbell back squat 5 at 315 kg
sentadilla 225x5 | 225x4 | esas dos eran libras => barbell back squat 5 at 225 lb, 4 at 225 lb
kniebeuge 225x5 | 225x4 | die letzten zwei waren pfund => barbell back squat 5 at 225 lb, 4 at 225 lb
kniebeuge 225x5 | 225x4 | die beiden waren lbs => barbell back squat 5 at 225 lb, 4 at 225 lb
squat 225x5 | 225x4 | ces deux-là étaient en livres => barbell back squat 5 at 225 lb, 4 at 225 lb
squat 225x5 | 225x4 | quelle due erano libbre => barbell back squat 5 at 225 lb, 4 at 225 lb
squat 225x5 | 225x4 | essas duas eram libras => barbell back squat 5 at 225 lb, 4 at 225 lb
squat 225x5 | 225x4 | die twee waren lbs => barbell back squat 5 at 225 lb, 4 at 225 lb
squat 225x5 | 225x4 | de två var lbs => barbell back squat 5 at 225 lb, 4 at 225 lb
squat 225x5 | 225x4 | te dwie były w funtach => barbell back squat 5 at 225 lb, 4 at 225 lb
squat 225x5 | 225x4 | эти два в фунтах => barbell back squat 5 at 225 lb, 4 at 225 lb
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(SO_MANY.replace("\\\n", "")))
def test_a_count_beside_a_unit_is_of_sets_that_stand(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    "told",
    ["those four are pounds", "those five were lb", "sorry these three were in lbs", "the two before are pounds"],
)
def test_a_count_that_no_sets_fit_adds_and_changes_none(told):
    assert standing_after(f"deadlift 155x8 | 155x7 | {told}") == "conventional deadlift 8 at 155 kg, 7 at 155 kg"
