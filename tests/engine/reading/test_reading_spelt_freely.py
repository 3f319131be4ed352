"""Words drawn out, feelings told loosely, headings of work in ten languages, and help asked in a sentence.

The words are from memory; how they are written in diaries is common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

LOOSELY = """
squat 3x5 100, left knee achy-ish => barbell back squat 3×5 at 100 kg, pain
bench 80x5x3 shoulder pinchy-ish => barbell bench press 3×5 at 80 kg, pain
deadlift 140x3 lower back tight ish => conventional deadlift 3 at 140 kg, pain
bench 5x5 80 elbow numbish => barbell bench press 5×5 at 80 kg, pain
squat 3x5 100 hard-ish => barbell back squat 3×5 at 100 kg
ohp 40 8 8 7, easy-ish today => barbell overhead press 2×8 at 40 kg, 7 at 40 kg
front squat 3x3 90 tough ish but ok => barbell front squat 3×3 at 90 kg
pull-ups 8 8 7, elbow painful-ish on the last => pull-up 2×8, 7, pain
deadlift 3x3 150 heavy-ish, grip fine => conventional deadlift 3×3 at 150 kg
squat 3x5 82ish => ask: barbell back squat 3×5 at 82 kg
squat 3x5 at 80 ish, heavy => ask: barbell back squat 3×5 at 80 kg
"""

DRAWN_OUT = """
hit 180 for a single on deadlift let's goooo!! => conventional deadlift 1 at 180 kg
lets gooo bench 100x3 => barbell bench press 3 at 100 kg
got 60 for 2 on ohp letsss gooo => barbell overhead press 2 at 60 kg
hit 140 for 5 on squat lets go! => barbell back squat 5 at 140 kg
hit 140 for 5 on squat leggo => barbell back squat 5 at 140 kg
pull ups 8 8 7 lets goooooo => pull-up 2×8, 7
squat 100x5, knee pain nowww => barbell back squat 5 at 100 kg, pain
squat 100x5 painnnn in the knee => barbell back squat 5 at 100 kg, pain
squat 100x5 noooo pain => barbell back squat 5 at 100 kg
squat 120x3 tomorrowww => no sets
let's go squat 3x5 120 => no sets
lets do bench 3x5 80 => no sets
tomorrow lets gooo squat 3x5 100 => no sets
squat 3x5 120 lets go up next week => ask: barbell back squat 3×5 at 120 kg
"""

WORK = """
Aufwärmen: Bankdrücken 10x Stange // Arbeit: 5x80 4x80 => barbell bench press 10 at 20 kg warmup, 5 at 80 kg, 4 at 80 kg
Kniebeuge // Aufwärmen: 60x5 // Arbeit: 100 5 5 4 => barbell back squat 5 at 60 kg warmup, 2×5 at 100 kg, 4 at 100 kg
Calentamiento: sentadilla 60x5 // Trabajo: 100x5 100x5 => barbell back squat 5 at 60 kg warmup, 2×5 at 100 kg
Échauffement: squat 60x5 // Série de travail: 100x5 => barbell back squat 5 at 60 kg warmup, 5 at 100 kg
Riscaldamento: squat 60x5 // Lavoro: 100x5 100x5 => barbell back squat 5 at 60 kg warmup, 2×5 at 100 kg
Aquecimento: agachamento 60x5 // Séries de trabalho: 100x5 100x5 => barbell back squat 5 at 60 kg warmup, 2×5 at 100 kg
Warming-up: squat 60x5 // Werk: 100x5 100x5 => barbell back squat 5 at 60 kg warmup, 2×5 at 100 kg
Rozgrzewka: przysiad 60x5 // Praca: 100x5 100x5 => barbell back squat 5 at 60 kg warmup, 2×5 at 100 kg
Разминка: присед 60x5 // Работа: 100x5 100x5 => barbell back squat 5 at 60 kg warmup, 2×5 at 100 kg
Uppvärmning: knäböj 60x5 // Arbete: 100x5 100x5 => barbell back squat 5 at 60 kg warmup, 2×5 at 100 kg
Kniebeuge 3x5 100 nach der Arbeit => barbell back squat 3×5 at 100 kg
"""

HELP = """
help i dont know what to write => request: help
i have no idea what i can type here => request: help
not sure what to send you => request: help
what am i supposed to write => request: help
sorry, i really dont know how to log this => request: help
Hilfe, ich weiß nicht was ich schreiben kann => request: help
ayuda, no sé qué puedo escribir => request: help
aide, je ne sais pas quoi écrire => request: help
non so come si usa questo bot => request: help
ajuda, não sei o que posso escrever => request: help
help, ik weet niet wat ik kan schrijven => request: help
pomocy, nie wiem co mogę napisać => request: help
помогите, я не знаю что писать => request: help
hjälp, jag vet inte vad jag kan skriva => request: help
help, my back hurts => no sets, pain
no idea => no sets
no idea what went wrong with squats, 3x5 100 => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "known", "meant"), readings(LOOSELY))
def test_a_feeling_told_loosely_is_that_feeling(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(("text", "known", "meant"), readings(DRAWN_OUT))
def test_a_word_drawn_out_is_that_word_and_a_cheer_plans_nothing(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(("text", "known", "meant"), readings(WORK))
def test_a_word_for_work_ends_the_warm_up(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(("text", "known", "meant"), readings(HELP))
def test_whoever_is_at_a_loss_what_to_say_gets_help(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


DECIMALS = """
i did squats eighty two point five kilos for five then five then four => barbell back squat 2×5 at 82.5 kg, 4 at 82.5 kg
bench sixty seven point five for eight then six => barbell bench press 8 at 67.5 kg, 6 at 67.5 kg
bench press seventy two point five three sets of eight => barbell bench press 3×8 at 72.5 kg
bench sixty two point five kilos five five five => barbell bench press 3×5 at 62.5 kg
front squat eighty point five kilos for three => barbell front squat 3 at 80.5 kg
squat one twelve point five for three then three => barbell back squat 2×3 at 112.5 kg
squat hundred and twenty two point five for three => barbell back squat 3 at 122.5 kg
dumbbell curl eleven point two five kilos for eight => dumbbell curl 8 at 11.25 kg each
squat 3x5 100 rpe eight point five => barbell back squat 3×5 at 100 kg RPE 8.5
Bankdrücken achtzig Komma fünf Kilo für fünf => barbell bench press 5 at 80.5 kg
sentadilla ochenta y dos coma cinco por cinco luego cuatro => barbell back squat 5 at 82.5 kg, 4 at 82.5 kg
bench eighty for five. point taken => barbell bench press 5 at 80 kg
"""


@pytest.mark.parametrize(("text", "known", "meant"), readings(DECIMALS))
def test_decimals_said_in_words_belong_to_the_number_before(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant
