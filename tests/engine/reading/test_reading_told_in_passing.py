"""Sets told in passing: named sets, ladders, the last set that differed, singles ahead of work, loads of the body."""

# ruff: noqa: E501 — a message and its reading stand on one line each

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, readings, said, standing_after

NAMED = """
hit 97.5 for a single on bench, then 82.5 for three doubles => barbell bench press 1 at 97.5 kg, 3×2 at 82.5 kg
squat 110 two triples => barbell back squat 2×3 at 110 kg
chin ups 1-3-4 ladder x2 => chin-up 1, 3, 4, 1, 3, 4
{doing: barbell overhead press} 6 at 47.5, and again, and then 4 => barbell overhead press 2×6 at 47.5 kg, 4 at 47.5 kg
ohp: singles 62.5 65 67.5, then 50 3x7 => barbell overhead press 1 at 62.5 kg, 1 at 65 kg, 1 at 67.5 kg, 3×7 at 50 kg
8s on the ohp: 35, 37.5, 40 => barbell overhead press 8 at 35 kg, 8 at 37.5 kg, 8 at 40 kg
ez curls 12s: 17.5 20 22.5 => ez-bar curl 12 at 17.5 kg, 12 at 20 kg, 12 at 22.5 kg
front squat: 4 sets, all 6s, all at 72.5 => barbell front squat 4×6 at 72.5 kg
squat 8Ox5 8Ox4 => barbell back squat 5 at 80 kg, 4 at 80 kg
log ohp 50 3x6 and dips 9 8 => barbell overhead press 3×6 at 50 kg; dip 9, 8
log 70x4 => log press 4 at 70 kg
"""
LAST = """
squat 4x6 95 but only 5 on the last => barbell back squat 3×6 at 95 kg, 5 at 95 kg
squat 4x6 95, 5 on the last set => barbell back squat 3×6 at 95 kg, 5 at 95 kg
squat 4x6 95, squeezed out 8 on the last => barbell back squat 3×6 at 95 kg, 8 at 95 kg
lat raise 9s 2x13, then straight off the last one 5s for 16 => dumbbell lateral raise 2×13 at 9 kg each, 16 at 5 kg each drop
deadlift 150 x 4 x 3 (plus 70x8 110x4 warming up) => conventional deadlift 3×4 at 150 kg, 8 at 70 kg warmup, 4 at 110 kg warmup
"""
BODY = """
dead bugs 9 each side x2 => dead bug 2×9
cable woodchop 22.5 11 each side x3 => cable woodchop 3×11 at 22.5 kg
bench 30 a side x 9 => ask: barbell bench press 9 at 30 kg | barbell bench press 9 at 80 kg
weighted dips 25 9 9, 32.5 6, bw 13 => dip 2×9 at +25 kg, 6 at +32.5 kg, 13
assisted pull-ups: 30 assist 11, 9; 20 assist 7 => pull-up 11 at −30 kg, 9 at −30 kg, 7 at −20 kg
chin ups bw 9 9, +7.5 6 => chin-up 2×9, 6 at +7.5 kg
bulgarians bw 11 each leg x2, then 12s 3x9 => bulgarian split squat 2×11, 3×9 at 12 kg each
farmers 28s 30m, 30m, 20m dropped the left one => farmer's walk 2×30 m at 28 kg each, 20 m at 28 kg each
pulldowns 12-12-9 with 55 on the stack, then 40 for 14 => lat pulldown 2×12 at 55 kg, 9 at 55 kg, 14 at 40 kg
hack squat 2 plates a side 11 10 => ask: hack squat 11 at 80 kg, 10 at 80 kg | hack squat 11, 10
3 rounds: 9 push ups, 14 swings 24k, 7 goblets 18k => push-up 3×9; kettlebell swing 3×14 at 24 kg; goblet squat 3×7 at 18 kg
"""


