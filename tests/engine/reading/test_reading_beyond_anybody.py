"""Loads that nobody lifts, and changes that nobody makes in one step: asked before they are recorded."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "known", "starts"),
    readings("""
pull up +180 4 => ask: pull-up 4 at +180 kg
dips +140 3x6 => ask: dip 3×6 at +140 kg
deadlift 480x6 => ask: conventional deadlift 6 at 480 kg
squat 440x9 => ask: barbell back squat 9 at 440 kg
bench 290x10 => ask: barbell bench press 10 at 290 kg
{last: barbell row 70} barbell row +70x6 => ask: barbell row 6 at 140 kg
{last: pull-up 10} pull up +70x5 => ask: pull-up 5 at +70 kg
"""),
)
def test_what_nobody_lifts_is_asked(text: str, known: Context, starts: str) -> None:
    assert said(text, known).startswith(starts)


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
dips +80 3x6 => dip 3×6 at +80 kg
deadlift 300x6 => conventional deadlift 6 at 300 kg
deadlift 440x1 => conventional deadlift 1 at 440 kg
bench 200x5 => barbell bench press 5 at 200 kg
leg press 400x12 => leg press 12 at 400 kg
{last: barbell row 70} barbell row +5x6 => barbell row 6 at 75 kg
{last: barbell row 70} barbell row +20 for 6 => barbell row 6 at 90 kg
{last: pull-up 10} pull up +40x5 => pull-up 5 at +40 kg
"""),
)
def test_what_strong_people_lift_is_recorded(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant
