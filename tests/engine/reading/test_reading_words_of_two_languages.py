"""Words that mean one thing in one language and another in the next: "hier", "er", "il", "he", "mon", "с"."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
hier nog eentje vergeten: rdl 3x8 80 => romanian deadlift 3×8 at 80 kg
hier meine Sätze: bank 3x8 60 => barbell bench press 3×8 at 60 kg
bank 3x8 60 war voll hier => barbell bench press 3×8 at 60 kg
hier squat 3x5 100 => barbell back squat 3×5 at 100 kg on 2025-03-13
hier soir squat 3x5 100 => barbell back squat 3×5 at 100 kg on 2025-03-13
squat 100x5, mon genou me fait mal => barbell back squat 5 at 100 kg, pain
squat 100x5 mon genou tire => barbell back squat 5 at 100 kg
squat 100x5, mi fa male il ginocchio => barbell back squat 5 at 100 kg, pain
mon squat 100x5 => barbell back squat 5 at 100 kg on 2025-03-10
mon développé couché 3x8 60 => barbell bench press 3×8 at 60 kg
mon bench 3x8 60 => barbell bench press 3×8 at 60 kg on 2025-03-10
er ging bank 3x8 60 goed => barbell bench press 3×8 at 60 kg
er macht kniebeuge 140x5 => no sets
kniebeuge 100x5, er 140x5 => barbell back squat 5 at 100 kg
per il petto panca 3x8 60 => barbell bench press 3×8 at 60 kg
il fait squat 140x5 => no sets
squat 100x5, il a fait 140x5 => barbell back squat 5 at 100 kg
la prima panca 60x8 => barbell bench press 8 at 60 kg
mi prima hizo 40x8 en banca => no sets
he subido a 80 kg en banca 3x5 => barbell bench press 3×5 at 80 kg
he did bench 100x5 => no sets
dit is mijn squat 3x5 100 => barbell back squat 3×5 at 100 kg
w ten wtorek przysiad 3x5 100 => barbell back squat 3×5 at 100 kg on 2025-03-11
жим лежа 3х8 60 с паузой => barbell bench press 3×8 at 60 kg
жим лежа 3х8 60 с гантелями => dumbbell bench press 3×8 at 60 kg each
планка 3х60 с => plank 3×60 s
j'ai pu faire 3x8 60 au dc => barbell bench press 3×8 at 60 kg
"""),
)
def test_the_words_beside_it_tell_which_language_a_word_is_of(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant
