"""Seconds of a rest between the parts of one set are no reps. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
bench 80x8 rest 15 4 => barbell bench press 8 at 80 kg, 4 at 80 kg rest-pause
bench 80x8 rest 15 4 rest 15 3 => barbell bench press 8 at 80 kg, 4 at 80 kg rest-pause, 3 at 80 kg rest-pause
bench 80x8, rest 15s, 4, rest 15s, 3 => barbell bench press 8 at 80 kg, 4 at 80 kg rest-pause, 3 at 80 kg rest-pause
bench 80 8 rest 20 4 rest 20 3 => barbell bench press 8 at 80 kg, 4 at 80 kg rest-pause, 3 at 80 kg rest-pause
bench 80x8 rest 15 seconds then 4 => barbell bench press 8 at 80 kg, 4 at 80 kg rest-pause
bankdrücken 80x8 pause 15 4 => barbell bench press 8 at 80 kg, 4 at 80 kg rest-pause
press banca 80x8 descanso 15 4 => barbell bench press 8 at 80 kg, 4 at 80 kg rest-pause
développé couché 80x8 repos 15 4 => barbell bench press 8 at 80 kg, 4 at 80 kg rest-pause
bench 80x8 rest 15 8 => barbell bench press 2×8 at 80 kg
bench 80x8 rest 60 8 rest 60 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 rest 90 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
curl 3x10 15 rest 3 => ask: barbell curl 3×10 at 15 kg | dumbbell curl 3×10 at 15 kg each | ez-bar curl 3×10 at 15 kg
squat 5x5 100 rest 3 => barbell back squat 5×5 at 100 kg
bench 80x8 rest 2 80x8 => barbell bench press 2×8 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_seconds_of_a_rest_are_no_set(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text", ["squat 100x5 rest 3 5", "bench 80x20 rest 15 12", "bench 80x8 15 rest 4", "bench 80x8, rest 12 10 8"]
)
def test_where_they_may_be_reps_it_is_asked(text) -> None:
    assert said(text).startswith("ask:")
