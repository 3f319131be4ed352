"""What is told around sets: sets got of a plan, one left out, a step since last time, the same at another load."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
planned squat 4x6 at 100, only got 3 sets in => barbell back squat 3×6 at 100 kg
squat 4x6 at 100, got 3 sets in => barbell back squat 3×6 at 100 kg
bench 80: got 3 sets of 5 => barbell bench press 3×5 at 80 kg
left out the last set: leg press 170 12 12 => leg press 2×12 at 170 kg
skipped the last set: leg press 170 12 12 => leg press 2×12 at 170 kg
letzten satz ausgelassen: beinpresse 170 12 12 => leg press 2×12 at 170 kg
laatste set overgeslagen: leg press 170 12 12 => leg press 2×12 at 170 kg
skipped the last set: bench 3x8 60 => ask: barbell bench press 3×8 at 60 kg
cut the last set short: leg press 170 12 8 => leg press 12 at 170 kg, 8 at 170 kg
dropped 2.5kg from last time: ohp 40 3x8 => barbell overhead press 3×8 at 40 kg
added 2.5kg to last time: ohp 45 3x8 => barbell overhead press 3×8 at 45 kg
ohp 40 3x8, dropped 2.5kg from last time => barbell overhead press 3×8 at 40 kg
2,5 kg menos que la última vez: sentadilla 100 3x8 => barbell back squat 3×8 at 100 kg
bench 80x5 drop 60x10 => barbell bench press 5 at 80 kg, 10 at 60 kg drop
ohp 40 3x8, same for bench at 60 => barbell overhead press 3×8 at 40 kg; barbell bench press 3×8 at 60 kg
ohp 40x8, same for bench but 60kg => barbell overhead press 8 at 40 kg; barbell bench press 8 at 60 kg
curl ez 25 3x10, same for hammer curl with 12 => ez-bar curl 3×10 at 25 kg; hammer curl 3×10 at 12 kg each
ohp 40 3x8, same for bench => barbell overhead press 3×8 at 40 kg; barbell bench press 3×8 at 40 kg
face plus 3x15 20 => face pull 3×15 at 20 kg
lat puls 3x10 50 => lat pulldown 3×10 at 50 kg
squat 3x5 100, puls 150 => barbell back squat 3×5 at 100 kg
squat 100x5 plus 105x3 => barbell back squat 5 at 100 kg, 3 at 105 kg
clean + jerk 3x2 60 => clean and jerk 3×2 at 60 kg
how many sets of squats is too many? => no sets
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_is_told_around_sets_leaves_them_whole(text, context, meant) -> None:
    assert said(text, context) == meant


def test_the_same_at_another_load_keeps_sets_and_reps() -> None:
    told = said("ohp 40 3x8 and the same for close grip bench but with 60")
    assert told == "barbell overhead press 3×8 at 40 kg; close-grip bench press 3×8 at 60 kg"
    assert said("ohp 40 3x8, same for bench but 8").startswith("ask")
