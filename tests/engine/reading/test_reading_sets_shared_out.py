"""Sets of one group at several loads, and lists of reps beside a load known. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said, situation

TOLD = """
leg press 4x12, two at 160 and two at 170 => leg press 2×12 at 160 kg, 2×12 at 170 kg
leg press 3x12, one at 150 and two at 160 => leg press 12 at 150 kg, 2×12 at 160 kg
leg press 4x12, first two at 160, last two at 170 => leg press 2×12 at 160 kg, 2×12 at 170 kg
leg press 4x12: 2 at 160, 2 at 170 => leg press 2×12 at 160 kg, 2×12 at 170 kg
bench 4 sets of 8, two with 60 and two with 65 => barbell bench press 2×8 at 60 kg, 2×8 at 65 kg
beinpresse 4x12, zwei mit 160 und zwei mit 170 => leg press 2×12 at 160 kg, 2×12 at 170 kg
prensa 4x12, dos con 160 y dos con 170 => leg press 2×12 at 160 kg, 2×12 at 170 kg
développé couché 4x8, deux à 60 et deux à 65 => barbell bench press 2×8 at 60 kg, 2×8 at 65 kg
panca piana 4x8, due a 60 e due a 65 => barbell bench press 2×8 at 60 kg, 2×8 at 65 kg
bankdrukken 4x8, twee met 60 en twee met 65 => barbell bench press 2×8 at 60 kg, 2×8 at 65 kg
wyciskanie leżąc 4x8, dwie po 60 i dwie po 65 => barbell bench press 2×8 at 60 kg, 2×8 at 65 kg
supino 4x8, dois com 60 e dois com 65 => barbell bench press 2×8 at 60 kg, 2×8 at 65 kg
жим лежа 4х8, два по 60 и два по 65 => barbell bench press 2×8 at 60 kg, 2×8 at 65 kg
bänkpress 4x8, två på 60 och två på 65 => barbell bench press 2×8 at 60 kg, 2×8 at 65 kg
squat 5x5 at 100, 3 at 90 => barbell back squat 5×5 at 100 kg, 3 at 90 kg
{doing: dumbbell curl; last: dumbbell curl 14} 12 12 10 => dumbbell curl 2×12 at 14 kg each, 10 at 14 kg each
{doing: dumbbell curl; last: dumbbell curl 14} 14 10 8 => dumbbell curl 10 at 14 kg each, 8 at 14 kg each
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_parts_of_a_group_have_their_loads_and_lists_of_reps_none(text, context, meant) -> None:
    assert said(text, context) == meant


def test_a_list_that_begins_with_the_last_load_is_asked_about_and_another_is_of_reps() -> None:
    last = situation("dumbbell curl", last={"dumbbell curl": "12"})

    assert said("10 10 then 9 with a wobble", last) == "dumbbell curl 2×10 at 12 kg each, 9 at 12 kg each"
    assert said("11 10 9", last).startswith("dumbbell curl 11 at 12 kg each, 10")
    assert said("12 12 10", last).startswith("ask: ")
