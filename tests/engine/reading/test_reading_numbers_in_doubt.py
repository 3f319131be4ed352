"""Numbers behind sets that may be none of their reps, glued shorthand and marks that nobody can read: asked, or read
whole.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

CLUSTER = "barbell bench press 7 at 90 kg, 3 at 90 kg rest-pause, 2 at 90 kg rest-pause"


@pytest.mark.parametrize(
    "text",
    [
        "bench 90x7+3+2 x2",
        "bench 90: 7+3+2 x2",
        "bench (90x7+3+2) x2",
        "bench 90x7+3+2 (x2)",
        "bench 90x7+3+2 twice",
        "bench 90x7 (+3+2) x2",
    ],
)
def test_a_cluster_is_repeated_whole(text: str) -> None:
    assert said(text) == f"{CLUSTER}, {CLUSTER.removeprefix('barbell bench press ')}"


@pytest.mark.parametrize(
    "text",
    [
        "bench 90x7+3+2x2",  # the last two reps twice, or all of it
        "bench 90 7+3+2, x2",
        "bench 60x15+5 x4",
        "bench 90x7 (3+2) x2",
        "row machine 45 9 9 9 (7 8 9)",  # as many numbers as sets
        "row machine 45x9/9/9 (8/8/9)",
        "pull ups 9, 8, 7 (7, 8, 9)",
        "row machine 45 3x9 (7 8 9)",
        "squat 95 4 4 f3",
        "squat 95 4, 4, f3",
        "squat 95x4 d70x8",
        "squat 95.5.5x5",  # a number with two points
        "kettlebell press ladder x2 1-2-3",  # all that follows twice, or a set of two
        "pull ups x3 9 8",
        "squat 5x4 up to 110",  # a load of one end of a ramp
        "squat 5x4 top set 110",
        "squat 5x4 from 70",
        "squat 4 4 4 4 up to 110",
        "Kniebeuge 5x4 bis 110",
        "squat 3x7 75% of 130",
        "dumbbell lunge 20 steps x 3 with 14s",
        "bulgarian split squat 12s 3x8, last set 6 left",
        "row machine 45 9 9 8, 6 with help",
        "row machine 45x9 (+1)",  # gained since last time, or a moment later
        "21s curls 20",
        "step ups 2x14 10/leg",  # reps of a leg, or a load
        "power snatch 55 60 65f",  # a single made, or missed
        "kettlebell press 16kg x2 1-2-3-4",
        "squat 95x4 6/10",  # how it went, or two sets
        "squat 95x4 done in 6",
        "squat 95x4, 6 in the gym",
        "squat 95x4 before 8",
        "squat 95x4 after 5",
        "Kniebeuge 95x4 in 6",
        "leg press 4bp 3x10",  # letters glued to a number, with the lift told in full
        "deadlift 3rdl 5x100",
        "leg press 4pps 3x10",
        "row machine 45x9, same weight on pulldown",
        "row machine 45x9, same weight",
        "bench 60x8 same weight on incline",
    ],
)
def test_what_may_be_two_things_is_asked(text: str) -> None:
    assert said(text).startswith("ask")


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
squat 2pps x5 => barbell back squat 5 at 100 kg
pps 3x8 40 => push press 3×8 at 40 kg
squat 4x4 95, top set 110x1 => barbell back squat 4×4 at 95 kg, 1 at 110 kg
squat worked up to 130x1 => barbell back squat 1 at 130 kg
barbell overhead press 40 6 6, 5 with leg drive => barbell overhead press 2×6 at 40 kg, 5 at 40 kg
row machine 45x9 (+3+2) => machine row 9 at 45 kg, 3 at 45 kg rest-pause, 2 at 45 kg rest-pause
dumbbell row 3x9 32 each arm => dumbbell row 3×9 at 32 kg each
bulgarian split squat 3x8 each leg 12s => bulgarian split squat 3×8 at 12 kg each
squat 95x4 6/10 day => barbell back squat 4 at 95 kg
squat 4 4 4 95 in the gym => barbell back squat 3×4 at 95 kg
row machine 45 3x9 (9 9 7) => machine row 2×9 at 45 kg, 7 at 45 kg
squat S1 95x4 S2 100x3 => barbell back squat 4 at 95 kg, 3 at 100 kg
kettlebell press 1-2-3-4 => kettlebell press 1, 2, 3, 4
goblet squat 1-2-3 x2 => goblet squat 1, 2, 3, 1, 2, 3
{doing: kettlebell press} 1-2-3 ladder x2 => kettlebell press 1, 2, 3, 1, 2, 3
lateral raise 3 10 10 => dumbbell lateral raise 2×10 at 3 kg each
squat 95 4 4 3f => barbell back squat 2×4 at 95 kg, 3 at 95 kg to failure
"""),
)
def test_what_is_plain_is_read(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    "text",
    ["squ\u200bat 3x4 95", "squat 3x4 9\u200b5", "ｓｑｕａｔ ３ｘ４ ９５", "squat ３×４ ＠ ９５", "squat\u200b3x4 95"],
)
def test_signs_that_nobody_sees_or_that_are_wide_change_nothing(text: str) -> None:
    assert said(text) == "barbell back squat 3×4 at 95 kg"


