"""The same for another lift, told in one message, is of its sets and reps. Common practice; words from memory."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said

BENCH, SQUAT = "barbell bench press 3×8 at 60 kg", "barbell back squat 3×8 at"
TOLD = """
bank 3x8 60, das gleiche für kniebeugen
press banca 3x8 60, lo mismo para sentadillas
développé couché 3x8 60, la même chose pour squat
panca piana 3x8 60, lo stesso per squat
supino 3x8 60, o mesmo para agachamento
bankdrukken 3x8 60, hetzelfde voor squats
bänkpress 3x8 60, likadant för knäböj
wyciskanie leżąc 3x8 60, to samo dla przysiadów
жим лежа 3x8 60, то же для приседаний
"""


@pytest.mark.parametrize("text", TOLD.strip().splitlines())
def test_the_same_for_another_lift(text) -> None:
    assert said(text) == f"{BENCH}; {SQUAT} 60 kg"


WITH = """
bank 3x8 60, das gleiche für kniebeugen mit 80
press banca 3x8 60, lo mismo para sentadillas con 80
développé couché 3x8 60, la même chose pour squat avec 80
panca piana 3x8 60, lo stesso per squat con 80
supino 3x8 60, o mesmo para agachamento com 80
bankdrukken 3x8 60, hetzelfde voor squats met 80
bänkpress 3x8 60, likadant för knäböj med 80
wyciskanie leżąc 3x8 60, to samo dla przysiadów z 80
жим лежа 3x8 60, то же для приседаний с 80
bench 3x8 60, same again for squats with 80
"""


@pytest.mark.parametrize("text", WITH.strip().splitlines())
def test_the_same_for_another_lift_at_its_own_load(text) -> None:
    assert said(text) == f"{BENCH}; {SQUAT} 80 kg"
