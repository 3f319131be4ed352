"""Words behind the sets that a lift is known by name that lift; what is worn, and pauses, are remarks."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
squat 3x5 100 box => box squat 3×5 at 100 kg
squat 3x5 100, box => box squat 3×5 at 100 kg
squat 3x5 100 to a box => box squat 3×5 at 100 kg
squat 100 5 5 5 box => box squat 3×5 at 100 kg
squat 3x5 100 box, bench 3x5 80 => box squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg
deadlift 3x5 130 rack => rack pull 3×5 at 130 kg
bench 3x5 80 floor => floor press 3×5 at 80 kg
bench 3x5 80 narrow => close-grip bench press 3×5 at 80 kg
lat pulldown 3x10 50 close grip => close-grip lat pulldown 3×10 at 50 kg
ohp 3x5 50 seated => seated barbell overhead press 3×5 at 50 kg
press banca 3x8 60 agarre cerrado => close-grip bench press 3×8 at 60 kg
développé couché 3x8 60 prise serrée => close-grip bench press 3×8 at 60 kg
panca 3x8 60 presa stretta => close-grip bench press 3×8 at 60 kg
жим лежа 3x8 60 узким хватом => close-grip bench press 3×8 at 60 kg
bench 3x8 60, dips => barbell bench press 3×8 at 60 kg
kniebeuge 3x5 100 auf box => box squat 3×5 at 100 kg
bankdrücken 3x5 80 eng => close-grip bench press 3×5 at 80 kg
sentadilla 3x5 100 al cajón => box squat 3×5 at 100 kg
agachamento 3x5 100 na caixa => box squat 3×5 at 100 kg
przysiad 3x5 100 na skrzynię => box squat 3×5 at 100 kg
knäböj 3x5 100 till box => box squat 3×5 at 100 kg
присед 3x5 100 на ящик => box squat 3×5 at 100 kg
squat 3x5 100 belt => barbell back squat 3×5 at 100 kg
squat 3x5 100 safeties => barbell back squat 3×5 at 100 kg
squat 3x5 100, box felt low => barbell back squat 3×5 at 100 kg
deadlift 3x5 130, rack taken => conventional deadlift 3×5 at 130 kg
barbell row 3x10 60 straps => barbell row 3×10 at 60 kg
squat 80x5, 90x5, felt ok => barbell back squat 5 at 80 kg, 5 at 90 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_words_behind_the_sets_may_tell_the_lift(text, context, meant) -> None:
    assert said(text, context) == meant


def test_a_slope_behind_the_sets_is_of_the_lift() -> None:
    assert said("press banca 3x5 80 inclinado").startswith("ask: incline barbell bench press 3×5 at 80 kg")
