"""What was left out or only spoken of, told ahead of the sets that were done."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
didn't do squats only bench 3x5 80 => barbell bench press 3×5 at 80 kg
skipped squats did bench 3x5 80 => barbell bench press 3×5 at 80 kg
skipped the squats and did bench 3x5 80 => barbell bench press 3×5 at 80 kg
couldn't do squats so bench 3x5 80 => barbell bench press 3×5 at 80 kg
no time for squats just bench 3x5 80 => barbell bench press 3×5 at 80 kg
cancelled squats did leg press 3x10 150 => leg press 3×10 at 150 kg
skipped squats and curls only did bench 3x5 80 => barbell bench press 3×5 at 80 kg
didn't do squats or bench 3x5 80 => no sets
"""),
)
def test_a_lift_left_out_takes_no_sets_of_another_with_it(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    "text",
    [
        "skipped the last set of bench 3x8 60",
        "skipped last set on bench 3x8 60",
        "all but the last set of bench 3x8 60",
        "dropped the last set of bench 3x8 60",
        "cut the last set of bench 3x8 60",
        "didn't do the last set of bench 3x8 60",
        "left out the last set of bench 3x8 60",
    ],
)
def test_a_set_left_out_ahead_of_several_is_asked_about(text: str) -> None:
    assert said(text) == "ask: barbell bench press 3×8 at 60 kg"


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
the last set of bench 80x5 rpe 9 => barbell bench press 5 at 80 kg RPE 9
skipped the last rep, bench 80x7 => barbell bench press 7 at 80 kg
elbow hurt on the last set of bench 3x8 60 => barbell bench press 3×8 at 60 kg, pain
"""),
)
def test_a_place_ahead_of_a_lift_is_not_always_left_out(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
front squat up to 95: 75x3 85x3 95x3 => barbell front squat 3 at 75 kg, 3 at 85 kg, 3 at 95 kg
squat worked up to 120: 80x5 100x3 120x1 => barbell back squat 5 at 80 kg, 3 at 100 kg, 1 at 120 kg
squat ramped to 120: 80x5, 100x3, 120x1 => barbell back squat 5 at 80 kg, 3 at 100 kg, 1 at 120 kg
squat built up to 120x1: 80x5 100x3 120x1 => barbell back squat 5 at 80 kg, 3 at 100 kg, 1 at 120 kg
squat worked up to a heavy single 120: 80x5 120x1 => barbell back squat 5 at 80 kg, 1 at 120 kg
squat worked up to a single at 120: 80x5 120x1 => barbell back squat 5 at 80 kg, 1 at 120 kg
squat worked up to 120 for a single: 80x5 120x1 => barbell back squat 5 at 80 kg, 1 at 120 kg
Kniebeuge bis 120: 80x5 100x3 120x1 => barbell back squat 5 at 80 kg, 3 at 100 kg, 1 at 120 kg
squat built up to 120x1: 80x5 120x2 => barbell back squat 1 at 120 kg, 5 at 80 kg, 2 at 120 kg
bench up to 100x3 => barbell bench press 3 at 100 kg
"""),
)
def test_the_load_that_heads_a_ramp_is_no_set_of_its_own(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
it is 35c in here squat 3x5 100 => barbell back squat 3×5 at 100 kg
squat 3x5 100, 35c in here => barbell back squat 3×5 at 100 kg
it is hot in here squat 3x5 100 => barbell back squat 3×5 at 100 kg
8c in the garage, squat 3x5 100 => barbell back squat 3×5 at 100 kg
bench 40c8 => barbell bench press 8 at 40 kg
bench 3x8 60c => barbell bench press 3×8 at 60 kg
"""),
)
def test_how_warm_it_is_counts_nothing(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
deadlift 140 didn't go => conventional deadlift 0 at 140 kg missed
deadlift 140 wouldn't budge => conventional deadlift 0 at 140 kg missed
deadlift 140 crushed me => conventional deadlift 0 at 140 kg missed
deadlift 130x3, 140 didn't go => conventional deadlift 3 at 130 kg, 0 at 140 kg missed
squat 100x5 didn't go => ask: barbell back squat 5 at 100 kg
squat 3x5 100 didn't go => ask: barbell back squat 3×5 at 100 kg
squat 3x5 100 didn't go well => barbell back squat 3×5 at 100 kg
bench 3x8 60 didn't go to failure => barbell bench press 3×8 at 60 kg
"""),
)
def test_a_load_that_did_not_go_is_a_miss(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant
