"""Numbers told beside the sets that are none of them: tempo, totals, estimates, progress, help, labels of sets."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TEMPO = """\
tempo squat 3-1-1 4x6 85 => barbell back squat 4×6 at 85 kg
bench 3x8 62.5 slow tempo, 4-1-2 => barbell bench press 3×8 at 62.5 kg
tempo bench 62x8-7-6 => barbell bench press 8 at 62 kg, 7 at 62 kg, 6 at 62 kg
tempo bench 62 8-7-6 => barbell bench press 8 at 62 kg, 7 at 62 kg, 6 at 62 kg
tempo squat 60x5 => barbell back squat 5 at 60 kg
tempo squat 60x5 60x5 => barbell back squat 2×5 at 60 kg
tempo squat 31x1 105x5 105x5 => barbell back squat 2×5 at 105 kg
"""
ESTIMATES = """\
squat 3x5 105 e1rm 121 => barbell back squat 3×5 at 105 kg
squat 3x5 105, est max 121 => barbell back squat 3×5 at 105 kg
squat 105x5x3 volume 1575kg => barbell back squat 3×5 at 105 kg
squat 4x3 115 88% of max => barbell back squat 4×3 at 115 kg
squat 4x3 @ 88%, 115 => barbell back squat 4×3 at 115 kg
squat 4x3 @ 88% => ask: barbell back squat 4×3
squat 105kg 3x5 bw 81 => barbell back squat 3×5 at 105 kg
"""
PROGRESS = """\
bench 3x5 82.5 (+2.5 from last week) => barbell bench press 3×5 at 82.5 kg
bench 3x5 82.5, 2.5 more than last week => barbell bench press 3×5 at 82.5 kg
bench 82.5 6 5 5 (+1 rep vs last week) => barbell bench press 6 at 82.5 kg, 2×5 at 82.5 kg
{last: barbell bench press 80} bench 3x5, 2.5 more than last week => barbell bench press 3×5 at 82.5 kg
"""
HELP = """
bench 62.5x11 + 3 assisted => barbell bench press 11 at 62.5 kg
bench 62.5x9+2 forced, 62.5x7 => barbell bench press 9 at 62.5 kg, 7 at 62.5 kg
bench 62.5x8 +2 with spotter => barbell bench press 8 at 62.5 kg
chin ups 8 + 3 band assisted => chin-up 8
bench 82.5x5 82.5x4+1 fail => barbell bench press 5 at 82.5 kg, 4 at 82.5 kg missed
chins 7 5 then 4 with the band => ask: chin-up 7, 5, 4
pull ups 9, 4 assisted => ask: pull-up 4 at −9 kg | pull-up 9, 4
pull ups 9, 8, 6 with red band => pull-up 9, 8, 6
"""
LABELS = """
bench set 1 82.5x8 set 2 82.5x7 => barbell bench press 8 at 82.5 kg, 7 at 82.5 kg
bench s1 82.5 8 s2 82.5 7 s3 80 7 => barbell bench press 8 at 82.5 kg, 7 at 82.5 kg, 7 at 80 kg
session 14 squat 105 3x5 => barbell back squat 3×5 at 105 kg
leg extension 45x15/35x10/25x10 => leg extension 15 at 45 kg, 10 at 35 kg, 10 at 25 kg
bench 62/72/82x5 => barbell bench press 5 at 62 kg, 5 at 72 kg, 5 at 82 kg
lying leg curl 42 to failure 12, 9 => lying leg curl 12 at 42 kg to failure, 9 at 42 kg to failure
bench 62.5 to failure 15 => barbell bench press 15 at 62.5 kg to failure
bench 62.5 8 8 to failure => barbell bench press 8 at 62.5 kg, 8 at 62.5 kg to failure
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TEMPO + ESTIMATES + PROGRESS))
def test_numbers_of_a_remark_are_no_sets(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(HELP))
def test_reps_done_with_help_are_told_apart(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(LABELS))
def test_labels_and_signs_between_sets_part_them(text, context, meant) -> None:
    assert said(text, context) == meant
