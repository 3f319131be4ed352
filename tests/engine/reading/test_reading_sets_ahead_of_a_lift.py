"""Whole sets in front of a lift that tells whole sets of its own are of the lift in hand, or it is asked."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

BENCHING = "doing: barbell bench press; last: barbell bench press 82"
OF_THE_LIFT_IN_HAND = f"""
{{{BENCHING}}} 3x6 82 pendlay 3x9 62         => barbell bench press 3×6 at 82 kg; pendlay row 3×9 at 62 kg
{{{BENCHING}}} 82x6 82x6 pendlay 62x9        => barbell bench press 2×6 at 82 kg; pendlay row 9 at 62 kg
{{{BENCHING}}} 82 6 6 5 pendlay 62 9 9 8     => barbell bench press 2×6 at 82 kg, 5 at 82 kg; \
pendlay row 2×9 at 62 kg, 8 at 62 kg
{{{BENCHING}}} 6 6 5 squat 9 9 8             => barbell bench press 2×6 at 82 kg, 5 at 82 kg; barbell back squat 2×9, 8
{{{BENCHING}}} 60 squat 3x9                  => barbell back squat 3×9 at 60 kg
{{{BENCHING}}} 3x9 squat 62                  => barbell back squat 3×9 at 62 kg
{{{BENCHING}}} 9 9 8 squat 62                => barbell back squat 2×9 at 62 kg, 8 at 62 kg
{{{BENCHING}}} 62x5 82x3 squat 102x5         => ask: barbell back squat 5 at 62 kg, 3 at 82 kg, 5 at 102 kg
62x5 82x3 squat 102x5                        => barbell back squat 5 at 62 kg, 3 at 82 kg, 5 at 102 kg
3x6 82 pendlay 3x9 62                        => ask: pendlay row 3×9 at 62 kg
2x12kg lateral raise 3x11                     => dumbbell lateral raise 3×11 at 12 kg each
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(OF_THE_LIFT_IN_HAND))
def test_sets_in_front_of_a_lift(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant
