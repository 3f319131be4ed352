"""Diary lines in ten languages: remarks on a set, misses, holds counted in words, days ago, pain."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, said, standing_after

LINES = """
bankdrücken 3x7 72,5, letzter satz grenzwertig => barbell bench press 3×7 at 72.5 kg
panca 3x7 72, ultima al limite => barbell bench press 3×7 at 72 kg
bankdrukken 3x7 72, laatste set net aan => barbell bench press 3×7 at 72 kg
bänkpress 3x7 72, sista setet var tungt => barbell bench press 3×7 at 72 kg
wyciskanie leżąc 3x7 72, ostatnia na styk => barbell bench press 3×7 at 72 kg
bench 85 kg 4, 4, 3 + fail => barbell bench press 2×4 at 85 kg, 3 at 85 kg missed
press banca 85 kg 4, 4, 3 + fallo => barbell bench press 2×4 at 85 kg, 3 at 85 kg missed
жим лежа 85 кг 4, 4, 3 + неудачный => barbell bench press 2×4 at 85 kg, 3 at 85 kg missed
bench 85 kg 4, 4, 3 to failure => barbell bench press 2×4 at 85 kg, 3 at 85 kg to failure
становая 175х1 не пошло => conventional deadlift 0 at 175 kg missed
leg press 110kg rust-pauze 13+4+2 => leg press 13 at 110 kg, 4 at 110 kg rest-pause, 2 at 110 kg rest-pause
leg press 110kg rest 13+4+2 => leg press 13 at 110 kg, 4 at 110 kg rest-pause, 2 at 110 kg rest-pause
tractions 3x7 avec 15 kg d'assistance => pull-up 3×7 at −15 kg
unterarmstütz zweimal eine minute => plank 2×60 s
plancha dos veces un minuto => plank 2×60 s
планка два раза по минуте => plank 2×60 s
планка 3 раза по 50 секунд => plank 3×50 s
stacco 4 singole a 150 kg => conventional deadlift 4×1 at 150 kg
становая 3 тройки по 130 кг => conventional deadlift 3×3 at 130 kg
drei fünfer mit hundert kilo kreuzheben => conventional deadlift 3×5 at 100 kg
bankdrücken 77,5x6, 2,5 mehr als letztes mal => barbell bench press 6 at 77.5 kg
press banca 77,5x6, 2,5 más que la última vez => barbell bench press 6 at 77.5 kg
kniebeugen 3x4 81,3 kg => barbell back squat 3×4 at 81.3 kg
vor zwei tagen kreuzheben 3x4 130 => conventional deadlift 3×4 at 130 kg on 2025-03-12
il y a deux jours squat 3x4 90 => barbell back squat 3×4 at 90 kg on 2025-03-12
couple of days ago squat 3x4 90 => barbell back squat 3×4 at 90 kg on 2025-03-12
back on tuesday squat 3x4 90 => barbell back squat 3×4 at 90 kg on 2025-03-11
жим лежа 3х4 75, побаливает плечо => barbell bench press 3×4 at 75 kg, pain
squat 3x4 90, last van mijn knie => barbell back squat 3×4 at 90 kg, pain
squat 3x4 90, geen last van mijn knie => barbell back squat 3×4 at 90 kg
squat 3x4 90, mi girava la testa => barbell back squat 3×4 at 90 kg, pain
przysiad 3x4 90, zakręciło mi się w głowie => barbell back squat 3×4 at 90 kg, pain
squat 3x4 90, la tête qui tourne => barbell back squat 3×4 at 90 kg, pain
mal di schiena, niente palestra => no sets, pain
agachamento 3x4 85 mesmo com dor muscular => barbell back squat 3×4 at 85 kg
w przysiadzie doszedłem do 110x4 => barbell back squat 4 at 110 kg
bij squat 3x4 90, volgende keer 92,5 => barbell back squat 3×4 at 90 kg
supino 3x6 70, próxima vez 72,5 => barbell bench press 3×6 at 70 kg
supino barra vazia x9, 50kg x6 => barbell bench press 9 at 20 kg warmup, 6 at 50 kg
curl barra vacía x9 => barbell curl 9 at 20 kg
suwnica 4 razy po 9 na 130 kg => leg press 4×9 at 130 kg
жим ногами 4 раза по 9 с 130 кг => leg press 4×9 at 130 kg
mi colega hizo sentadilla 150x4 => no sets
"""

ASKED = (
    "vor ein paar tagen kreuzheben 3x4 130",
    "hace unos días peso muerto 3x4 130",
    "a few days ago squat 3x4 90",
)

DIALOGUES = """
bench 3x6 75 | waren 80 kg, nicht 75 => barbell bench press 3×6 at 80 kg
bench 3x6 75 | korrektur: beim letzten waren es 5 => barbell bench press 2×6 at 75 kg, 5 at 75 kg
bench 3x6 75 | corrijo: la última fueron 5 => barbell bench press 2×6 at 75 kg, 5 at 75 kg
bench 3x6 75 | исправление: в последнем было 5 => barbell bench press 2×6 at 75 kg, 5 at 75 kg
bench 3x6 75 | dat was schuin bankdrukken => incline barbell bench press 3×6 at 75 kg
bench 3x6 75 | det var lutande bänkpress => incline barbell bench press 3×6 at 75 kg
bench 3x6 75 | la última no cuenta, quítala => barbell bench press 2×6 at 75 kg
bench 3x6 75 | l'ultima non conta, toglila => barbell bench press 2×6 at 75 kg
bench 3x6 75 | oublié : encore une série de 6 à 75 => barbell bench press 4×6 at 75 kg
bench 3x6 75 | vergeten: nog een set van 6 met 75 => barbell bench press 4×6 at 75 kg
"""


def lines(table: str) -> list[tuple[str, str]]:
    return [(text, meant) for row in table.strip().splitlines() for text, _, meant in [row.partition(" => ")]]


@pytest.mark.parametrize(("text", "meant"), lines(LINES))
def test_a_diary_line_is_read_as_it_is_meant(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize("text", ASKED)
def test_a_day_that_is_not_told_is_asked_about(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_is_put_right_stands_right(told: str, standing: str) -> None:
    assert standing_after(told) == standing
