"""A number between whole sets and the name of another lift is that one's or asked about. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
squat 100x5 10 push ups => barbell back squat 5 at 100 kg; push-up 10
plank 60s 10 push ups => plank 60 s; push-up 10
plank 1 min 10 push ups => plank 60 s; push-up 10
wall sit 45 sec 12 pull ups => wall sit 45 s; pull-up 12
squat 100kg 5 reps 10 pull ups => barbell back squat 5 at 100 kg; pull-up 10
squat 100x5 bench 80x5 10 dips => barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg; dip 10
kniebeuge 100x5 10 liegestütze => barbell back squat 5 at 100 kg; push-up 10
жим лежа 80х5 10 подтягиваний => barbell bench press 5 at 80 kg; pull-up 10
squat 100x5 12 leg press => ask: barbell back squat 5 at 100 kg, 12 at 100 kg
bench 80x8 12 dips 10 => ask: barbell bench press 8 at 80 kg, 12 at 80 kg; dip 10
pull ups 10 8 7 push ups => pull-up 10, 8, 7
squat 100 5 5 5 bench => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_number_ahead_of_a_name_is_not_of_the_lift_before(text, context, meant) -> None:
    assert said(text, context) == meant
