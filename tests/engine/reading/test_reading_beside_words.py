"""What the words beside a set settle: counts told twice, sets more, links, headings; and what they leave in doubt.

Common practice, no source.
"""

# ruff: noqa: E501 — a message and its reading stand on one line each

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

WARM_UPS_AHEAD = """
bench 25x8 (w), 30x5 (w), 35x3 (w), 45 6 6 5 => barbell bench press 8 at 25 kg warmup, 5 at 30 kg warmup, 3 at 35 kg warmup, 2×6 at 45 kg, 5 at 45 kg
bench 25x8 wu, 35x3 wu, 45 6 6 5 => barbell bench press 8 at 25 kg warmup, 3 at 35 kg warmup, 2×6 at 45 kg, 5 at 45 kg
bench 28x8, 36x3, 44 6 6 5 => barbell bench press 8 at 28 kg, 3 at 36 kg, 2×6 at 44 kg, 5 at 44 kg
"""
MISSES = """
bench 4x4 95, missed the fourth rep of the last set => barbell bench press 3×4 at 95 kg, 3 at 95 kg missed
bench 4x5 95, failed the third rep on the last set => barbell bench press 3×5 at 95 kg, 2 at 95 kg missed
squat 90x5, 110x4, missed the fourth rep of the last set => barbell back squat 5 at 90 kg, 3 at 110 kg missed
bench 4x5 95, missed the third rep of the first set => ask: barbell bench press 3×5 at 95 kg, 2 at 95 kg missed
bench 4x5 95, missed the third rep of the second set => ask: barbell bench press 3×5 at 95 kg, 2 at 95 kg missed
"""
RESTATED = """
squat 110x2x4, four doubles like the card said => barbell back squat 4×2 at 110 kg
squat 110x2x4 the coach wanted 4 doubles, then bench 70 3x6 => barbell back squat 4×2 at 110 kg; barbell bench press 3×6 at 70 kg
squat 110x3x6, coach said 6 sets of 3 => barbell back squat 6×3 at 110 kg
squat 110x3x4, the coach wanted 3 sets of 4 => barbell back squat 3×4 at 110 kg
squat 110x3x4, coach wanted four triples but did three fours => ask: barbell back squat 3×4 at 110 kg
squat 110x3x4, next time four triples => ask: barbell back squat 3×4 at 110 kg | barbell back squat 4×3 at 110 kg
squat 110x3x4, four triples last week => ask: barbell back squat 3×4 at 110 kg | barbell back squat 4×3 at 110 kg
squat 110x3x4, coach wanted five doubles => ask: barbell back squat 3×4 at 110 kg | barbell back squat 4×3 at 110 kg
"""
LINKS = """
bb curl 22.5 3x12 w/ pull ups 3x7 => barbell curl 3×12 at 22.5 kg; pull-up 3×7
pull ups 3x7 w/5kg => pull-up 3×7 at +5 kg
bench 45x6 (w), 70 6 6 => barbell bench press 6 at 45 kg warmup, 2×6 at 70 kg
pull ups 11, 9, 9 between lat pulldown 3x12 45 => pull-up 11, 2×9; lat pulldown 3×12 at 45 kg
pull ups (11, 9, 9) between my leg presses, those were 145kg for 12, 11, 9 => pull-up 11, 2×9; leg press 12 at 145 kg, 11 at 145 kg, 9 at 145 kg
squat 3x4 105, 4 min between sets => barbell back squat 3×4 at 105 kg
"""
TIMED = """
планка 4 по 40 сек => plank 4×40 s
deska 4 po 40 s => plank 4×40 s
plancha 4 de 40 seg => plank 4×40 s
plank 4 van 40 sec => plank 4×40 s
plankan 4 av 40 sek => plank 4×40 s
plank 4 of 40 sec => plank 4×40 s
"""
HEADINGS = """
Wk 3, day 1. Squat 1x4 90, 1x4 95. => barbell back squat 4 at 90 kg, 4 at 95 kg
wk. 3 squat 4x4 90 => barbell back squat 4×4 at 90 kg
w3d1 squat 4x4 90 => barbell back squat 4×4 at 90 kg
wk3d1: squat 4x4 90 => barbell back squat 4×4 at 90 kg
w3 d1 squat 4x4 90 => barbell back squat 4×4 at 90 kg
wk 3 d1, squat 4x4 90 => barbell back squat 4×4 at 90 kg
tydz. 3 przysiad 4x4 90 => barbell back squat 4×4 at 90 kg
bench 4x4 70 last wk => no sets
"""
HOW_IT_WENT = """
ok so squats done right! 50 kg, got 9 9 and 7 => barbell back squat 2×9 at 50 kg, 7 at 50 kg
did bench right, 50 kg 9 9 7 => barbell bench press 2×9 at 50 kg, 7 at 50 kg
bench press right 50 kg 9 9 7 => ask: barbell bench press 2×9 at 50 kg right, 7 at 50 kg right
db row right! 22 kg 9 9 7 => dumbbell row 2×9 at 22 kg each right, 7 at 22 kg each right
"""
MORE_SETS = """
{doing: lat pulldown} two more at 35, both 14 => lat pulldown 2×14 at 35 kg
{doing: lat pulldown} 3 more at 35, all 14 => lat pulldown 3×14 at 35 kg
bench 85x6, two more at 75, both 9 => barbell bench press 6 at 85 kg, 2×9 at 75 kg
bench 85x6, then two more sets: 5 and 4 => barbell bench press 6 at 85 kg, 5 at 85 kg, 4 at 85 kg
bench 85x6 then 3 more with 65, 11, 10, 8 => barbell bench press 6 at 85 kg, 11 at 65 kg, 10 at 65 kg, 8 at 65 kg
bench 85x6 then 3 more with 65, 11, 10 => ask: barbell bench press 6 at 85 kg, 3 at 65 kg, 11 at 85 kg, 10 at 85 kg
bench 85x6, 2 more both at 75 => ask: barbell bench press 6 at 85 kg, 2 at 75 kg
pull ups 14,11,8 then two more sets with 5kg on the belt, 7 and 5 => pull-up 14, 11, 8, 7 at +5 kg, 5 at +5 kg
pull ups 14 11 8, then 2 more with a 5 kg plate, 7 and 5 => pull-up 14, 11, 8, 7 at +5 kg, 5 at +5 kg
pull ups 14,11,8 then with 5kg on the belt, 7 and 5 => pull-up 14, 11, 8, 7 at +5 kg, 5 at +5 kg
{last: pull-up 5} pull ups 14,11,8 then 5kg on the belt, 7 and 5 => pull-up 14, 11, 8, 7 at +5 kg, 5 at +5 kg
pull ups 14,11,8 with 5kg on the belt, 7 and 5 => ask: pull-up 14 at +5 kg, 11 at +5 kg, 8 at +5 kg, 7, 5
"""
AGAIN = """
squat warming up: empty bar for eight, fifty for four, then work: ninety for four, and again ninety for four => barbell back squat 8 at 20 kg warmup, 4 at 50 kg warmup, 2×4 at 90 kg
squat 150x1 and again 152.5 for 1 => barbell back squat 1 at 150 kg, 1 at 152.5 kg
squat 100 for 4 again 3 times => barbell back squat 4×4 at 100 kg
"""
TABLES = [
    *readings(WARM_UPS_AHEAD),
    *readings(MISSES),
    *readings(RESTATED),
    *readings(LINKS),
    *readings(TIMED),
    *readings(HEADINGS),
    *readings(HOW_IT_WENT),
    *readings(MORE_SETS),
    *readings(AGAIN),
]


@pytest.mark.parametrize(("text", "context", "meant"), TABLES)
def test_words_beside_sets_settle_them(text, context, meant) -> None:
    assert said(text, context) == meant


def test_a_time_of_a_lift_that_counts_reps_is_asked() -> None:
    assert said("bench 4 of 40 s").startswith("ask")


def test_all_of_them_with_a_remark_may_count_sets() -> None:
    assert said("squat 100x4, 3 more, all 4 moved well").startswith("ask")