BEHIND_AN_AT = """
bench 80@8x5 => ask: barbell bench press 5 at 80 kg RPE 8 | barbell bench press 8×5 at 80 kg
squat 100kg @9x3 => ask: barbell back squat 3 at 100 kg RPE 9 | barbell back squat 9×3 at 100 kg
bench 80@7.5x5 => barbell bench press 5 at 80 kg RPE 7.5
bench 60x5, 5@70x3 => ask: barbell bench press 5 at 60 kg, 3×5 at 70 kg | barbell bench press 5 at 60 kg, 5×3 at 70 kg
bench 5@70x3 => ask: barbell bench press 3×5 at 70 kg | barbell bench press 5×3 at 70 kg
bench 100@3x5 => barbell bench press 3×5 at 100 kg
bench 80 @ 3x8 => barbell bench press 3×8 at 80 kg
bench 5@70, 5@75, 3@80 => barbell bench press 5 at 70 kg, 5 at 75 kg, 3 at 80 kg
bench 160x12 @7 x12 @8 => barbell bench press 12 at 160 kg RPE 7, 12 at 160 kg RPE 8
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(BEHIND_AN_AT))
def test_a_pair_behind_an_at_may_tell_an_effort_or_sets(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


OF_NOTHING = """
bench 8x0 => ask:
pull ups 8x0 => ask:
squat 3x0 100 => ask:
squat 100 5x0 => ask:
bench 80x8, 80x0 => barbell bench press 8 at 80 kg, 0 at 80 kg missed
bench 100x0 => barbell bench press 0 at 100 kg missed
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(OF_NOTHING))
def test_sets_of_no_reps_are_no_sets(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant


UNIT_LAST = """
squat 225x5 lb => barbell back squat 5 at 225 lb
squat 225x5, 245x3 lbs => barbell back squat 5 at 225 lb, 3 at 245 lb
squat 225x5x3 lb => barbell back squat 3×5 at 225 lb
{unit: lb} bench 60x5 kg, 65x5 kg => barbell bench press 5 at 60 kg, 5 at 65 kg
bench 12x20 kg => barbell bench press 12 at 20 kg
dips 8x10 kg => dip 8 at +10 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(UNIT_LAST))
def test_a_unit_behind_the_reps_is_of_the_load_ahead(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


IN_BRACKETS = """
squat 110x5 (grinder, 9) => ask: barbell back squat 5 at 110 kg, 9 at 110 kg
squat 110x5 (9, felt hard) => ask: barbell back squat 5 at 110 kg, 9 at 110 kg
squat 110x5 (rpe 9, hard) => barbell back squat 5 at 110 kg RPE 9
bench 60x8 (drop, 40x10) => barbell bench press 8 at 60 kg, 10 at 40 kg drop
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(IN_BRACKETS))
def test_a_number_beside_words_in_brackets_may_be_an_effort(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
