"""What is told freely beside sets: by how much it was more, a place that was taken, what may come next."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
deadlift 180x2, 10 more than last month => conventional deadlift 2 at 180 kg
deadlift 180x2, 10 kilos more than in march => conventional deadlift 2 at 180 kg
deadlift 180x2, that's 10 more than my brother => conventional deadlift 2 at 180 kg
pull ups 12, 10, 8 more than half with a band => pull-up 12, 10, 8
bench 3x5 80, 2 more sets => barbell bench press 5×5 at 80 kg
bench was busy so i did 3x12 dips => dip 3×12
bench is taken so doing 3x12 dips => dip 3×12
leg press was broken, did hack squat 80 3x10 => hack squat 3×10 at 80 kg
bench was down to 80x5 today, dips 3x10 => barbell bench press 5 at 80 kg; dip 3×10
squat was dead slow 100x5, bench 80x5 => barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg
rdl 3 sets of 8 with 70, want 72.5 next week => romanian deadlift 3×8 at 70 kg
want 3 sets of 8 with 70 on rdl next week => no sets
bench 80x3 90x2, might go for 100 at the comp => barbell bench press 3 at 80 kg, 2 at 90 kg
managed 6 push ups in a row => push-up 6
dbell bench 14s 10 10 10 => dumbbell bench press 3×10 at 14 kg each
kbell swing 16 3x20 => kettlebell swing 3×20 at 16 kg
"""),
)
def test_what_stands_beside_the_sets_leaves_them_as_they_were(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant
