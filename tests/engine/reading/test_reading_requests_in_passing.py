"""Requests and corrections said in passing, as lifters word them to somebody they know.

Wordings are our own; common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import dialogues, readings, said, standing_after

ASKED = """
what am i meant to train tonight => request: today
show me what i'm expected to do today => request: today
the same thing two more times => request: repeat 2
same again three more times => request: repeat 3
wipe the last one mate => request: undo
chuck that last one out please => request: undo
lbs please => request: units
i'd rather have kilos than pounds => request: units
not pounds, kgs please => request: units
can you use kg for everything => request: units
set the alarm for sat 9am => request: remind 2025-03-15 09:00:00
alarm at 7pm => request: remind 2025-03-14 19:00:00
on hols until the 29th => request: pause 2025-03-29
abroad for work until monday => request: pause 2025-03-17
swap pulldown 4 leg press => request: swap lat pulldown leg press
switch row 2 pulldown => request: swap barbell row lat pulldown
"""

LOADS_ASKED = """
{plan: barbell row 3 8 60} row next, which weight? => request: why barbell row
{plan: barbell row 3 8 60} what load for row today => request: why barbell row
{plan: barbell row 3 8 60} how heavy should i go on row => request: why barbell row
{plan: barbell row 3 8 60} how much weight do i put on for row today? => request: why barbell row
{plan: barbell row 3 8 60} what should i use for the row today => request: why barbell row
"""

ASKED_FOR_NOTHING = (
    "how heavy was the row last week, felt like a ton",
    "vacation was great",
    "the alarm in the gym went off at 5pm",
    "my kgs are going down",
    "lbs or kgs, who cares",
)

SETS = """
{doing: barbell row} 60 kg 3x8 please => barbell row 3×8 at 60 kg
leg press 4x10 120 => leg press 4×10 at 120 kg
"""

CORRECTED = """
front squat 62.5x9 | make that 65 | and just 8 reps => barbell front squat 8 at 65 kg
front squat 62.5x9 | and just 8 reps => barbell front squat 9 at 62.5 kg, 8 at 62.5 kg
front squat 62.5x9 | make that 65 | 9 | and just 8 reps => barbell front squat 2×9 at 65 kg, 8 at 65 kg
front squat 70x4 | rpe 9 i'd say => barbell front squat 4 at 70 kg RPE 9
front squat 70x4 | probably rpe 7.5 => barbell front squat 4 at 70 kg RPE 7.5
front squat 60 9 9 6 | reps: 8 7 6 => barbell front squat 8 at 60 kg, 7 at 60 kg, 6 at 60 kg
front squat 60 9 9 | reps: 8 7 6 => barbell front squat 2×9 at 60 kg, 8 at 60 kg, 7 at 60 kg, 6 at 60 kg
leg press 3x10 140 | put the leg press at 150 => leg press 3×10 at 150 kg
leg press 3x10 140 | put the leg press at 6 => leg press 3×10 at 140 kg
front squat 60 9 9 6 | add 5 kg to all of those => barbell front squat 2×9 at 65 kg, 6 at 65 kg
front squat 60 9 9 6 | took 2.5kg off the last one => barbell front squat 2×9 at 60 kg, 6 at 57.5 kg
front squat 60 9 9 6 | those were 5kg heavier => barbell front squat 2×9 at 65 kg, 6 at 65 kg
front squat 60 9 9 6 | added 5kg each set => barbell front squat 2×9 at 60 kg, 6 at 60 kg
front squat 60 9 9 6 | added 40kg to all of those => barbell front squat 2×9 at 60 kg, 6 at 60 kg
front squat 60 9 9 9 | last was 7, knee hurts => barbell front squat 2×9 at 60 kg, 7 at 60 kg
front squat 60 9 9 9 | knee hurts, last one was 7 => barbell front squat 2×9 at 60 kg, 7 at 60 kg
"""


@pytest.mark.parametrize(("text", "known", "meant"), readings(ASKED))
def test_a_request_said_in_passing_is_heard(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(("text", "known", "meant"), readings(LOADS_ASKED))
def test_the_load_of_a_lift_is_asked_for(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize("text", ASKED_FOR_NOTHING)
def test_talk_with_the_same_words_asks_for_nothing(text: str) -> None:
    assert not said(text).startswith("request: ") or said(text).startswith("request: history")


@pytest.mark.parametrize(("text", "known", "meant"), readings(SETS))
def test_sets_stay_sets(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(("told", "standing"), dialogues(CORRECTED))
def test_a_correction_said_in_passing_reaches_its_sets(told: str, standing: str) -> None:
    assert standing_after(told) == standing
