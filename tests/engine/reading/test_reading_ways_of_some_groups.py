"""Ways told behind some groups of sets and not behind others, and equipment that heads the lines below it."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

CLEAR = """
squat 100x5, 80x5 front, 70x8 front => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg, 8 at 70 kg
squat 90x5, 80x5 front, 60x8 goblet => barbell back squat 5 at 90 kg; barbell front squat 5 at 80 kg; \
goblet squat 8 at 60 kg
squat 80x5 front, 70x8 front => barbell front squat 5 at 80 kg, 8 at 70 kg
squat 80x5 front, 100x5 back => barbell front squat 5 at 80 kg; barbell back squat 5 at 100 kg
deadlift 140x5 sumo, 3 => sumo deadlift 5 at 140 kg, 3 at 140 kg
squat 100x5 - front 80x5 => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5 front 80x5 => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
bench: 60x8 (close), 70x5 (wide) => close-grip bench press 8 at 60 kg; barbell bench press 5 at 70 kg
bench 60x8 (close grip), 70x5 (wide grip) => close-grip bench press 8 at 60 kg; barbell bench press 5 at 70 kg
plank // 60s // 45s // side 30s => plank 60 s, 45 s; side plank 30 s
squat // 90x5 // 80x5 front // 70x5 front => barbell back squat 5 at 90 kg; barbell front squat 5 at 80 kg, 5 at 70 kg
curl // 30x10 bb // 24x10 db => barbell curl 10 at 30 kg; dumbbell curl 10 at 24 kg each
bench 80x5 smith, squat 100x5 => smith machine bench press 5 at 80 kg; barbell back squat 5 at 100 kg
smith machine // squat 80x8 // bench 60x8 => smith machine squat 8 at 80 kg; smith machine bench press 8 at 60 kg
smith: // squat 3x8 80 // // bench 3x8 60 => smith machine squat 3×8 at 80 kg; barbell bench press 3×8 at 60 kg
dumbbells // bench 24x8 // row 26x8 => dumbbell bench press 8 at 24 kg each; dumbbell row 8 at 26 kg each
barbell // row 3x8 60 => barbell row 3×8 at 60 kg
smith machine was free // squat 3x8 80 => barbell back squat 3×8 at 80 kg
"""
EITHER = """
squat 80x5 front, 100x5 => ask: barbell front squat 5 at 80 kg, 5 at 100 kg \
| barbell front squat 5 at 80 kg; barbell back squat 5 at 100 kg
bench 60x8 smith, 70x8 => ask: smith machine bench press 8 at 60 kg, 8 at 70 kg \
| smith machine bench press 8 at 60 kg; barbell bench press 8 at 70 kg
deadlift 140x5 sumo, 150x3 => ask: sumo deadlift 5 at 140 kg, 3 at 150 kg \
| sumo deadlift 5 at 140 kg; conventional deadlift 3 at 150 kg
squat 100x5, 80x5 front, 70x8 => ask: barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg, 8 at 70 kg \
| barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg; barbell back squat 8 at 70 kg
squat // 80x5 front // 100x5 => ask: barbell front squat 5 at 80 kg, 5 at 100 kg \
| barbell front squat 5 at 80 kg; barbell back squat 5 at 100 kg
squat 80x5 front 100x5 => ask: barbell back squat 5 at 80 kg; barbell front squat 5 at 100 kg \
| barbell front squat 5 at 80 kg; barbell back squat 5 at 100 kg
"""


@pytest.mark.parametrize(("text", "known", "meant"), [row for table in (CLEAR, EITHER) for row in readings(table)])
def test_a_way_behind_one_group_is_no_other_groups_unasked(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    "text", ["(db) x (squat) (front)", "(db) squat (front)", "(smith) bench (close)", "smith machine\n"]
)
def test_words_in_brackets_without_sets_break_nothing(text: str) -> None:
    assert said(text) == "no sets"
