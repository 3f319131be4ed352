"""Sets done behind a wish or behind somebody's rule are read or asked about, and never passed over as talk."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

BEHIND_A_WISH = """\
wanted 100 on squat, got 95 for 3 => barbell back squat 3 at 95 kg
wanted 100kg on squat, got 95kg for 3 => barbell back squat 3 at 95 kg
wanted 100 on squat but got 95x3 => barbell back squat 3 at 95 kg
wanted 100x3 on squat, got 95 for 3 => barbell back squat 3 at 95 kg
wanted 100 on squat, only 95 for 3 => barbell back squat 3 at 95 kg
wanted 100 on squat, got 3 => no sets
wanted 200 squat, got 4 hours of sleep => no sets
wanted 62.5 on ohp, no chance. 55 it was, 5 5 4 => ask: barbell overhead press 2×5 at 55 kg, 4 at 55 kg
wanted 62.5 on ohp. 55x5 => ask: barbell overhead press 5 at 55 kg
want 140 squat by june. bench 80x5 => barbell bench press 5 at 80 kg
tomorrow squat 5x5 100. 2 weeks to go => no sets
"""
BEHIND_A_RULE = """\
coach says stay under 8: bench 3x4 87.5 @7.5 => ask: barbell bench press 3×4 at 87.5 kg RPE 7.5
coach says 3x5: bench 3x5 80 => ask: barbell bench press 3×5 at 80 kg
my coach says 3x8 so i did rdl 3x8 90 => romanian deadlift 3×8 at 90 kg
my coach says 3x8 so he did rdl 3x8 90 => no sets
coach says: bench 3x5 80 => no sets
coach says tomorrow 3x5: bench 3x5 80 => no sets
"""
ONE_OF_TWO = """\
{doing: barbell bench press} 70 for 8 or 9, lost count => ask: barbell bench press 8 at 70 kg | barbell bench press 9 at 70 kg
bench 70x8 or 9, lost count => ask: barbell bench press 8 at 70 kg | barbell bench press 9 at 70 kg
bankdrücken 80x5 oder 6, verzählt => ask: barbell bench press 5 at 80 kg | barbell bench press 6 at 80 kg
bench 3x5, either 77.5 or 80, can't remember => ask: barbell bench press 3×5 at 77.5 kg | barbell bench press 3×5 at 80 kg
bench either 80x5 or 82.5x5 => ask: barbell bench press 5 at 80 kg | barbell bench press 5 at 82.5 kg
bench 80x5, lost count => ask: barbell bench press 5 at 80 kg
"""  # noqa: E501


@pytest.mark.parametrize(("text", "context", "expected"), readings(BEHIND_A_WISH))
def test_what_came_of_a_wish_is_read_with_its_lift(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected


@pytest.mark.parametrize(("text", "context", "expected"), readings(BEHIND_A_RULE))
def test_what_was_done_by_somebodys_rule_is_hers(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected


@pytest.mark.parametrize(("text", "context", "expected"), readings(ONE_OF_TWO))
def test_one_of_two_that_nobody_remembers_is_asked(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected
