"""What pops or tears and hurts nobody is no pain, and what does is. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
notification popped up, squat 3x5 100 => barbell back squat 3×5 at 100 kg
popped in for a quick session, squat 3x5 100 => barbell back squat 3×5 at 100 kg
bench 3x5 80 popped right up => barbell bench press 3×5 at 80 kg
belt popped open on squat 100x5 => barbell back squat 5 at 100 kg
tweaked my stance, squat 3x5 100 => barbell back squat 3×5 at 100 kg
torn shorts, squat 3x5 100 => barbell back squat 3×5 at 100 kg
knee popped, squat 3x5 100 => barbell back squat 3×5 at 100 kg, pain
something popped in my back on deadlift 100x5 => conventional deadlift 5 at 100 kg, pain
shoulder popped out on bench 80x5 => barbell bench press 5 at 80 kg, pain
tweaked my back, squat 3x5 100 => barbell back squat 3×5 at 100 kg, pain
memory popped up: bench 100x5 => no sets
throwback to bench 120x5 => no sets
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_pops_and_hurts_nobody_is_no_pain(text, context, meant) -> None:
    assert said(text, context) == meant
