"""A word for one warm-up at the head of several sets: of the first, or of all."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

HEADS = """
squat wu 60x5, 100x5, 110x5 => ask: barbell back squat 5 at 60 kg warmup, 5 at 100 kg warmup, 5 at 110 kg warmup \
| barbell back squat 5 at 60 kg warmup, 5 at 100 kg, 5 at 110 kg
squat warm up 60kg x 5, 100kg x 5 => ask: barbell back squat 5 at 60 kg warmup, 5 at 100 kg \
| barbell back squat 5 at 60 kg warmup, 5 at 100 kg warmup
kniebeuge aufwärmen 60x5, 100x5 => ask: barbell back squat 5 at 60 kg warmup, 5 at 100 kg \
| barbell back squat 5 at 60 kg warmup, 5 at 100 kg warmup
squat wu 60x5, 80x3, 100x5, 100x5 => ask: barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 2×5 at 100 kg \
| barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 2×5 at 100 kg warmup
bench wu 40x10, wu 60x5, 80x5, 80x5 => ask: \
barbell bench press 10 at 40 kg warmup, 5 at 60 kg warmup, 2×5 at 80 kg \
| barbell bench press 10 at 40 kg warmup, 5 at 60 kg warmup, 2×5 at 80 kg warmup
squat wu 60x5, 80x3, 100x1 => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 1 at 100 kg warmup
squat wu: 60x5, 80x5 => barbell back squat 5 at 60 kg warmup, 5 at 80 kg warmup
squat warmups 60x5, 80x5 => barbell back squat 5 at 60 kg warmup, 5 at 80 kg warmup
squat wu 60x5, 80x5, work 100x5 => barbell back squat 5 at 60 kg warmup, 5 at 80 kg warmup, 5 at 100 kg
squat wu 60x5 then 100x5 => barbell back squat 5 at 60 kg warmup, 5 at 100 kg
squat wu bar x10, 60x5, 100x5 => ask: \
barbell back squat 10 at 20 kg warmup, 5 at 60 kg warmup, 5 at 100 kg \
| barbell back squat 10 at 20 kg warmup, 5 at 60 kg warmup, 5 at 100 kg warmup \
| barbell back squat 10 at 20 kg warmup, 5 at 60 kg, 5 at 100 kg
squat wu bar x10, 60x5, 80x3 => barbell back squat 10 at 20 kg warmup, 5 at 60 kg warmup, 3 at 80 kg warmup
squat wu bar x10, 60x5 => barbell back squat 10 at 20 kg warmup, 5 at 60 kg warmup
bench warmed up with 60x8, 85x6 => ask: barbell bench press 8 at 60 kg warmup, 6 at 85 kg \
| barbell bench press 8 at 60 kg warmup, 6 at 85 kg warmup
squat warmed up with the bar x10, 60x5, 80x3, 90x1 => barbell back squat 10 at 20 kg warmup, 5 at 60 kg warmup, \
3 at 80 kg warmup, 1 at 90 kg warmup
"""


@pytest.mark.parametrize(("message", "context", "meant"), readings(HEADS))
def test_which_sets_a_warm_up_at_the_head_is_of(message: str, context: Context, meant: str) -> None:
    assert said(message, context) == meant


NAMED = """
warmed up with 60x8 on bench, 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
warmed up with 60x8 and 70x5 on bench, 85x6 => barbell bench press 8 at 60 kg warmup, 5 at 70 kg warmup, 6 at 85 kg
warmed up with the bar for 10 on squat, 3x5 100 => barbell back squat 10 at 20 kg warmup, 3×5 at 100 kg
warmed up with 60x8 on bench and did 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
warmed up with 60x8 on bench, 85x6, 85x5 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg, 5 at 85 kg
warmed up with 60x8 on bench, squat 3x5 100 => barbell bench press 8 at 60 kg warmup; barbell back squat 3×5 at 100 kg
warmed up with 60x8 on bench, 70x5, 85x6 => ask: barbell bench press 8 at 60 kg warmup, 5 at 70 kg warmup, 6 at 85 kg \
| barbell bench press 8 at 60 kg warmup, 5 at 70 kg, 6 at 85 kg
warmed up with 60x8, 70x5 on bench, 85x6 => ask: barbell bench press 8 at 60 kg warmup, 5 at 70 kg warmup, 6 at 85 kg \
| barbell bench press 8 at 60 kg warmup, 5 at 70 kg, 6 at 85 kg
warm up 60x8 bench, 85x6 => ask: barbell bench press 8 at 60 kg warmup, 6 at 85 kg \
| barbell bench press 8 at 60 kg warmup, 6 at 85 kg warmup
aufgewärmt mit 60x8 auf Bankdrücken, 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
calenté con 60x8 en press banca, 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
échauffé avec 60x8 au développé couché, 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
riscaldato con 60x8 alla panca, 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
opgewarmd met 60x8 op bankdrukken, 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
rozgrzałem się 60x8 na wyciskanie, 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
aqueci com 60x8 e 70x5 no supino, 85x6 => barbell bench press 8 at 60 kg warmup, 5 at 70 kg warmup, 6 at 85 kg
размялась 60х8 в жиме лежа, 85х6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
värmde upp med 60x8 på bänkpress, 85x6 => barbell bench press 8 at 60 kg warmup, 6 at 85 kg
press banca 3x5 80 bien calentado => barbell bench press 3×5 at 80 kg
bench 3x5 80 well warmed up => barbell bench press 3×5 at 80 kg
calenté 10 min en la bici, press banca 3x5 80 => barbell bench press 3×5 at 80 kg
"""


@pytest.mark.parametrize(("message", "context", "meant"), readings(NAMED))
def test_a_warm_up_told_in_words_ends_behind_the_lift_it_names(message: str, context: Context, meant: str) -> None:
    assert said(message, context) == meant


LETTERED = """
squat w 60x5, w 80x3, 100x5 => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 5 at 100 kg
squat W60x5 W80x3 100x5 100x5 => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 2×5 at 100 kg
w 60x5, w 80x3, 100x5 squat => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 5 at 100 kg
squat // w 60x5 // w 80x3 // 3x5 100 => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 3×5 at 100 kg
squat w 60x5, 100x5 => ask: barbell back squat 5 at 60 kg warmup, 5 at 100 kg \
| barbell back squat 5 at 60 kg, 5 at 100 kg
squat w 60x5, w 70x5 => ask: barbell back squat 5 at 60 kg warmup, 5 at 70 kg warmup \
| barbell back squat 5 at 60 kg, 5 at 70 kg
squat w 60x5 => barbell back squat 5 at 60 kg
bench 3x8 w 60, 2x5 w 80 => barbell bench press 3×8 at 60 kg, 2×5 at 80 kg
squat w/ 60x5, w/ 80x3 => barbell back squat 5 at 60 kg, 3 at 80 kg
"""


@pytest.mark.parametrize(("message", "context", "meant"), readings(LETTERED))
def test_a_letter_ahead_of_some_sets_marks_warm_ups(message: str, context: Context, meant: str) -> None:
    assert said(message, context) == meant


BEHIND_A_COMMA = """
bench 60x8, warm up => barbell bench press 8 at 60 kg warmup
bench 8, 7 at 60 kg, rpe 7, warm-up, then 85x6 => \
barbell bench press 8 at 60 kg RPE 7 warmup, 7 at 60 kg RPE 7 warmup, 6 at 85 kg
bench 3x8 60, warm up // 3x5 80 => barbell bench press 3×8 at 60 kg warmup, 3×5 at 80 kg
dips 10 with +5 kg, warm-up => dip 10 at +5 kg warmup
lateral raise 3x12 at 8 kg each hand, warm-up => dumbbell lateral raise 3×12 at 8 kg each warmup
жим лежа 60х8, разминка => barbell bench press 8 at 60 kg warmup
bankdrücken 60x8, aufwärmen => barbell bench press 8 at 60 kg warmup
bench warmup 40x10 60x5 -> 80x8 85x6 => \
barbell bench press 10 at 40 kg warmup, 5 at 60 kg warmup, 8 at 80 kg, 6 at 85 kg
bench wu 40x10 -> 60x5 -> 80x3 => ask: \
barbell bench press 10 at 40 kg warmup, 5 at 60 kg warmup, 3 at 80 kg warmup
squat 3x5 100, hip warm up => barbell back squat 3×5 at 100 kg
squat 3x5 100, stretching, warm up => barbell back squat 3×5 at 100 kg
squat 3x5 100, good warm up => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("message", "context", "meant"), readings(BEHIND_A_COMMA))
def test_a_word_behind_a_comma_that_heads_nothing_marks_the_sets_before_it(
    message: str, context: Context, meant: str
) -> None:
    assert said(message, context) == meant
