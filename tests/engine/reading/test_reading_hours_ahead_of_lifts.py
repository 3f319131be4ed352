"""An hour ahead of a lift and a rest behind its sets are said of the session, and are no numbers of a set."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
kl 18 knäböj 3x5 100 => barbell back squat 3×5 at 100 kg
kl 18.30 knäböj 3x5 100 => barbell back squat 3×5 at 100 kg
o 18 przysiad 3x5 100 => barbell back squat 3×5 at 100 kg
alle 8 panca piana 3x5 100 => barbell bench press 3×5 at 100 kg
a las 8 sentadilla 3x5 100 => barbell back squat 3×5 at 100 kg
à 18 squat 3x5 100 => barbell back squat 3×5 at 100 kg
às 18 agachamento 3x5 100 => barbell back squat 3×5 at 100 kg
om 18 squat 3x5 100 => barbell back squat 3×5 at 100 kg
в 18 присед 3x5 100 => barbell back squat 3×5 at 100 kg
um 18 Kniebeuge 3x5 100 => barbell back squat 3×5 at 100 kg
at 6 squat 3x5 100 => barbell back squat 3×5 at 100 kg
18.30 squat 3x5 100 => barbell back squat 3×5 at 100 kg
17.50 db curl 3x10 => dumbbell curl 3×10 at 17.5 kg each
bench 3x5 80, 90s => barbell bench press 3×5 at 80 kg
bench 3x5 80 kg, 2min => barbell bench press 3×5 at 80 kg
bench 3x5 80, 90" => barbell bench press 3×5 at 80 kg
bench 3x5 80, 90s, felt good => barbell bench press 3×5 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_hours_and_rests_leave_the_sets_alone(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("text", ["8 squat 3x5 100", "from 60 squat 3x5 100", "db bench 3x8 50, 60s"])
def test_a_number_that_may_be_of_the_sets_is_asked(text) -> None:
    assert said(text).startswith("ask:")


@pytest.mark.parametrize("text", ["clean & jerk 60 2+1", "power clean + jerk 60 2+1", "c&j 60 1+1", "squat 30x30x30"])
def test_reps_of_each_lift_of_a_complex_and_equal_numbers_are_asked(text) -> None:
    assert said(text).startswith("ask:")


def test_a_pause_within_a_set_of_one_lift_is_told() -> None:
    assert said("snatch 60 2+1") == "snatch 2 at 60 kg, 1 at 60 kg rest-pause"
    assert said("push ups 8x8x8").startswith("push-up 3×8")
