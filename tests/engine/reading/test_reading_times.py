"""How often a set was done: "times three", "3x" behind it, "x3 sets"; and which factor of three counts sets."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

OFTEN = """
rdl 92.5kg x 7 – times three => romanian deadlift 3×7 at 92.5 kg
rdl 92.5kg x 7 times 3 => romanian deadlift 3×7 at 92.5 kg
rdl 92.5 for 7 times three => romanian deadlift 3×7 at 92.5 kg
rdl 92.5x7, times 3 => romanian deadlift 3×7 at 92.5 kg
rdl 92.5x7, x3 sets => romanian deadlift 3×7 at 92.5 kg
rdl 92.5x7 x three sets => romanian deadlift 3×7 at 92.5 kg
rdl 92.5x7 x3 sets of 7 => romanian deadlift 3×7 at 92.5 kg
rdl 92.5 for sets of 7, 3 times => romanian deadlift 3×7 at 92.5 kg
rdl 92.5x7, 3x => romanian deadlift 3×7 at 92.5 kg
rdl 92.5x7 - x3 => romanian deadlift 3×7 at 92.5 kg
rdl 92.5x7 three times => romanian deadlift 3×7 at 92.5 kg
kreuzheben 92,5kg x 7 mal drei => conventional deadlift 3×7 at 92.5 kg
chin ups 7 reps times three => chin-up 3×7
plank 50s, times 3 => plank 3×50 s
rdl 92.5 times 7 => romanian deadlift 7 at 92.5 kg
rdl 92.5x7, x6, x3 => romanian deadlift 7 at 92.5 kg, 6 at 92.5 kg, 3 at 92.5 kg
rdl 92.5x7, x3 => ask: romanian deadlift 3×7 at 92.5 kg | romanian deadlift 7 at 92.5 kg, 3 at 92.5 kg
"""
THREE = """
kettlebell swing 28k x 3 x 15 => kettlebell swing 3×15 at 28 kg
kettlebell swing 28k x 15 x 3 => kettlebell swing 3×15 at 28 kg
kettlebell swing 28k x 2 x 9 @7 => ask: kettlebell swing 2×9 at 28 kg RPE 7 | kettlebell swing 9×2 at 28 kg RPE 7
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(OFTEN))
def test_how_often_a_set_was_done(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(THREE))
def test_a_load_with_its_unit_is_never_reps_of_another(text, context, meant) -> None:
    assert said(text, context) == meant
