"""Which of the sets it was, in figures and in sentences of ten languages: "2. Satz", "2a serie", "the third was 6"."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
Bank 1. Satz 60x10, 2. Satz 65x8, 3. Satz 65x7 => barbell bench press 10 at 60 kg, 8 at 65 kg, 7 at 65 kg
Bank 3x8 60, im 3. Satz nur 6 => barbell bench press 2×8 at 60 kg, 6 at 60 kg
panca 1a serie 60x10, 2a 65x8, 3a 65x7 => barbell bench press 10 at 60 kg, 8 at 65 kg, 7 at 65 kg
bank 1e set 60x10, 2e 65x8 => barbell bench press 10 at 60 kg, 8 at 65 kg
bank 3x8 60, 2e set 7 => barbell bench press 8 at 60 kg, 7 at 60 kg, 8 at 60 kg
dc 1re série 60x10, 2e 65x8 => barbell bench press 10 at 60 kg, 8 at 65 kg
supino 1ª série 60x10, 2ª série 65x8 => barbell bench press 10 at 60 kg, 8 at 65 kg
ławka 1 seria 60x10, 2 seria 65x8, 3 seria 65x7 => barbell bench press 10 at 60 kg, 8 at 65 kg, 7 at 65 kg
ławka 3x8 60, w 3 serii tylko 6 => barbell bench press 2×8 at 60 kg, 6 at 60 kg
жим лежа 1 подход 60х10, 2 подход 65х8 => barbell bench press 10 at 60 kg, 8 at 65 kg
жим лежа 1-й подход 60х10, 2-й подход 65х8 => barbell bench press 10 at 60 kg, 8 at 65 kg
жим лежа 3х8 60, в 3 подходе только 6 => barbell bench press 2×8 at 60 kg, 6 at 60 kg
bank 1 Satz 60x10, 2 Sätze 65x8 => barbell bench press 10 at 60 kg, 2×8 at 65 kg
bench 1 set 60x10, 2 sets 65x8, 3 sets 65x7 => barbell bench press 10 at 60 kg, 2×8 at 65 kg, 3×7 at 65 kg
"""),
)
def test_a_place_in_figures_counts_no_sets(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "told",
    [
        "bench 3x8 60 but the third was 6",
        "bench 3x8 60, third was 6",
        "bench 3x8 60 but last was 6",
        "Bank 3x8 60 aber der dritte war 6",
        "banca 3x8 60 pero la tercera fueron 6",
        "dc 3x8 60 mais la troisième c'était 6",
        "panca 3x8 60 ma la terza erano 6",
        "bank 3x8 60 maar de derde was 6",
        "supino 3x8 60 mas a terceira foi 6",
        "bänk 3x8 60 men tredje var 6",
        "жим лежа 3х8 60 но третий был 6",
        "ławka 3x8 60, ostatnia to było 6",
    ],
)
def test_what_one_of_the_sets_came_to_in_a_sentence(told: str) -> None:
    assert said(told) == "barbell bench press 2×8 at 60 kg, 6 at 60 kg"


def test_the_effort_of_one_of_the_sets_is_not_that_of_all() -> None:
    assert said("bench 3x8 60, the third was rpe 9").startswith("ask: ")


@pytest.mark.parametrize(
    "text",
    [
        "bench up to 90: 60x5, 80x2, 90x1",
        "banca hasta 90: 60x5, 80x2, 90x1",
        "dc jusqu'à 90 : 60x5, 80x2, 90x1",
        "panca fino a 90: 60x5, 80x2, 90x1",
        "bank tot 90: 60x5, 80x2, 90x1",
        "supino até 90: 60x5, 80x2, 90x1",
        "bänk upp till 90: 60x5, 80x2, 90x1",
        "ławka do 90: 60x5, 80x2, 90x1",
        "жим лежа до 90: 60х5, 80х2, 90х1",
    ],
)
def test_the_load_that_heads_a_ramp_is_none_of_its_sets(text: str) -> None:
    assert said(text) == "barbell bench press 5 at 60 kg, 2 at 80 kg, 1 at 90 kg"


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
lunges 3x10 per leg with 2 dumbbells of 14 => dumbbell lunge 3×10 at 14 kg each
zancadas 3x10 por pierna con 2 mancuernas de 14 kg => walking lunge 3×10 at 14 kg each
shrugs 30kg in each hand 3x12 => dumbbell shrug 3×12 at 30 kg each
шраги 30кг на руку 3х12 => dumbbell shrug 3×12 at 30 kg each
bankdrücken 3x5 80, linke hand abgerutscht => barbell bench press 3×5 at 80 kg
bänkpress 3x5 80, vänster hand gled => barbell bench press 3×5 at 80 kg
bench press 30 per hand 3x8 => dumbbell bench press 3×8 at 30 kg each
брусья 3х10 потом 2х6 с +10 => dip 3×10, 2×6 at +10 kg
tomorrow legs, squat 5x5 95 => ask: barbell back squat 5×5 at 95 kg
tomorrow legs, bench 3x5 80 => barbell bench press 3×5 at 80 kg
domani gambe, squat 5x5 95 => ask: barbell back squat 5×5 at 95 kg
завтра ноги, присед 5х5 95 => ask: barbell back squat 5×5 at 95 kg
kniebeuge 100 5/5/5, letzter Satz war echt eklig => barbell back squat 3×5 at 100 kg
bench 3x5 80, last set was lighter => ask: barbell bench press 3×5 at 80 kg
"""),
)
def test_what_hands_hold_and_days_are_for(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
