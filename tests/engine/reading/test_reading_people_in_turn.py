"""Sets of several people told in turn: those behind "me" are hers, and nobody else's are."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
me: deadlift 110 3x5 // Jo: deadlift 150 3x5 => conventional deadlift 3×5 at 110 kg
ana: deadlift 110 3x5 // me: deadlift 90 3x5 => conventional deadlift 3×5 at 90 kg
me: squat 3x5 80 // tove: squat 3x5 100 // kit: squat 3x5 60 => barbell back squat 3×5 at 80 kg
me: squat 3x5 80 // my brother: squat 3x5 100 => barbell back squat 3×5 at 80 kg
squat // me 3x5 80 // mia 3x5 100 => barbell back squat 3×5 at 80 kg
bench // me 60x8, 8, 7 // tove 70x8 => barbell bench press 2×8 at 60 kg, 7 at 60 kg
{doing: barbell bench press} me 60x8, mia 70x8 => barbell bench press 8 at 60 kg
bench me 60x8, mia 70x8 => barbell bench press 8 at 60 kg
bench: me 60x8, mia 70x8, tove 50x8 => barbell bench press 8 at 60 kg
bench me 60x8 and mia 70x8 => barbell bench press 8 at 60 kg
me: // squat 3x5 80 // dips 10 // jo: // squat 3x5 100 // dips 8 => barbell back squat 3×5 at 80 kg; dip 10
jo // squat 3x5 100 // me // squat 3x5 80 => barbell back squat 3×5 at 80 kg
ich: bank 3x8 60 // lisa: bank 3x8 50 => barbell bench press 3×8 at 60 kg
bankdrücken ich 3x8 60, paul 3x8 80 => barbell bench press 3×8 at 60 kg
squat moi 60x8, julie 70x8 => barbell back squat 8 at 60 kg
{doing: barbell bench press} yo 60x8, ana 70x8 => barbell bench press 8 at 60 kg
panca io 3x8 50, luca 3x8 70 => barbell bench press 3×8 at 50 kg
supino eu 3x8 50, ana 3x8 30 => barbell bench press 3×8 at 50 kg
bench ik 3x8 60, joris 3x8 80 => barbell bench press 3×8 at 60 kg
knäböj jag 3x8 60, tove 3x8 80 => barbell back squat 3×8 at 60 kg
{doing: barbell bench press} я 60x8, дима 80x8 => barbell bench press 8 at 60 kg
przysiad ja 3x8 60, kuba 3x8 80 => barbell back squat 3×8 at 60 kg
ana: deadlift 110 3x5 // jo: deadlift 150 3x5 => no sets
ana | bench 3x8 60 // mia | bench 3x8 50 => no sets
strength: squat 3x5 100 // finisher: push ups 3x15 => barbell back squat 3×5 at 100 kg; push-up 3×15
"""),
)
def test_each_turn_is_of_the_one_in_front_of_it(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


def test_her_own_name_is_her_turn() -> None:
    called = replace(situation(), called="Ana Berg")

    assert said("ana: deadlift 110 3x5\njo: deadlift 150 3x5", called) == "conventional deadlift 3×5 at 110 kg"
