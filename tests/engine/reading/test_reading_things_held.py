"""What was held, how often and how far, told in words beside the sets; and sets announced by what they were like."""

# ruff: noqa: E501 — a message and its reading stand on one line each

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

BARS = """
bench with just the empty bar, 9 reps, 3 sets, that's me for today => barbell bench press 3×9 at 20 kg
bench empty bar, 9, 9, 8 => barbell bench press 2×9 at 20 kg, 8 at 20 kg
squat bar only, 3 sets of 9 => barbell back squat 3×9 at 20 kg
squat, only the bar today, 9 9 8 => barbell back squat 2×9 at 20 kg, 8 at 20 kg
squats with nothing but the bar, 3x9 => barbell back squat 3×9 at 20 kg
Kniebeuge nur mit leerer Stange, 3x9 => barbell back squat 3×9 at 20 kg
{unit: lb} bench empty bar, 9, 9 => barbell bench press 2×9 at 45 lb
squat bar, 60x5, 80x3 => barbell back squat 5 at 60 kg, 3 at 80 kg
"""

IMPLEMENTS = """
farmers with the two 22s, once round the house is 30m, did it three times => farmer's walk 3×30 m at 22 kg each
farmers with two 22s, 45m, three times => farmer's walk 3×45 m at 22 kg each
swings with two 14kg kettlebells 3x9 => kettlebell swing 3×9 at 14 kg
db bench two 28s 3x9 => dumbbell bench press 3×9 at 28 kg each
suitcase carry 22kg, each lap is 25m, did 4 laps => suitcase carry 4×25 m at 22 kg
sled push 90kg, one length is 15m, 6 lengths => sled push 6×15 m at 90 kg
53# bell swings: 19 19 14 => kettlebell swing 2×19 at 53 lb, 14 at 53 lb
get ups with the 18k, one each side, did that three times => turkish get-up 3×1 at 18 kg
goblet squats with a 18, 9 reps, did it four times => goblet squat 4×9 at 18 kg
pull ups with a 5kg plate 6 6 5 => pull-up 2×6 at +5 kg, 5 at +5 kg
farmer carry: 28kg each hand, 3 rounds of 45m => farmer's walk 3×45 m at 28 kg each
suitcase carry with the 22, 3 rounds of 35m => suitcase carry 3×35 m at 22 kg
swings 22kg 4 rounds of 9 => kettlebell swing 4×9 at 22 kg
squat 95x4 then 3 rounds of 9 push ups => barbell back squat 4 at 95 kg; push-up 3×9
plank with a 15 on my back, 50s => plank 50 s at +15 kg
"""

ONES = """
smith bench, warmed up with 35x11 and 55x9, then three proper ones: 80x9, 80x8, 80x6 => smith machine bench press 11 at 35 kg warmup, 9 at 55 kg warmup, 9 at 80 kg, 8 at 80 kg, 6 at 80 kg
bench 55x9 then two heavy ones: 80x6, 80x5 => barbell bench press 9 at 55 kg, 6 at 80 kg, 5 at 80 kg
bench 55x9 and then the three that count: 80x6, 80x6, 80x5 => barbell bench press 9 at 55 kg, 2×6 at 80 kg, 5 at 80 kg
bench 55x9 then 2 real ones 80x6 80x5 => barbell bench press 9 at 55 kg, 6 at 80 kg, 5 at 80 kg
Bankdrücken 55x9, dann zwei richtige: 80x6, 80x5 => barbell bench press 9 at 55 kg, 6 at 80 kg, 5 at 80 kg
bench 55x9, three proper ones: 80x6, 80x5 => ask: barbell bench press 9 at 55 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(BARS))
def test_an_empty_bar_ahead_of_counts_alone_is_their_load(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(IMPLEMENTS))
def test_what_was_held_and_how_far_one_round_was_is_of_each_set(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(ONES))
def test_a_count_of_described_sets_ahead_of_their_list_is_no_set(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
leg extension 55 for 11, no rest, 40 for 9, no rest, 25 for 14 => leg extension 11 at 55 kg, 9 at 40 kg drop, 14 at 25 kg drop
lat raises: 10s for 14 and 14, third set 11 and straight away the 6s for another 9 => dumbbell lateral raise 2×14 at 10 kg each, 11 at 10 kg each, 9 at 6 kg each drop
Beinstrecker 55 x 11, sofort 40 x 9 => leg extension 11 at 55 kg, 9 at 40 kg drop
bench 55x9, no rest, 55x6 => barbell bench press 9 at 55 kg, 6 at 55 kg
bench 55x9 immediately 19 push ups => barbell bench press 9 at 55 kg; push-up 19
bench 3x9 55, no rest => barbell bench press 3×9 at 55 kg
"""),
)
def test_a_lighter_set_that_came_at_once_is_a_drop(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
pec deck 55kg 11 reps, ten breaths, 4 more, ten breaths, 2 more => pec deck 11 at 55 kg, 4 at 55 kg rest-pause, 2 at 55 kg rest-pause
pec deck 55x11, 15 seconds rest, 4 more, 15 seconds, 2 more => pec deck 11 at 55 kg, 4 at 55 kg rest-pause, 2 at 55 kg rest-pause
chin ups 9, short rest, 4, short rest, 2 => chin-up 9, 4 rest-pause, 2 rest-pause
pec deck 55 11, 15s rest, 4, 15s rest, 2 => pec deck 11 at 55 kg, 4 at 55 kg rest-pause, 2 at 55 kg rest-pause
pull ups 9, short rest, 8, short rest, 7 => pull-up 9, 8, 7
squat 95x4, rest, 95x4 => barbell back squat 2×4 at 95 kg
"""),
)
def test_few_reps_behind_a_breath_are_of_the_same_set(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
missed 127.5 on bench, then 120x1 => barbell bench press 0 at 127.5 kg missed, 1 at 120 kg
bench missed 127.5 then 120 for 1 then 110 for 4 => barbell bench press 0 at 127.5 kg missed, 1 at 120 kg, 4 at 110 kg
paused bench, 3 sets of 4 with 95, two reps left in me every time => paused bench press 3×4 at 95 kg 2 in reserve
leg press 55 for 11, then i went up to 60 and did 9, and one more of those => leg press 11 at 55 kg, 2×9 at 60 kg
front squats 95 for three, stayed there for two more triples => barbell front squat 3×3 at 95 kg
"""),
)
def test_a_try_ahead_of_all_sets_and_what_is_told_of_each(text, context, meant) -> None:
    assert said(text, context) == meant


SAID_OF_THINGS = """
pushdown 25 12 12 10, straight bar => triceps pushdown 2×12 at 25 kg, 10 at 25 kg
lat pulldown 50 10 10 8 (v bar) => lat pulldown 2×10 at 50 kg, 8 at 50 kg
bench 80 8 8 7 (men's bar) => barbell bench press 2×8 at 80 kg, 7 at 80 kg
paused squat same bar 3 => pause squat 3
squat 10 (empty bar) => barbell back squat 10 at 20 kg
squat 60 5 5 5 then bar 10 => barbell back squat 3×5 at 60 kg, 10 at 20 kg warmup
farmers with the 24s 40m => farmer's walk 40 m at 24 kg each
squat 3x5 100, another belt => barbell back squat 3×5 at 100 kg
squat 3x5 100, another one => barbell back squat 4×5 at 100 kg
farmers 32s 20m there and back => ask: farmer's walk 20 m at 32 kg each
incline db press 3x10 30, bench on 3 => incline dumbbell bench press 3×10 at 30 kg each
bench 80x8, 2 of 3 done => barbell bench press 8 at 80 kg
bench 80x8 (chalked up twice) => ask: barbell bench press 8 at 80 kg
bench 80x8 (did it twice) => barbell bench press 2×8 at 80 kg
bench 60 3x12 then ohp same but 10 => ask: barbell bench press 3×12 at 60 kg; barbell overhead press 10 at 60 kg
bench 80x8, grip failed => barbell bench press 8 at 80 kg
bench 80x8, camera failed => ask: barbell bench press 8 at 80 kg
squat 3x5 100, maybe one more => ask: barbell back squat 4×5 at 100 kg
pull ups 10 8 7 (stopped at 8) => ask: pull-up 10, 8, 7
single leg rdl 20kg 3x8, left first => single-leg romanian deadlift 3×8 at 20 kg each
plank 60s full range => plank 60 s
pull ups 12 full range => pull-up 12
bench 80x8 total pump => ask: barbell bench press 8 at 80 kg
bench 80x8 total => ask: barbell bench press 8 at 80 kg
bench 80 8 8 7 kcal 2300 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
pull ups 10 8 7 started at 7 => ask: pull-up 10, 8, 7
pull ups 10 8 7 got here at 7 => pull-up 10, 8, 7
squat 3x5 100 2 beers last night => ask: barbell back squat 3×5 at 100 kg
bench 80x8 2 girls filming => ask: barbell bench press 8 at 80 kg, 2 at 80 kg
bench 80 8 8 7 3 eggs and toast => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg, 3 at 80 kg
bench 80 8 8 7 less tired than last week => barbell bench press 2×8 at 80 kg, 7 at 80 kg
squat 3x5 100 long warm up => barbell back squat 3×5 at 100 kg
squat 60x5 easy warm up => barbell back squat 5 at 60 kg warmup
squat 3x5 100 big dinner last night => ask: barbell back squat 3×5 at 100 kg
squat 3x5 100 in the garage yesterday => barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 rest day yesterday => barbell back squat 3×5 at 100 kg
pull ups 10 8 7 barbell felt slick => ask: pull-up 10, 8, 7
plank 45 minutes => ask: plank 2700 s
plank 10 min => plank 600 s
"""


@pytest.mark.parametrize(("text", "known", "meant"), readings(SAID_OF_THINGS))
def test_what_is_said_of_bars_benches_and_the_like_tells_no_set(text, known, meant):
    assert said(text, known) == meant


TWO_HELD = """
db bench 2x20 3x10 => dumbbell bench press 3×10 at 20 kg each
bulgarians 2x16 3x8 per leg => bulgarian split squat 3×8 at 16 kg each
db shoulder press 2x18 4x8 => dumbbell shoulder press 4×8 at 18 kg each
hammer curl 2x14 3x12 => ask: hammer curl 3×12 at 14 kg each
pull ups 2x20 3x10 => pull-up 2×20, 3×10
farmers with the 24s, 3 times => ask: farmer's walk 3 at 24 kg each
sled push 100 x3 => ask: sled push 3 at 100 kg
leg press 100 a side 3x10 => ask: leg press 3×10 at 100 kg | leg press 3×10 at 200 kg
hack squat 40 per side 3x8 => ask: hack squat 3×8 at 40 kg | hack squat 3×8 at 80 kg
leg ext 50 3x12, left only 10 on the last => ask: leg extension 2×12 at 50 kg, 10 at 50 kg
leg ext 50 3x12, last set 10, left knee tight => leg extension 2×12 at 50 kg, 10 at 50 kg, pain
"""


@pytest.mark.parametrize(("text", "known", "meant"), readings(TWO_HELD))
def test_two_implements_and_plates_a_side_are_loads(text, known, meant):
    assert said(text, known) == meant
