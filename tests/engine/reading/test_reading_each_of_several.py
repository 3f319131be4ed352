"""Values told once for each of several sets, and what stands beside sets without being one."""

# ruff: noqa: E501 — a message and its reading stand on one line each

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

EACH = """
bench 77.5 6 6 6 @ 7 8 9 => barbell bench press 6 at 77.5 kg RPE 7, 6 at 77.5 kg RPE 8, 6 at 77.5 kg RPE 9
bench 77.5 6 6 6 @ 7, 8, 8.5 => barbell bench press 6 at 77.5 kg RPE 7, 6 at 77.5 kg RPE 8, 6 at 77.5 kg RPE 8.5
bench 77.5 6 6 6 @ 7 8 => ask: barbell bench press 3×6 at 77.5 kg RPE 7, 8 at 77.5 kg
bench 77.5 6 6 @8, 5 => barbell bench press 2×6 at 77.5 kg RPE 8, 5 at 77.5 kg
{doing: lat pulldown} 13, 11, 9 @ 45, 50, 55 => lat pulldown 13 at 45 kg, 11 at 50 kg, 9 at 55 kg
lat pulldown 13 11 9 @ 45 50 55 => lat pulldown 13 at 45 kg, 11 at 50 kg, 9 at 55 kg
deadlift 3@7 3@8 3@8.5 all with 150 => conventional deadlift 3 at 150 kg RPE 7, 3 at 150 kg RPE 8, 3 at 150 kg RPE 8.5
preacher 22.5 11/9/7 all to failure => preacher curl 11 at 22.5 kg to failure, 9 at 22.5 kg to failure, 7 at 22.5 kg to failure
deadlift 100, 120, 140 all for 4, belt on, 160x2 => conventional deadlift 4 at 100 kg, 4 at 120 kg, 4 at 140 kg, 2 at 160 kg
{doing: seated cable row} each set 9 reps: 40, 45, 50 => seated cable row 9 at 40 kg, 9 at 45 kg, 9 at 50 kg
hammers 16s x9 drop 12s x8 drop 8s x10, did that twice => hammer curl 9 at 16 kg each, 8 at 12 kg each drop, 10 at 8 kg each drop, 9 at 16 kg each, 8 at 12 kg each drop, 10 at 8 kg each drop
hip thrust 3 x 9 x 110 + 1 x 18 x 70 => barbell hip thrust 3×9 at 110 kg, 18 at 70 kg
leg press myo 130x14 +5 +4 => leg press 14 at 130 kg, 5 at 130 kg rest-pause, 4 at 130 kg rest-pause
11,11,10 on leg ext, 47.5, then one at 35 for 18 => leg extension 2×11 at 47.5 kg, 10 at 47.5 kg, 18 at 35 kg
squat 95 for 3 sets of 5 to 7 => ask: barbell back squat 3×5 at 95 kg | barbell back squat 3×7 at 95 kg
"""
BESIDE = """
incline bench, bench on hole 4, 3x9 52.5 => incline barbell bench press 3×9 at 52.5 kg
squat 65x5 75x5 85x5 and back down 75x5 => barbell back squat 5 at 65 kg, 5 at 75 kg, 5 at 85 kg, 5 at 75 kg
dips -20 assist x 9, -10 x 7, unassisted 3 => dip 9 at −20 kg, 7 at −10 kg, 3
push ups with a 15kg plate on my back 11 11 9 => push-up 2×11 at +15 kg, 9 at +15 kg
wall sit 50s with a 15kg plate x3 => wall sit 3×50 s at +15 kg
bench 92.5 unracked, bailed, 0 reps. then 85x4 => barbell bench press 0 at 92.5 kg missed, 4 at 85 kg
got 3x7 at 70 on bench, 1 more set than tuesday => barbell bench press 3×7 at 70 kg
ex 1 squat 3x6 95 ex 2 bench 3x6 72.5 => barbell back squat 3×6 at 95 kg; barbell bench press 3×6 at 72.5 kg
bench 6 reps at 80, rest 3 min, 6 more, rest 3 min, then 5 => barbell bench press 2×6 at 80 kg, 5 at 80 kg
bench 4x6 @ 75 took 20 minutes, locker 12 jammed => barbell bench press 4×6 at 75 kg
squat 5x5 100 felt like 200 => barbell back squat 5×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(EACH))
def test_as_many_values_as_sets_are_one_each(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(BESIDE))
def test_what_stands_beside_the_sets_is_no_set(text, context, meant) -> None:
    assert said(text, context) == meant


def test_times_in_brackets_are_those_of_the_ways_before_them() -> None:
    from engine.reading import read
    from engine.reading.values import Logged
    from tests.engine.reading.saying import KNOWN, situation

    outcome = read("sled drag 55kg: 30m, 30m (38s, 41s)", situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert [(one.metres, one.seconds) for one in outcome.sets] == [(30, 38), (30, 41)]
