"""A load without a unit beside one that tells its own: by what both weigh."""

# ruff: noqa: E501 — a message and its reading stand on one line each

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

MIXED = """
squat 205x5 then 95kg x 6 => barbell back squat 5 at 205 lb, 6 at 95 kg
{unit: lb} squat 205x5 then 95kg x 6 => barbell back squat 5 at 205 lb, 6 at 95 kg
squat 115x5 155x5 205x5 then 95kg x 6 => barbell back squat 5 at 115 lb, 5 at 155 lb, 5 at 205 lb, 6 at 95 kg
squat 95kg x 6, 205x5, 90x3 => barbell back squat 6 at 95 kg, 5 at 205 lb, 3 at 90 kg
squat 95kg x 6, 205x5 => ask: barbell back squat 6 at 95 kg, 5 at 205 kg | barbell back squat 6 at 95 kg, 5 at 205 lb
squat 70x5 90x5 95kg x 6 => barbell back squat 5 at 70 kg, 5 at 90 kg, 6 at 95 kg
squat 90x5, 200lb x 5 => barbell back squat 5 at 90 kg, 5 at 200 lb
{unit: lb} squat 90x5, 200lb x 5 => ask: barbell back squat 5 at 90 kg, 5 at 200 lb | barbell back squat 5 at 90 lb, 5 at 200 lb
leg press 330x10 then 150kg x 10 => ask: leg press 10 at 330 kg, 10 at 150 kg | leg press 10 at 330 lb, 10 at 150 kg
{last: conventional deadlift 210} deadlift 215x1, 95kg 3x8 => conventional deadlift 1 at 215 kg, 3×8 at 95 kg
pull ups +15kg x 5, 10 => pull-up 5 at +15 kg, 10 at +15 kg
lb: squat 205 5 5 => barbell back squat 2×5 at 205 lb
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(MIXED))
def test_a_change_of_unit_within_a_line_is_told_by_what_the_loads_weigh(text, context, meant) -> None:
    assert said(text, context) == meant
