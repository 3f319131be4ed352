"""A count of sets ahead of its lift adds none to the list behind it: "3 sets of squats 100x5 100x5 100x4"."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

COUNTED = """
3 sets of squats 100x5 100x5 100x4           => barbell back squat 2×5 at 100 kg, 4 at 100 kg
3 sets of bench 60x8, 60x8, 60x7             => barbell bench press 2×8 at 60 kg, 7 at 60 kg
four sets of leg press 120x12 140x10 160x8 160x8 => leg press 12 at 120 kg, 10 at 140 kg, 2×8 at 160 kg
2 sets of deadlift 140x5 150x3               => conventional deadlift 5 at 140 kg, 3 at 150 kg
3 sets of paused squats 100x5 100x5 100x4    => pause squat 2×5 at 100 kg, 4 at 100 kg
3 sets of squats 100 for 5, 100 for 5, 100 for 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
3 sets of squats 100x5 @8 100x5 @8.5 100x5 @9 => \
barbell back squat 5 at 100 kg RPE 8, 5 at 100 kg RPE 8.5, 5 at 100 kg RPE 9
3 sets of squats 100x5,5,4                   => barbell back squat 2×5 at 100 kg, 4 at 100 kg
3 sets of squats 100kg: 5 5 4                => barbell back squat 2×5 at 100 kg, 4 at 100 kg
3 sets of bench 60 8 8 7                     => barbell bench press 2×8 at 60 kg, 7 at 60 kg
3 sets of dips 12 10 9                       => dip 12, 10, 9
3 sets of plank 60s 60s 45s                  => plank 2×60 s, 45 s
3 sets plank: 60 sec, 60 sec, 45 sec         => plank 2×60 s, 45 s
plank 3 sets 60s 60s 45s                     => plank 2×60 s, 45 s
4 sets of farmers 40m 40m 40m 30m            => farmer's walk 3×40 m, 30 m
3 series de sentadilla 100x5 100x5 100x4     => barbell back squat 2×5 at 100 kg, 4 at 100 kg
3 séries de squat 100x5 100x5 100x4          => barbell back squat 2×5 at 100 kg, 4 at 100 kg
3 séries de agachamento 100x5 100x5 100x4    => barbell back squat 2×5 at 100 kg, 4 at 100 kg
3 sets of squats 100x5, 2 sets of bench 60x8 60x8 => barbell back squat 3×5 at 100 kg; barbell bench press 2×8 at 60 kg
"""
ONE_SET_TOLD = """
3 sets of squats 100x5                       => barbell back squat 3×5 at 100 kg
3 sets of squats 3x5 100                     => barbell back squat 3×5 at 100 kg
3 sets of plank 60s                          => plank 3×60 s
3 sets of squats 100x5, then 110x3           => barbell back squat 3×5 at 100 kg, 3 at 110 kg
3 sets of squats 100x5, top set 110x3        => barbell back squat 3×5 at 100 kg, 3 at 110 kg
3 sets of squats 100x5, then 2 sets 90x5     => barbell back squat 3×5 at 100 kg, 2×5 at 90 kg
3 sets of squats 100x5 2 sets of 90x5        => barbell back squat 3×5 at 100 kg, 2×5 at 90 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), [*readings(COUNTED), *readings(ONE_SET_TOLD)])
def test_a_count_ahead_of_a_lift_adds_no_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text",
    [
        "3 sets of squats 100x5 100x5",
        "3 sets of squats 100x5, 110x3",
        "4 sets of bench 60x8 60x8 60x7",
        "2 sets of plank 60s, 45s, 30s",
    ],
)
def test_another_number_of_sets_than_was_counted_is_asked_about(text: str) -> None:
    assert said(text).startswith("ask:")


@pytest.mark.parametrize(
    "text",
    [
        "3 sets squats 100x5 2 sets of 90x5",
        "4 sets bench 60x8, 3 sets of 55x8",
        "squats 100x5 and 2 at 90x5",
        "bench 60x8, 3 at 55x8",
        "squat 100x5 then 2 with 90x5",
    ],
)
def test_a_count_behind_a_set_that_may_be_of_reps_or_part_of_the_sum_is_asked_about(text: str) -> None:
    assert said(text).startswith("ask:")
