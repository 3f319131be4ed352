"""Numbers whose part in a set is told by what stands between or around them. Common practice, no source."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said, standing_after

TOLD = """
db bench 3x9 48 total (24 each) => dumbbell bench press 3×9 at 24 kg each
db bench 3x9 24 each (48 total) => dumbbell bench press 3×9 at 24 kg each
db bench 48kg total, 24 per hand: 9 8 8 => dumbbell bench press 9 at 24 kg each, 2×8 at 24 kg each
plank 3 à 50 Sek => plank 3×50 s
Liegestütze 3 à 15 => push-up 3×15
Kniebeuge 4 à 12 mit 60 => barbell back squat 4×12 at 60 kg
gainage 3 séries à 50 s => plank 3×50 s
développé couché 8 à 10 60 => ask: barbell bench press 8 at 60 kg, 10 at 60 kg | barbell bench press 8×10 at 60 kg
squat 97.5x5x3 PB by 2.5 => barbell back squat 3×5 at 97.5 kg
squat 3x5 95, new PR by 5kg => barbell back squat 3×5 at 95 kg
3 sets plank 40s => plank 3×40 s
side plank 2 sets 30s => side plank 2×30 s
fp 22 15,15 => face pull 2×15 at 22 kg
hammers 14 12,12,10 => hammer curl 2×12 at 14 kg each, 10 at 14 kg each
face pull 22 15/14 => face pull 15 at 22 kg, 14 at 22 kg
pull ups 11 9,8 => pull-up 11, 9, 8
{last: dip 10} dips 14 12 9 then +10kg 7 6 => dip 14, 12, 9, 7 at +10 kg, 6 at +10 kg
{last: pull-up 5} pull ups 9 8, +7.5 5 5 => pull-up 9, 8, 2×5 at +7.5 kg
{last: dip 10} dips 14 12 9 => dip 14 at +10 kg, 12 at +10 kg, 9 at +10 kg
{last: barbell back squat 95} squat 5 5 5 then +10kg 3 3 => barbell back squat 3×5 at 95 kg, 2×3 at 105 kg
{last: barbell back squat 95} squat 5 5 5 +10kg => barbell back squat 3×5 at 105 kg
{last: barbell back squat 95; doing: barbell back squat} got 6 out of it @9 => barbell back squat 6 at 95 kg RPE 9
squat 95x5 out of 8 => ask: barbell back squat 5 at 95 kg
"""
REPEATED = [
    ("squat 95x5 | knocked out three more sets just like it", "barbell back squat 4×5 at 95 kg"),
    ("squat 95x5 | banged out two more exactly like that", "barbell back squat 3×5 at 95 kg"),
    ("squat 95x5 | two more sets like it", "barbell back squat 3×5 at 95 kg"),
]


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_stands_around_a_number_tells_its_part(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("messages", "meant"), REPEATED)
def test_sets_like_the_last_are_counted(messages: str, meant: str) -> None:
    assert standing_after(messages) == meant


SAID_OF_SETS = """
bench 75x5, bar bounced twice => barbell bench press 5 at 75 kg
bench 75x5, touched chest twice => barbell bench press 5 at 75 kg
bench 75x5, did it twice => barbell bench press 2×5 at 75 kg
squat 135x5, belt on for the last one => barbell back squat 5 at 135 kg
ohp 50: 5 5 4, dropped to 45: 6 6 => barbell overhead press 2×5 at 50 kg, 4 at 50 kg, 2×6 at 45 kg
ohp 50: 5 5 4, drop 40: 8 6 => \
barbell overhead press 2×5 at 50 kg, 4 at 50 kg, 8 at 40 kg drop, 6 at 40 kg drop
squat 95x5+: 9 => barbell back squat 9 at 95 kg
squat 80x5, 90x3, 100x1+ (4) => barbell back squat 5 at 80 kg, 3 at 90 kg, 4 at 100 kg
deadlift 145 singles x5 => conventional deadlift 5×1 at 145 kg
squat 115 doubles x 4 => barbell back squat 4×2 at 115 kg
bench 75x10 (6+4) => ask: barbell bench press 10 at 75 kg
lat pulldown 60 3x10 wide, then 50 3x12 close grip => lat pulldown 3×10 at 60 kg, 3×12 at 50 kg
bench 75 3x8, then 60 3x10 close grip => barbell bench press 3×8 at 75 kg; close-grip bench press 3×10 at 60 kg
bench pyramid 60x10 70x8 75x6 => barbell bench press 10 at 60 kg, 8 at 70 kg, 6 at 75 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SAID_OF_SETS))
def test_remarks_and_results_beside_sets_make_no_more_sets(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
