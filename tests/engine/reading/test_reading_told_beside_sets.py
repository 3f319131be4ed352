"""What is told beside sets in words: efforts between two, efforts called, warm-ups told of, what was added, counts.

Common practice, no source, but for efforts between two: Zourdos et al. 2016, J Strength Cond Res 30(1):267-275,
table 1, has 8.5 for one or two repetitions left.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

SPANS = """
squat 95x5 rpe 8-9 => barbell back squat 5 at 95 kg RPE 8.5
squat 95x5 between 7 and 8 rpe => barbell back squat 5 at 95 kg RPE 7.5
squat 95x5, somewhere between rpe 8 and 9 => barbell back squat 5 at 95 kg RPE 8.5
squat 3x5 95 rpe 8 to 9 => barbell back squat 3×5 at 95 kg RPE 8.5
squat 3x5 95, 8 or 9 rpe => barbell back squat 3×5 at 95 kg RPE 8.5
bench 72.5 9 8 8, 1-2 rir => barbell bench press 9 at 72.5 kg 1.5 in reserve, 2×8 at 72.5 kg 1.5 in reserve
squat 95x5, one or two left in the tank => barbell back squat 5 at 95 kg 1.5 in reserve
squat 95x5, could have done 2-3 more => barbell back squat 5 at 95 kg 2.5 in reserve
kniebeuge 3x5 95, zwischen 7 und 8 rpe => barbell back squat 3×5 at 95 kg RPE 7.5
kniebeuge 3x5 95, rpe 7 bis 8 => barbell back squat 3×5 at 95 kg RPE 7.5
sentadilla 3x5 95 entre 8 y 9 rpe => barbell back squat 3×5 at 95 kg RPE 8.5
squat 3x5 95, restait 1-2 en réserve => barbell back squat 3×5 at 95 kg 1.5 in reserve
squat 2x5 95 rpe 8-9 => ask: barbell back squat 2×5 at 95 kg RPE 8.5
squat 3x5 95 rpe 7-9 => ask:
bench 72.5 9-8 rir 1 => barbell bench press 9 at 72.5 kg 1 in reserve, 8 at 72.5 kg 1 in reserve
bench 72.5 9-9-8 rpe 9 => barbell bench press 2×9 at 72.5 kg RPE 9, 8 at 72.5 kg RPE 9
"""
LISTED = """
squat 95x5, 95x5, 95x5, rpes 7 8 9 => barbell back squat 5 at 95 kg RPE 7, 5 at 95 kg RPE 8, 5 at 95 kg RPE 9
squat 3x5 95, rpes were 7, 8 and 9 => barbell back squat 5 at 95 kg RPE 7, 5 at 95 kg RPE 8, 5 at 95 kg RPE 9
squat 3x5 95 rirs 3/2/1 => barbell back squat 5 at 95 kg 3 in reserve, 5 at 95 kg 2 in reserve, 5 at 95 kg 1 in reserve
bench 72.5 9 rpes => barbell bench press 9 at 72.5 kg
"""
CALLED = """
squat 95x5, call it an 8 => barbell back squat 5 at 95 kg RPE 8
squat 3x5 95, about a 7 => barbell back squat 3×5 at 95 kg RPE 7
squat 3x5 95. probably a 9. good day => barbell back squat 3×5 at 95 kg RPE 9
kniebeuge 3x5 95, etwa eine 8 => barbell back squat 3×5 at 95 kg RPE 8
squat 95x5, genre un 8 => barbell back squat 5 at 95 kg RPE 8
squat 72.5 for 6, then 5, then a shaky 4 => barbell back squat 6 at 72.5 kg, 5 at 72.5 kg, 4 at 72.5 kg
bench 72.5x9, then a hard 8 and an ugly 7 => barbell bench press 9 at 72.5 kg, 8 at 72.5 kg, 7 at 72.5 kg
bench 72.5 for 9, 8, then barely 6 => barbell bench press 9 at 72.5 kg, 8 at 72.5 kg, 6 at 72.5 kg
"""
LEFT = """
squat 3x5 95, left a rep in the tank => barbell back squat 3×5 at 95 kg 1 in reserve
squat 3x5 95, had a rep left => barbell back squat 3×5 at 95 kg 1 in reserve
squat 3x5 95, left a couple in the tank => barbell back squat 3×5 at 95 kg 2 in reserve
squat 3x5 95, nothing left in the tank => barbell back squat 3×5 at 95 kg 0 in reserve
kniebeuge 3x5 95, noch eine im tank => barbell back squat 3×5 at 95 kg 1 in reserve
sentadilla 3x5 95, dejé una en reserva => barbell back squat 3×5 at 95 kg 1 in reserve
squat 3x5 95, une répétition en réserve => barbell back squat 3×5 at 95 kg 1 in reserve
"""
WARMED_UP = """
warmed up with the bar, squat 3x5 95 => barbell back squat 3×5 at 95 kg
warmed up to 85, then squat 95 5 5 4 => barbell back squat 2×5 at 95 kg, 4 at 95 kg
squat wu: 55 75 85. work: 95 5 5 4 => barbell back squat 2×5 at 95 kg, 4 at 95 kg
squat warm-up 65 then 3x5 95 => barbell back squat 3×5 at 95 kg
kniebeuge aufgewärmt bis 85, dann 95 5 5 4 => barbell back squat 2×5 at 95 kg, 4 at 95 kg
squat warm up 65, 5 5 5 => barbell back squat 3×5 at 65 kg warmup
squat, warmed up with the empty bar, 3x5 95 => barbell back squat 3×5 at 95 kg
warm-up with the bar // squat 3x5 95 => barbell back squat 3×5 at 95 kg
short warm-up, squat 3x5 95 => barbell back squat 3×5 at 95 kg
warm-up done, bench 3x8 60 => barbell bench press 3×8 at 60 kg
mit der stange aufgewärmt, kniebeuge 3x5 95 => barbell back squat 3×5 at 95 kg
warmed up with 55x5, squat 3x5 95 => barbell back squat 5 at 55 kg warmup, 3×5 at 95 kg
warm-up: squat 55x5, 75x3 => barbell back squat 5 at 55 kg warmup, 3 at 75 kg warmup
"""
ADDED = """
{last: barbell bench press 70} bench added 5kg, 9 8 => barbell bench press 9 at 75 kg, 8 at 75 kg
{last: barbell bench press 70} added 2.5 kg to bench, 9 8 => barbell bench press 9 at 72.5 kg, 8 at 72.5 kg
{last: barbell bench press 70; doing: barbell bench press} added 5 kg: 9 8 => \
barbell bench press 9 at 75 kg, 8 at 75 kg
{last: dip 10} dips added 5kg, 9 8 => dip 9 at +5 kg, 8 at +5 kg
bench added 5kg, 9 8 => ask:
"""
COUNTED = """
squat 3 heavy singles at 130 => barbell back squat 3×1 at 130 kg
squat 130, 2 easy doubles => barbell back squat 2×2 at 130 kg
squat 3 hard triples 120 => barbell back squat 3×3 at 120 kg
{doing: barbell back squat; last: barbell back squat 95} 3 different people asked me => no sets
{doing: barbell back squat; last: barbell back squat 95} 2 other guys waited => no sets
{doing: barbell back squat; last: barbell back squat 95} 4 brutal reps => barbell back squat 4 at 95 kg
"""
ORDERS = """
{plan: dumbbell lateral raise 3 12 8} lateral raise 12x8x3 => dumbbell lateral raise 3×12 at 8 kg each
{last: dumbbell lateral raise 8} lateral raise 12x8x3 => \
ask: dumbbell lateral raise 3×12 at 8 kg each | dumbbell lateral raise 3×8 at 12 kg each
{last: dumbbell lateral raise 8} lateral raise 3x8x12 => \
ask: dumbbell lateral raise 3×12 at 8 kg each | dumbbell lateral raise 3×8 at 12 kg each
{last: dumbbell lateral raise 8} lateral raise 8x12x3 => dumbbell lateral raise 3×12 at 8 kg each
"""


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings(SPANS) + readings(LISTED) + readings(CALLED) + readings(LEFT),
)
def test_an_effort_in_words_is_no_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(WARMED_UP))
def test_a_warm_up_told_of_marks_no_work(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(ADDED))
def test_what_was_added_counts_from_the_last_load(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(COUNTED) + readings(ORDERS))
def test_a_number_counts_what_stands_with_it(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("name", ["extension", "extensions", "ext", "extensiones", "beuger"])
def test_a_name_of_several_lifts_is_asked_about(name: str) -> None:
    assert said(f"{name} 3x15 45").startswith("ask: ")


WEIGHED = """
squat 100x5 100x5, weight 82 => barbell back squat 2×5 at 100 kg
182 lbs on the scale today, squat 100x5 => barbell back squat 5 at 100 kg
bodyweight this morning 82.4, squat 100x5 => barbell back squat 5 at 100 kg
morning weight 82 - dips 8 8 7 => dip 2×8, 7
gewicht heute 81,2, kniebeuge 100x5 => barbell back squat 5 at 100 kg
kniebeuge 100x5 100x5, gewicht 81,2 => barbell back squat 2×5 at 100 kg
mi peso 77, sentadilla 100x5 => barbell back squat 5 at 100 kg
hoy peso 77,2, sentadilla 100x5 => barbell back squat 5 at 100 kg
sentadilla 100x5 100x5, peso 77 kg => barbell back squat 2×5 at 100 kg
poids 72,4, squat 100x5 => barbell back squat 5 at 100 kg
squat 3x5 100 (poids 72) => barbell back squat 3×5 at 100 kg
peso 80 kg, trazioni 8 8 7 => pull-up 2×8, 7
gewicht 75,6. squat 100x5 => barbell back squat 5 at 100 kg
waga 79, przysiad 100x5 => barbell back squat 5 at 100 kg
przysiad 100x5, dziś waga 79,4 => barbell back squat 5 at 100 kg
peso 68,3 kg hoje, barra fixa +5 kg 5 5 => pull-up 2×5 at +5 kg
мой вес 83,6. присед 100х5 => barbell back squat 5 at 100 kg
вес тела 84,2 кг // присед 100х5 => barbell back squat 5 at 100 kg
vikt 70,2 i morse, knäböj 100x5 => barbell back squat 5 at 100 kg
la báscula marca 77,4, sentadilla 100x5 => barbell back squat 5 at 100 kg
auf der Waage 81,2, kniebeuge 100x5 => barbell back squat 5 at 100 kg
rano na wadze 79,3, przysiad 100x5 => barbell back squat 5 at 100 kg
hoje na balança 68,9 kg, agachamento 100x5 => barbell back squat 5 at 100 kg
утром на весах 84,1, присед 100х5 => barbell back squat 5 at 100 kg
en ayunas 77 kg, sentadilla 100x5 => barbell back squat 5 at 100 kg
peso 110, sentadilla 3x5 => ask: barbell back squat 3×5
weight 80, bench 3x5 => barbell bench press 3×5 at 80 kg
bench 80x5, weight 85 x 3 => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5, then weight 85 for 3 => barbell bench press 5 at 80 kg, 3 at 85 kg
sentadilla 100x5, peso 110, 3 reps => ask: barbell back squat 5 at 100 kg
pull ups 5 5, weight 40kg => pull-up 2×5 at +40 kg
chin ups, weight 40: 5 5 5 => chin-up 3×5 at +40 kg
gewicht 40, dips 8 8 8 => ask: dip 3×8
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(WEIGHED))
def test_what_she_weighs_told_with_sets_is_no_load_of_theirs(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


TOLD_TWICE = """
dl 140 kilos, thats 308 pounds, for 4 => conventional deadlift 4 at 140 kg
squat 100 kilos for 5, thats 220 pounds => barbell back squat 5 at 100 kg
bench 80 kg, that's 176 lb, 3x5 => barbell bench press 3×5 at 80 kg
deadlift 315 lb, which is 143 kg, for 3 => conventional deadlift 3 at 315 lb
kreuzheben 140 kg, das sind 308 pfund, 4 mal => conventional deadlift 4 at 140 kg
peso muerto 140 kg, o sea 308 libras, 4 repeticiones => conventional deadlift 4 at 140 kg
soulevé de terre 140 kg, soit 308 livres, pour 4 => conventional deadlift 4 at 140 kg
stacco 140 kg, cioè 308 libbre, 4 ripetizioni => conventional deadlift 4 at 140 kg
martwy ciąg 140 kg, czyli 308 funtów, 4 powtórzenia => conventional deadlift 4 at 140 kg
становая 140 кг, это 308 фунтов, 4 раза => conventional deadlift 4 at 140 kg
marklyft 140 kg, alltså 308 pund, 4 reps => conventional deadlift 4 at 140 kg
bench 80 kg for 5, 176 lb for 8 => barbell bench press 5 at 80 kg, 8 at 176 lb
bench 80 kg 5, 90 lb 8 => barbell bench press 5 at 80 kg, 8 at 90 lb
"""
ESTIMATED = """
bench 80 3x5, estimated max about 97 => barbell bench press 3×5 at 80 kg
bench 80 3x5, projected 1rm roughly 97 kg => barbell bench press 3×5 at 80 kg
bench 80 3x5, e1rm about 97 => barbell bench press 3×5 at 80 kg
bankdrücken 80 3x5, geschätztes maximum etwa 97 => barbell bench press 3×5 at 80 kg
press banca 80 3x5, 1rm estimado 97 => barbell bench press 3×5 at 80 kg
développé couché 80 3x5, max estimé environ 97 => barbell bench press 3×5 at 80 kg
bankdrukken 80 3x5, geschat maximum ongeveer 97 => barbell bench press 3×5 at 80 kg
wyciskanie 80 3x5, szacowany max około 97 => barbell bench press 3×5 at 80 kg
supino 80 3x5, máximo estimado uns 97 => barbell bench press 3×5 at 80 kg
жим лежа 80 3х5, расчетный максимум около 97 => barbell bench press 3×5 at 80 kg
bänkpress 80 3x5, beräknat max cirka 97 => barbell bench press 3×5 at 80 kg
"""
WORN = """
squat 100x5 beltless, 115x5 belt, 115x4 belt => barbell back squat 5 at 100 kg, 5 at 115 kg, 4 at 115 kg
squat 100x5, 115x5 belt, 120x3 belt => barbell back squat 5 at 100 kg, 5 at 115 kg, 3 at 120 kg
squat 100x5 then belt squat 80x12 => barbell back squat 5 at 100 kg; belt squat 12 at 80 kg
dips 8 8, then 6 with a 10kg vest => dip 2×8, 6 at +10 kg
fondos 8 8, luego 6 con chaleco de 10 kg => dip 2×8, 6 at +10 kg
отжимания 15 15, потом 8 с жилетом 10 кг => push-up 2×15, 8 at +10 kg
pull ups +10 5 5, then 8 without => pull-up 2×5 at +10 kg, 8
push ups with 10kg vest 15, without 25 => ask: push-up 15 at +10 kg, 25 at +10 kg
squat 100kg x5, no belt, 105kg x5 => barbell back squat 5 at 100 kg, 5 at 105 kg
bench 8 8, then 6 at 80 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
"""
IN_THE_GYM = """
55 minutes in the gym and only squat 3x5 100 => barbell back squat 3×5 at 100 kg
90 minuten im gym, kniebeuge 3x5 100 => barbell back squat 3×5 at 100 kg
50 minutos en el gym, sentadilla 3x5 100 => barbell back squat 3×5 at 100 kg
55 minutes à la salle et juste squat 3x5 100 => barbell back squat 3×5 at 100 kg
55 minuti in palestra, squat 3x5 100 => barbell back squat 3×5 at 100 kg
55 минут в зале и только присед 3х5 100 => barbell back squat 3×5 at 100 kg
55 minuter på gymmet, knäböj 3x5 100 => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD_TWICE) + readings(ESTIMATED))
def test_a_load_told_in_both_units_or_reckoned_is_no_other_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(WORN) + readings(IN_THE_GYM))
def test_what_is_worn_and_how_long_it_took_change_no_other_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
