"""Ways of lifting with whole sets of their own beside those of a lift: two lifts, and neither is named by the other."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

AHEAD_OF_THEIR_SETS = """
squat 3x5 100, front 3x5 70 => barbell back squat 3×5 at 100 kg; barbell front squat 3×5 at 70 kg
squat 100x5 (front 80x5) => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100 3x5, front 70 3x5 => barbell back squat 3×5 at 100 kg; barbell front squat 3×5 at 70 kg
squat 3x5 at 100kg, front 3x5 at 70kg => barbell back squat 3×5 at 100 kg; barbell front squat 3×5 at 70 kg
squat 3x5 100, front: 3x5 70 => barbell back squat 3×5 at 100 kg; barbell front squat 3×5 at 70 kg
squat 3x5 100 @8 front 3x5 70 @7 => barbell back squat 3×5 at 100 kg RPE 8; barbell front squat 3×5 at 70 kg RPE 7
squat: front 3x5 70, back 3x5 100 => barbell front squat 3×5 at 70 kg; barbell back squat 3×5 at 100 kg
front squat 60x5, back 100x5 => barbell front squat 5 at 60 kg; barbell back squat 5 at 100 kg
squat 3x5 100, smith 3x8 80 => barbell back squat 3×5 at 100 kg; smith machine squat 3×8 at 80 kg
deadlift 3x5 140, deficit 3x3 120 => conventional deadlift 3×5 at 140 kg; deficit deadlift 3×3 at 120 kg
deadlift 3x5 140, sumo 3x3 => conventional deadlift 3×5 at 140 kg; sumo deadlift 3×3
lateral raise 3x12 10, front 3x12 8 => dumbbell lateral raise 3×12 at 10 kg each; dumbbell front raise 3×12 at 8 kg each
calf raise standing 80x12, seated 40x15 => standing calf raise 12 at 80 kg; seated calf raise 15 at 40 kg
close grip bench 60x8, normal 70x5 => close-grip bench press 8 at 60 kg; barbell bench press 5 at 70 kg
db bench 24x10, barbell 60x8 => dumbbell bench press 10 at 24 kg each; barbell bench press 8 at 60 kg
db bench 24x10, bar 60x8 => dumbbell bench press 10 at 24 kg each; barbell bench press 8 at 60 kg
bench 80x5, 80x5, then db 24x10 => barbell bench press 2×5 at 80 kg; dumbbell bench press 10 at 24 kg each
bankdrücken 3x5 80, kurzhantel 3x10 24 => barbell bench press 3×5 at 80 kg; dumbbell bench press 3×10 at 24 kg each
press banca 3x5 80, mancuernas 3x10 24 => barbell bench press 3×5 at 80 kg; dumbbell bench press 3×10 at 24 kg each
"""
BEHIND_THEIR_SETS = """
squat 60x8 front, 80x5 back => barbell front squat 8 at 60 kg; barbell back squat 5 at 80 kg
bench 60x8 close grip, 70x5 normal => close-grip bench press 8 at 60 kg; barbell bench press 5 at 70 kg
bench 60x8 close grip, 70x5 regular grip => close-grip bench press 8 at 60 kg; barbell bench press 5 at 70 kg
deadlift 140x3 sumo, 150x3 conv => sumo deadlift 3 at 140 kg; conventional deadlift 3 at 150 kg
deadlift 140x3 sumo 150x3 conv => sumo deadlift 3 at 140 kg; conventional deadlift 3 at 150 kg
row 60x8 barbell, 30x10 db => barbell row 8 at 60 kg; dumbbell row 10 at 30 kg each
ohp 40x8 seated, 45x5 standing => seated barbell overhead press 8 at 40 kg; barbell overhead press 5 at 45 kg
curl 30x10 ez, 25x10 straight bar => ez-bar curl 10 at 30 kg; barbell curl 10 at 25 kg
row 60x8 bar, 24x10 db => barbell row 8 at 60 kg; dumbbell row 10 at 24 kg each
pull ups 8 neutral 6 wide => neutral-grip pull-up 8; pull-up 6
pull ups 8 (wide), 6 (neutral) => pull-up 8; neutral-grip pull-up 6
"""
THE_BAR_OF_A_CABLE = """
pushdown 25 12 12 10, bar 30 10 10 => triceps pushdown 2×12 at 25 kg, 10 at 25 kg, 2×10 at 30 kg
pushdown 3x12 25, bar 3x10 30 => triceps pushdown 3×12 at 25 kg, 3×10 at 30 kg
pushdown rope 25x12, bar 30x10 => rope pushdown 12 at 25 kg; triceps pushdown 10 at 30 kg
pushdown 25x12 rope, 30x10 bar => rope pushdown 12 at 25 kg; triceps pushdown 10 at 30 kg
cable curl 25x12, bar 30x10 => cable curl 12 at 25 kg, 10 at 30 kg
"""
OF_ONE_LIFT = """
squat 100x5 front => barbell front squat 5 at 100 kg
squat 3x5 100, front => barbell front squat 3×5 at 100 kg
squat 100x5, 5, 5 front => barbell front squat 3×5 at 100 kg
squat 100x5, back 90x5 => barbell back squat 5 at 100 kg, 5 at 90 kg
squat 100x5 easy, 110x5 hard => barbell back squat 5 at 100 kg, 5 at 110 kg
squat bar x10, 60x5, 100x5 => barbell back squat 10 at 20 kg warmup, 5 at 60 kg, 5 at 100 kg
bench 3x8 60, 70x5 regular => barbell bench press 3×8 at 60 kg, 5 at 70 kg
"""


@pytest.mark.parametrize(
    "line",
    [
        pytest.param(line, id=line)
        for table in (AHEAD_OF_THEIR_SETS, BEHIND_THEIR_SETS, THE_BAR_OF_A_CABLE, OF_ONE_LIFT)
        for line in table.strip().splitlines()
    ],
)
def test_a_way_is_of_the_sets_that_it_was_told_with(line: str) -> None:
    text, _, meant = line.partition(" => ")

    assert said(text) == meant


@pytest.mark.parametrize("text", ["squat\n100x5\nfront\n70x5", "squat 100x5\nfront 70x5"])
def test_a_way_on_a_line_below_renames_no_sets_above(text: str) -> None:
    assert said(text) == "barbell back squat 5 at 100 kg; barbell front squat 5 at 70 kg"


@pytest.mark.parametrize(
    "text", ["row 60x8 db 30x10", "lunge 20x10, db 24x10", "row cable 3x10 50, single arm 3x10 20"]
)
def test_where_the_first_lift_is_open_it_is_asked_about(text: str) -> None:
    assert said(text).startswith("ask: ")


OF_ANOTHER_MOVEMENT = """
lat pulldown 50x10, close grip 60x8 => lat pulldown 10 at 50 kg; close-grip lat pulldown 8 at 60 kg
pull ups 3x8, close grip 2x6 => pull-up 3×8, 2×6
bench 80x5, close grip 60x8 => barbell bench press 5 at 80 kg; close-grip bench press 8 at 60 kg
squat 100x5, close grip 60x8 => barbell back squat 5 at 100 kg; close-grip bench press 8 at 60 kg
deadlift 100x5, close grip 60x8 => ask: conventional deadlift 5 at 100 kg, 8 at 60 kg \
| conventional deadlift 5 at 100 kg; close-grip bench press 8 at 60 kg
deadlift 100x5, front 60x8 => ask: conventional deadlift 5 at 100 kg, 8 at 60 kg
bench 80x5, reverse grip 60x8 => barbell bench press 5 at 80 kg, 8 at 60 kg
push ups 3x20, decline 2x12 => push-up 3×20, 2×12
push ups 3x20, 2x12 decline => push-up 3×20, 2×12
db bench 24x8, incline 22x8 => dumbbell bench press 8 at 24 kg each; incline dumbbell bench press 8 at 22 kg each
db bench 24x8, 22x8 incline => dumbbell bench press 8 at 24 kg each; incline dumbbell bench press 8 at 22 kg each
press banca 80x5, inclinado 60x8 => barbell bench press 5 at 80 kg; incline barbell bench press 8 at 60 kg
supino 80x5, 60x8 inclinado => barbell bench press 5 at 80 kg; incline barbell bench press 8 at 60 kg
ez curl 30x10, bar 35x8 => ez-bar curl 10 at 30 kg; barbell curl 8 at 35 kg
curl ez 30x10, straight bar 35x8 => ez-bar curl 10 at 30 kg; barbell curl 8 at 35 kg
barbell row 60x8, seated 50x12 => ask: barbell row 8 at 60 kg, 12 at 50 kg \
| barbell row 8 at 60 kg; seated cable row 12 at 50 kg
"""


@pytest.mark.parametrize(("text", "known", "meant"), readings(OF_ANOTHER_MOVEMENT))
def test_a_grip_or_a_slope_is_one_of_the_lift_before_it(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


def test_a_name_of_several_lifts_behind_another_lift_is_asked_about() -> None:
    assert said("bench 80x5, press 40x8").startswith("ask: ")
