"""What is announced at the end of a message, or in brackets, is ahead and no set of now. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
bench 3x8 65 next => no sets
bench 3x8 65 next! => no sets
bench 3x8 65 is my next exercise => no sets
bench 3x8 65 is the next one => no sets
squat 3x5 100 done, bench 3x8 65 next => barbell back squat 3×5 at 100 kg
squat 3x5 100 then bench 3x8 65 next => barbell back squat 3×5 at 100 kg
squat 3x5 100, bench 3x8 65, rdl 3x10 50 next => barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 65 kg
deadlift 3x5 130 (bench 3x8 65 next) => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130 (next: bench 3x8 65) => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130 (bench 3x8 65 still to go) => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130 (bench 3x8 65 tomorrow) => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130 (bench 3x8 65 skipped) => conventional deadlift 3×5 at 130 kg
bankdrücken 3x8 65 als nächstes => no sets
bankdrücken 3x8 65 ist als nächstes dran => no sets
bankdrücken 3x8 65 kommt jetzt => no sets
press banca 3x8 65 siguiente => no sets
press banca 3x8 65 es lo siguiente => no sets
développé couché 3x8 65 à suivre => no sets
développé couché 3x8 65 c'est le prochain => no sets
panca piana 3x8 65 a seguire => no sets
supino 3x8 65 é o próximo => no sets
supino 3x8 65 a seguir => no sets
bankdrukken 3x8 65 hierna => no sets
bankdrukken 3x8 65 is de volgende => no sets
bänkpress 3x8 65 härnäst => no sets
bänkpress 3x8 65 på tur => no sets
wyciskanie leżąc 3x8 65 następne => no sets
wyciskanie leżąc 3x8 65 jako następne => no sets
жим лежа 3x8 65 следующий => no sets
жим лежа 3x8 65 на очереди => no sets
bankdrücken 3x8 65 folgt => no sets
press banca 3x8 65 falta => no sets
développé couché 3x8 65 arrive => no sets
panca piana 3x8 65 manca => no sets
bänkpress 3x8 65 kommer => no sets
bench 3x8 65 next workout => no sets
supino 3x8 65 falta força => barbell bench press 3×8 at 65 kg
next: bench 3x8 65 => no sets
plan today squat 5x5 100 => no sets
trying squat 140x1 => no sets
trying 140x1 squat => no sets
Plan für heute Kniebeuge 5x5 100 => no sets
gleich Kniebeuge 5x5 100 => no sets
offen Bankdrücken 3x8 65 => no sets
plan para hoy sentadilla 5x5 100 => no sets
falta press banca 3x8 65 => no sets
siguiente: press banca 3x8 65 => no sets
plan pour aujourd'hui squat 5x5 100 => no sets
il reste développé couché 3x8 65 => no sets
l'an dernier squat 140x5 => no sets
piano per oggi squat 5x5 100 => no sets
manca panca piana 3x8 65 => no sets
plano para hoje agachamento 5x5 100 => no sets
restam supino 3x8 65 => no sets
plan voor vandaag squat 5x5 100 => no sets
straks bankdrukken 3x8 65 => no sets
plan na dziś przysiad 5x5 100 => no sets
zostało wyciskanie 3x8 65 => no sets
план на сегодня присед 5x5 100 => no sets
осталось жим лежа 3x8 65 => no sets
plan på idag knäböj 5x5 100 => no sets
kvar: bänkpress 3x8 65 => no sets
przysiad 3x5 100, zostało wyciskanie 3x8 65 => barbell back squat 3×5 at 100 kg
жим лежа 80x8 осталось 2 => barbell bench press 8 at 80 kg 2 in reserve
bench 80x8 trying wide grip => barbell bench press 8 at 80 kg
bench 3x8 65 next time 70 => barbell bench press 3×8 at 65 kg
bench 80x5 next to the window => barbell bench press 5 at 80 kg
next bench 3x8 65 => ask: barbell bench press 3×8 at 65 kg
squat 3x5 100 next bench 3x8 65 => barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 65 kg
squat 3x5 100, bench next => barbell back squat 3×5 at 100 kg
squat 3x5 100. next: bench 3x8 65 => barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 65 kg
squat 3x5 100, bench 3x8 65 afterwards => barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 65 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_is_announced_is_no_set(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text",
    [
        "bench 3x8 65 after this",
        "bench 3x8 65 in a bit",
        "bench 3x8 65 if time",
        "bankdrücken 3x8 65 wenn zeit",
        "bankdrücken 3x8 65 danach",
        "bankdrücken 3x8 65 gleich",
        "press banca 3x8 65 luego",
        "développé couché 3x8 65 ensuite",
        "panca piana 3x8 65 tra poco",
        "supino 3x8 65 daqui a pouco",
        "bankdrukken 3x8 65 daarna",
        "bänkpress 3x8 65 strax",
        "wyciskanie leżąc 3x8 65 zaraz",
        "жим лежа 3x8 65 потом",
        "squat 140x1 trying",
        "bankdrücken 3x8 65 offen",
        "développé couché 3x8 65 reste",
        "wyciskanie leżąc 3x8 65 zostało",
        "жим лежа 3x8 65 осталось",
        "bänkpress 3x8 65 kvar",
    ],
)
def test_a_lift_told_alone_as_coming_after_is_asked(text) -> None:
    assert said(text).startswith("ask:")


def test_next_between_sets_may_lead_to_those_behind_it() -> None:
    assert said("bench 3x8 65 next, squat 3x5 100").startswith("ask:")
