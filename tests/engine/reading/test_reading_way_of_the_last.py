"""A way of lifting behind the last of several groups of sets is that group's, and renames none of those before it."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

OF_THE_LAST = """
squat 100x5, 80x5 front => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5, 100x5, 80x5 front => barbell back squat 2×5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5, 80x5 (front) => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5 @8, 80x5 front @7 => barbell back squat 5 at 100 kg RPE 8; barbell front squat 5 at 80 kg RPE 7
squat 100x5 then 80x5 front => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 3x5 100, 3x8 70 front => barbell back squat 3×5 at 100 kg; barbell front squat 3×8 at 70 kg
squat // 100x5 // 80x5 front => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5 // 80x5 front => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
deadlift 3x5 140, 120x5 deficit => conventional deadlift 3×5 at 140 kg; deficit deadlift 5 at 120 kg
bench 80x5, 70x5 smith => barbell bench press 5 at 80 kg; smith machine bench press 5 at 70 kg
bench 70x5, 80x5 smith => barbell bench press 5 at 70 kg; smith machine bench press 5 at 80 kg
bench 80x5, 24x10 db => barbell bench press 5 at 80 kg; dumbbell bench press 10 at 24 kg each
bench 3x8 80, 3x8 60 incline => barbell bench press 3×8 at 80 kg; incline barbell bench press 3×8 at 60 kg
bb row 60x8, 30x10 db => barbell row 8 at 60 kg; dumbbell row 10 at 30 kg each
rdl 80x8, 60x8 single leg => romanian deadlift 8 at 80 kg; single-leg romanian deadlift 8 at 60 kg each
bankdrücken 80x5, 24x10 kurzhantel => barbell bench press 5 at 80 kg; dumbbell bench press 10 at 24 kg each
développé couché 80x5, 24x10 haltères => barbell bench press 5 at 80 kg; dumbbell bench press 10 at 24 kg each
жим лежа 80x5, 24x10 гантели => barbell bench press 5 at 80 kg; dumbbell bench press 10 at 24 kg each
panca 80x5, 24x10 manubri => barbell bench press 5 at 80 kg; dumbbell bench press 10 at 24 kg each
"""
OF_ITS_OWN_SETS = """
plank 3x60s, side 3x30s => plank 3×60 s; side plank 3×30 s
plank 60s, side 30s => plank 60 s; side plank 30 s
plank 60s 60s, side 30s 30s => plank 2×60 s; side plank 2×30 s
bench smith 60x8, free 70x5 => smith machine bench press 8 at 60 kg; barbell bench press 5 at 70 kg
bench smith 60x8, 70x5 free weights => smith machine bench press 8 at 60 kg; barbell bench press 5 at 70 kg
bench 60x8 smith, 70x5 free => smith machine bench press 8 at 60 kg; barbell bench press 5 at 70 kg
bench 60x8 close grip, 70x5 wide grip => close-grip bench press 8 at 60 kg; barbell bench press 5 at 70 kg
bench wide grip 70x5, close grip 60x8 => barbell bench press 5 at 70 kg; close-grip bench press 8 at 60 kg
bench 60x8 wide, 70x5 close => barbell bench press 8 at 60 kg; close-grip bench press 5 at 70 kg
curl bb 3x10 30, reverse 3x12 20 => barbell curl 3×10 at 30 kg; reverse curl 3×12 at 20 kg
"""
IN_THE_WRITERS_LANGUAGE = """
bänkpress 80x5, lutande 60x8 => barbell bench press 5 at 80 kg; incline barbell bench press 8 at 60 kg
bänkpress 80x5, 60x8 lutande => barbell bench press 5 at 80 kg; incline barbell bench press 8 at 60 kg
bankdrukken 80x5, schuin 60x8 => barbell bench press 5 at 80 kg; incline barbell bench press 8 at 60 kg
panca piana 80x5, inclinata 60x8 => barbell bench press 5 at 80 kg; incline barbell bench press 8 at 60 kg
wyciskanie leżąc 80x5, skos 60x8 => barbell bench press 5 at 80 kg; incline barbell bench press 8 at 60 kg
bankdrücken 80x5, eng 60x8 => barbell bench press 5 at 80 kg; close-grip bench press 8 at 60 kg
bankdrücken 80x8, 60x8 multipresse => barbell bench press 8 at 80 kg; smith machine bench press 8 at 60 kg
bankdrücken 3x8 60 multipresse => smith machine bench press 3×8 at 60 kg
press banca 80x5, multipower 60x8 => barbell bench press 5 at 80 kg; smith machine bench press 8 at 60 kg
sentadilla 100x5, 80x5 frontal => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
agachamento 100x5, frontal 80x5 => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
присед 100x5, 80x5 фронтальный => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
przysiad 100x5, przedni 80x5 => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
dominadas 3x8, supinas 2x6 => pull-up 3×8; chin-up 2×6
ohp 50x5, 40x8 seated => barbell overhead press 5 at 50 kg; seated barbell overhead press 8 at 40 kg
squat pause 80x5, no pause 100x5 => pause squat 5 at 80 kg; barbell back squat 5 at 100 kg
bench paused 80x5, touch and go 85x5 => paused bench press 5 at 80 kg; barbell bench press 5 at 85 kg
deadlift 140x5, belt 150x3 => conventional deadlift 5 at 140 kg, 3 at 150 kg
squat 80x5, 100x5, belt 120x3 => barbell back squat 5 at 80 kg, 5 at 100 kg, 3 at 120 kg
squat 100x5, belt 120x10 => ask: barbell back squat 5 at 100 kg, 10 at 120 kg \
| barbell back squat 5 at 100 kg; belt squat 10 at 120 kg
squat 100x5, belt 60x9 => ask: barbell back squat 5 at 100 kg, 9 at 60 kg \
| barbell back squat 5 at 100 kg; belt squat 9 at 60 kg
bench 80x5, 75x5 tired => barbell bench press 5 at 80 kg, 5 at 75 kg
bench 80x5, 70x5 paused => barbell bench press 5 at 80 kg, 5 at 70 kg
"""
OF_ALL = """
squat 100x5, 5, 5 front => barbell front squat 3×5 at 100 kg
squat 3x5 100, front => barbell front squat 3×5 at 100 kg
bench 80x5, 90x1 close => barbell bench press 5 at 80 kg, 1 at 90 kg
bench 80x5, 80x5, pain free 70x5 => barbell bench press 2×5 at 80 kg, 5 at 70 kg
plank 3x60s each side => plank 3×60 s
"""
IN_DOUBT = """
squat 100x5 80x5 front => ask: barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg \
| barbell front squat 5 at 100 kg, 5 at 80 kg
squat 6x5, 5x5 front => barbell back squat 6×5; barbell front squat 5×5
bench 60x8, 60x8 smith => ask: barbell bench press 8 at 60 kg; smith machine bench press 8 at 60 kg \
| smith machine bench press 2×8 at 60 kg
deadlift 90x5, 120x5, 140x5 sumo => ask: \
conventional deadlift 5 at 90 kg, 5 at 120 kg; sumo deadlift 5 at 140 kg \
| sumo deadlift 5 at 90 kg, 5 at 120 kg, 5 at 140 kg
"""


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    [
        row
        for table in (OF_THE_LAST, OF_ITS_OWN_SETS, IN_THE_WRITERS_LANGUAGE, OF_ALL, IN_DOUBT)
        for row in readings(table)
    ],
)
def test_a_way_is_of_the_sets_that_it_stands_with(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


def test_a_side_of_a_lift_that_has_no_such_sort_is_no_set_of_it() -> None:
    assert said("lunge 3x10 20, side 3x10 15").startswith("ask: ")
    assert "at 15 kg" not in said("lunge 3x10 20, side 3x10 15")
