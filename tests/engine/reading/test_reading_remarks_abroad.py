"""Remarks beside sets that hold a word or a number of sets and tell of something else, in English and other languages.

Common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

SESSIONS_COUNTED = """
bench 3x5 80, another week => barbell bench press 3×5 at 80 kg
session 14 of the block, paused bench 70 5x4, two weeks to go => paused bench press 5×4 at 70 kg
session 3 of the week: squat 3x5 80 => barbell back squat 3×5 at 80 kg
training 14, bankdrücken 3x5 80 => barbell bench press 3×5 at 80 kg
séance 3 de la semaine : squat 3x5 80 => barbell back squat 3×5 at 80 kg
entreno 14 del bloque, banca 3x5 80 => barbell bench press 3×5 at 80 kg
тренировка 14, присед 3х5 80 => barbell back squat 3×5 at 80 kg
tydzień 3: przysiad 4 serie po 6 z 82,5 kg, pas dopiero w ostatniej => barbell back squat 4×6 at 82.5 kg
przysiad 4x6 82,5, pas tylko w ostatniej => barbell back squat 4×6 at 82.5 kg
après 2 semaines d'arrêt : dc 3x8 60 => barbell bench press 3×8 at 60 kg
dopo 2 settimane di stop: panca 3x8 60 => barbell bench press 3×8 at 60 kg
le plan c'était 4x8, fait 3x8 dc 70 => barbell bench press 3×8 at 70 kg
Plan war 4x8, geschafft 3x8 bank 70 => barbell bench press 3×8 at 70 kg
plan był 4x8, zrobiłem 3x8 ławka 70 => barbell bench press 3×8 at 70 kg
bench 3x5 80, another set => barbell bench press 4×5 at 80 kg
press banca 3x5 80, otra semana más => barbell bench press 3×5 at 80 kg
press banca 3x5 80, otra serie => barbell bench press 4×5 at 80 kg
développé couché 3x5 80, encore une séance => barbell bench press 3×5 at 80 kg
squat 3x5 80, encore une série => barbell back squat 4×5 at 80 kg
kreuzheben 140x3 150x2, noch 2 einheiten diese woche => conventional deadlift 3 at 140 kg, 2 at 150 kg
kniebeuge 100x5, 5, 4, 2 mal training diese woche => barbell back squat 2×5 at 100 kg, 4 at 100 kg
chins 10 8 7, 2 pass kvar => chin-up 10, 8, 7
жим лежа 3x5 80, осталось 2 тренировки => barbell bench press 3×5 at 80 kg
жим лежа 3x5 80, осталось 2 => barbell bench press 3×5 at 80 kg 2 in reserve
"""
MARKS_NOT_MET = """
bankdrücken 3x5 80, kurz vor dem versagen => barbell bench press 3×5 at 80 kg
press banca 3x5 80, no llegué al fallo => barbell bench press 3×5 at 80 kg
press banca 3x5 80, llegué al fallo => barbell bench press 3×5 at 80 kg to failure
squat 3x5 80, sans aller à l'échec => barbell back squat 3×5 at 80 kg
no warm up, bench 3x5 80 => barbell bench press 3×5 at 80 kg
bench 3x5 80 (without warm-up) => barbell bench press 3×5 at 80 kg
warm up, bench 3x5 60 => barbell bench press 3×5 at 60 kg warmup
"""
WEIGHED = """
squat 100x5, 5, 4, weighed in at 81,4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
klimmzüge körpergewicht 10,8 => pull-up 10, 8
squat 100x5, 5, 4, weighed 81,4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
dominadas 10 8 7 (peso hoy 81,4) => pull-up 10, 8, 7
klimmzüge 10 8 7, bei 28 grad => pull-up 10, 8, 7
"""
THINGS_SPOKEN_OF = """
squat 100x5, 5, 4 (bench was taken) => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 5, 4 (bench next) => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 5, 4 (pull ups between) => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 5, 4 // benhc pres was taken => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 5, 4 // benhc pres 80x5 => barbell back squat 2×5 at 100 kg, 4 at 100 kg; barbell bench press 5 at 80 kg
développé couché 3x5 80 - machine prise => barbell bench press 3×5 at 80 kg
bench 3x5 80 machine taken => ask: barbell bench press 3×5 at 80 kg
bankdrücken 80 8 8 7 hantel war besetzt => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
machine row 3x5 50 => machine row 3×5 at 50 kg
"""
LAST_OF_A_LIST = """
squat 100x5, 5, 4 heavier than last week => ask: barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 5, 4 last session before the holidays => ask: barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 5, 4 tomorrow 3x5 deadlift => ask: barbell back squat 2×5 at 100 kg, 4 at 100 kg
bench 80x8 heavier than last week => barbell bench press 8 at 80 kg
bench 3x5 80, 2.5 more than last week => barbell bench press 3×5 at 80 kg
kniebeuge 100x5, 5, 4 linke seite schwächer => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 95 last week => barbell back squat 5 at 100 kg
"""
COUNTED = """
klimmzüge 10 8 7, 2 kaffee => pull-up 10, 8, 7
chins 10 8 7 2 kaffe innan => ask: chin-up 10, 8, 7, 2
tractions 10 8 7, dos ok => pull-up 10, 8, 7
dominadas 10 8 7, dos más => ask: pull-up 10, 8, 7, 2
squat 100x5, 5, 4 settimana di scarico => ask: barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 5, 4, 2 settimane senza allenarmi => barbell back squat 2×5 at 100 kg, 4 at 100 kg
bench 80x8 rpe 8 2 weeks off => barbell bench press 8 at 80 kg RPE 8
knäböj 100x5, 5, 4 (stången var böjd) => barbell back squat 2×5 at 100 kg, 4 at 100 kg
"""
HOURS = """
sentadilla 100x5, 5, 4, en el gym a las 6 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5, 5, 4, om half 7 begonnen => ask:
"""


@pytest.mark.parametrize(("text", "context", "told"), readings(SESSIONS_COUNTED))
def test_sessions_and_weeks_that_are_counted_are_no_sets(text: str, context: Context, told: str) -> None:
    assert said(text, context).startswith(told)


@pytest.mark.parametrize(("text", "context", "told"), readings(MARKS_NOT_MET))
def test_a_mark_that_was_not_met_marks_nothing(text: str, context: Context, told: str) -> None:
    assert said(text, context) == told


@pytest.mark.parametrize(("text", "context", "told"), readings(WEIGHED))
def test_a_number_of_no_set_keeps_its_decimals_and_its_measure(text: str, context: Context, told: str) -> None:
    assert said(text, context) == told


@pytest.mark.parametrize(("text", "context", "told"), readings(THINGS_SPOKEN_OF))
def test_lifts_and_equipment_that_are_only_spoken_of_take_no_set(text: str, context: Context, told: str) -> None:
    assert said(text, context).startswith(told)


@pytest.mark.parametrize(("text", "context", "told"), readings(LAST_OF_A_LIST))
def test_the_last_of_a_list_is_not_lost_to_the_words_behind_it(text: str, context: Context, told: str) -> None:
    assert said(text, context).startswith(told)


@pytest.mark.parametrize(("text", "context", "told"), readings(HOURS))
def test_an_hour_told_in_another_language_is_no_set(text: str, context: Context, told: str) -> None:
    assert said(text, context).startswith(told)


@pytest.mark.parametrize(("text", "context", "told"), readings(COUNTED))
def test_what_counts_coffees_weeks_or_is_no_number_takes_no_reps(text: str, context: Context, told: str) -> None:
    assert said(text, context).startswith(told)