FEWER = """
planned 5 sets of 6 at 70 on bench, only did 4 => barbell bench press 4×6 at 70 kg
bench 5x6 70 but just did 4 => barbell bench press 4×6 at 70 kg
front squat: 6 reps at 50, 60, 70 => barbell front squat 6 at 50 kg, 6 at 60 kg, 6 at 70 kg
bench 85 for 6, +2.5 for 5 => barbell bench press 6 at 85 kg, 5 at 87.5 kg
bench 85x6, +5x4, +2.5x2 => barbell bench press 6 at 85 kg, 4 at 90 kg, 2 at 92.5 kg
dips +10 6 6, +15 4 => dip 2×6 at +10 kg, 4 at +15 kg
bench 75, 3 sets of 6 then 1 set of 9 => barbell bench press 3×6 at 75 kg, 9 at 75 kg
3 sets of 7 and 1 set of 5 on bench at 72.5 => barbell bench press 3×7 at 72.5 kg, 5 at 72.5 kg
140: 5, 3, 2, 1 leg press => leg press 5 at 140 kg, 3 at 140 kg, 2 at 140 kg, 1 at 140 kg
squat 3x6 90, 1 arm row 28 3x9 => barbell back squat 3×6 at 90 kg; dumbbell row 3×9 at 28 kg each
"""
OPEN = """
bench 25 9 times => ask: barbell bench press 25, 9 | barbell bench press 9 at 25 kg
db curls 9s: 11 13 15 => ask: dumbbell curl 11 at 9 kg each, 13 at 9 kg each, 15 at 9 kg each | dumbbell curl 9 at 11 kg each, 9 at 13 kg each, 9 at 15 kg each
{last: dumbbell curl 13} db curls 9s: 11 13 15 => dumbbell curl 9 at 11 kg each, 9 at 13 kg each, 9 at 15 kg each
{last: dumbbell curl 9} db curls 9s: 11 13 15 => dumbbell curl 11 at 9 kg each, 13 at 9 kg each, 15 at 9 kg each
db curls 13s: 11 10 9 => dumbbell curl 11 at 13 kg each, 10 at 13 kg each, 9 at 13 kg each
squat 3x6 90 // lateral raise 11x13 // same weight 3x14 => ask: barbell back squat 3×6 at 90 kg; dumbbell lateral raise 11 at 13 kg each, 3×14 at 13 kg each | barbell back squat 3×6 at 90 kg; dumbbell lateral raise 13 at 11 kg each, 3×14 at 11 kg each
bench 3x9 55 // ohp same weight 3x4 => barbell bench press 3×9 at 55 kg; barbell overhead press 3×4 at 55 kg
{doing: barbell back squat} 9/7 // bench 3x6 75 => barbell back squat 9, 7; barbell bench press 3×6 at 75 kg
{doing: barbell back squat} 10/3 // bench 3x6 75 => barbell bench press 3×6 at 75 kg on 2025-03-10
9/7 // bench 3x6 75 => barbell bench press 3×6 at 75 kg on 2024-07-09
sat wu bar x10 bench, 50x6 => barbell bench press 10 at 20 kg warmup, 6 at 50 kg warmup on 2025-03-08
"""
AGAIN = """
squat 3x6 95 | same for bench at 70 => barbell back squat 3×6 at 95 kg; barbell bench press 3×6 at 70 kg
squat 3x6 95 | bench the same with 70kg => barbell back squat 3×6 at 95 kg; barbell bench press 3×6 at 70 kg
squat 95x6 | 95x5 | same for bench at 70 => barbell back squat 6 at 95 kg, 5 at 95 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(FEWER + OPEN.strip()))
def test_fewer_sets_steps_and_what_stays_open(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("told", "standing"), dialogues(AGAIN))
def test_the_same_sets_of_another_lift(told, standing) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("text", "context", "meant"), readings(NAMED + LAST.strip() + BODY))
def test_sets_told_in_passing(text, context, meant) -> None:
    assert said(text, context) == meant


COUNTED = """
3 rounds 9 pull ups, 18 push ups => pull-up 3×9; push-up 3×18
3 rounds of 9 pull ups 18 push ups => pull-up 3×9; push-up 3×18
lateral raise 14s: 9 11 13 => ask: dumbbell lateral raise 14 at 9 kg each, 14 at 11 kg each, 14 at 13 kg each | dumbbell lateral raise 9 at 14 kg each, 11 at 14 kg each, 13 at 14 kg each
bench 2x20kg plates x 5 => ask: barbell bench press 2 at 20 kg, 5 at 20 kg
push ups 3x11 with a 10kg plate => push-up 3×11 at +10 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(COUNTED))
def test_rounds_plates_and_rising_numbers(text, context, meant) -> None:
    assert said(text, context) == meant
