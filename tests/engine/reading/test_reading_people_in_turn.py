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


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
my sister pulled 95x3 on deads, i did 120x5 120x5 => conventional deadlift 2×5 at 120 kg
my cousin benched 110x5, mine was 120x5 => barbell bench press 5 at 120 kg
spotted a guy on squat 140x3, my own sets: 120x5 => barbell back squat 5 at 120 kg
spotted Vera on squat for 62.5x6, then me 120x5 => barbell back squat 5 at 120 kg
squat: my uncle 140x5, me 120x5 => barbell back squat 5 at 120 kg
Rolf did 140x5 on squat, me 120x5 => barbell back squat 5 at 120 kg
Rolf squatted 140x5, i squatted 120x5 => barbell back squat 5 at 120 kg
tom did 140x5 so i did squat 120x5 => barbell back squat 5 at 120 kg
my wife's squat 50x5, mine 120x5 => barbell back squat 5 at 120 kg
Lena hat 60x5 Kniebeuge gemacht, ich 120x5 => barbell back squat 5 at 120 kg
mijn maat deed 3x5 140 squat, ikzelf 3x5 100 => barbell back squat 3×5 at 100 kg
mon binôme a fait 4x8 à 60 au squat, et moi 4x8 à 50 => barbell back squat 4×8 at 50 kg
Elin gjorde 60x5 i knäböj, själv 70x5 => barbell back squat 5 at 70 kg
my uncle, who lifts, did 140x5 on squat, i did 120x5 => barbell back squat 5 at 120 kg
mi primo hizo 12 dominadas, yo 7 6 6 => pull-up 7, 2×6
mon frère 140x5 au squat, moi 120x5 => barbell back squat 5 at 120 kg
il mio socio panca 100x3, io 77,5 4x6 => barbell bench press 4×6 at 77.5 kg
mijn broer deed 140x5 squat, ik 120x5 => barbell back squat 5 at 120 kg
mój brat zrobił przysiad 140x5, ja 120x5 => barbell back squat 5 at 120 kg
meu irmão fez 140x5 no agachamento, eu 120x5 => barbell back squat 5 at 120 kg
мой брат сделал 12 подтягиваний, я 8 7 => pull-up 8, 7
min bror gjorde 140x5 i knäböj, jag 120x5 => barbell back squat 5 at 120 kg
my uncle did 140x5 on squat, i did 3x5 => ask:
my uncle did 140x5 on squat yesterday, i did 120x5 => ask:
my uncle did 12 dips and 15 pull ups, i did 8 8 => ask:
my knee did fine on squat 120x5, my back is tired => barbell back squat 5 at 120 kg
"""),
)
def test_her_sets_behind_anothers_are_of_the_lift_that_those_name(text: str, context: Context, meant: str) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
squat 100x5, Vera got 110x5 next to me => barbell back squat 5 at 100 kg
squat 100x5 and Vera hit 110x5 => barbell back squat 5 at 100 kg
squat 100x5, wobbly got 110x5 => barbell back squat 5 at 100 kg, 5 at 110 kg
squat 100x5 next to vera who did 110x5 => barbell back squat 5 at 100 kg
kniebeuge 100x5 neben vera, die 110x5 gemacht hat => barbell back squat 5 at 100 kg
sentadilla 100x5 con vera que hizo 110x5 => barbell back squat 5 at 100 kg
squat 100x5 con vera che ha fatto 110x5 => barbell back squat 5 at 100 kg
присед 100х5 рядом с верой, которая сделала 110х5 => barbell back squat 5 at 100 kg
my wife's numbers: squat 3x5 60 => no sets
my training partner's sets: squat 3x5 60 => no sets
squat 100x5. my brother's numbers: 3x5 120 => barbell back squat 5 at 100 kg
serie mojego brata: przysiad 3x5 140 => no sets
подходы моего брата: присед 3х5 140 => no sets
min brors set: knäböj 3x5 140 => no sets
my brother's gym: squat 100x5 => ask: barbell back squat 5 at 100 kg
"""),
)
def test_sets_of_somebody_named_beside_hers_or_owned_are_left_out(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
