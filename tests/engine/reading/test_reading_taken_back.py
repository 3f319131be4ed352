"""What one message says and takes back, and words that are no set: kit that is worn, reps that could have been done.

Common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

TAKEN_BACK = """
bench 75x8 no 77.5x8 => barbell bench press 8 at 77.5 kg
bench 75x8, no wait, 77.5x8 => barbell bench press 8 at 77.5 kg
squat 95x5 scratch that 100x5 => barbell back squat 5 at 100 kg
squat 95x5, sorry 100x5, 105x3 => barbell back squat 5 at 100 kg, 3 at 105 kg
bench 75x8, make that 77.5x8 => barbell bench press 8 at 77.5 kg
Bankdrücken 75x8, nein 77,5x8 => barbell bench press 8 at 77.5 kg
press de banca 75x8, perdón 77.5x8 => barbell bench press 8 at 77.5 kg
bench 75x8, sorry 7 => ask: barbell bench press 8 at 75 kg, 7 at 75 kg
bench 75x8 no wait squat => barbell back squat 8 at 75 kg
bench 75x8, 70x8, sorry i meant squat => barbell back squat 8 at 75 kg, 8 at 70 kg
squat 95x5, bench 75x8 no wait ohp => barbell back squat 5 at 95 kg; barbell overhead press 8 at 75 kg
Bankdrücken 75x8 quatsch kniebeuge => barbell back squat 8 at 75 kg
press banca 75x8 no espera sentadilla => barbell back squat 8 at 75 kg
développé couché 75x8 non attends squat => barbell back squat 8 at 75 kg
wyciskanie 75x8 nie czekaj przysiad => barbell back squat 8 at 75 kg
жим лежа 75х8 нет стой присед => barbell back squat 8 at 75 kg
bench 75x8 no wait squat 95x5 => ask: barbell bench press 8 at 75 kg; barbell back squat 5 at 95 kg
bench 75x8, scratch that, squat 95x5 => ask: barbell bench press 8 at 75 kg; barbell back squat 5 at 95 kg
bank 75x8 nein warte kniebeuge 95x5 => ask: barbell bench press 8 at 75 kg; barbell back squat 5 at 95 kg
banca 75x8 mejor, sentadilla 95x5 => barbell bench press 8 at 75 kg; barbell back squat 5 at 95 kg
bench 75x8, no rest, squat 95x5 => barbell bench press 8 at 75 kg; barbell back squat 5 at 95 kg
bench 75x8 no squat => barbell bench press 8 at 75 kg
bench 75x8 no squat today => barbell bench press 8 at 75 kg
bench 75x8, wait for squat rack => barbell bench press 8 at 75 kg
bench 75x8 then squat => barbell bench press 8 at 75 kg
bench 75x8, no pause, 77.5x8 => barbell bench press 8 at 75 kg, 8 at 77.5 kg
squat 3x5 at 95, actually the last was 4 => barbell back squat 2×5 at 95 kg, 4 at 95 kg
"""
NO_SET = """
squat w/ belt 95 3x5 => barbell back squat 3×5 at 95 kg
squat with belt 3x5 95 => barbell back squat 3×5 at 95 kg
belt squat 3x10 60 => belt squat 3×10 at 60 kg
deadlift w/ trap bar 3x5 140 => trap bar deadlift 3×5 at 140 kg
bench 75x8 had 10 in me => barbell bench press 8 at 75 kg
bench 75x8 rpe easy => barbell bench press 8 at 75 kg
bench 75x8 9 rpe => barbell bench press 8 at 75 kg RPE 9
"""
SAME_FOR = """
squat 3x5 95, same for bench => barbell back squat 3×5 at 95 kg; barbell bench press 3×5 at 95 kg
hammer curl 12 3x12, same for face pull => hammer curl 3×12 at 12 kg each; face pull 3×12 at 12 kg
pullups w/ 10kg plate 3x5 => pull-up 3×5 at +10 kg
clean and jerk 60 1+1 x5 => ask: clean and jerk 5 at 60 kg
bench 75x8 1 of 3 => ask: barbell bench press 8 at 75 kg
bench 75 3 of 8 => barbell bench press 3×8 at 75 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SAME_FOR))
def test_no_set_is_lost_or_made_beside_another(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(TAKEN_BACK))
def test_a_set_taken_back_in_the_same_message_does_not_stand(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(NO_SET))
def test_words_beside_a_set_name_no_other_lift_and_add_no_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("text", ["bench 80 5 5 5, no 4", "bench 80 5 5 5, wait 4", "bench 80kg: 5 5 5 - no, 4"])
def test_a_number_behind_a_no_is_asked_behind_a_list(text: str) -> None:
    assert said(text, Context()).startswith("ask")
