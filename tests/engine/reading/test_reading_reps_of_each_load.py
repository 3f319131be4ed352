"""Two lists of one length tell loads and the reps of each; reps and seconds are no loads. Common practice."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

THREE = "barbell back squat 5 at 100 kg, 5 at 110 kg, 3 at 120 kg"
TOLD = f"""
squat 100 110 120, 5 5 3 => {THREE}
squat 100, 110, 120; 5, 5, 3 => {THREE}
squat 100/110/120 5/5/3 => {THREE}
squat 100-110-120 5-5-3 => {THREE}
squat: 100 110 120 - 5 5 3 => {THREE}
squat 100kg 110kg 120kg, 5 5 3 => {THREE}
squat 100 110 120 for 5 5 3 => {THREE}
squat 100 110 120, 5 5 3 felt good => {THREE}
kniebeuge 100 110 120, 5 5 3, bankdrücken 60 70, 8 8 => {THREE}; barbell bench press 8 at 60 kg, 8 at 70 kg
squat 100 110 120 5 5 3 => ask:
squat 100 110 120, 5 5 => ask:
push ups 40 35, 20 15 => push-up 40, 35, 20, 15
plank 60 45, 30 30 => plank 60 s, 45 s, 2×30 s
squat 100 5 5 5 => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_each_load_has_its_reps(text, context, meant) -> None:
    assert said(text, context).rstrip() == meant


ADDED = """
dips 3x8 + 10kg => dip 3×8 at +10 kg
dips 3x8 + 10 kg => dip 3×8 at +10 kg
pull ups 5 + 10kg => pull-up 5 at +10 kg
dips 3x8 + 10kg, squat 3x5 100 => dip 3×8 at +10 kg; barbell back squat 3×5 at 100 kg
klimmzüge 3x5 + 10 kg => pull-up 3×5 at +10 kg
подтягивания 3x5 + 10 кг => pull-up 3×5 at +10 kg
dips 8+3+2 => dip 8, 3 rest-pause, 2 rest-pause
skipped bench: squat 3x5 100 => barbell back squat 3×5 at 100 kg
bankdrücken ausgelassen: kniebeuge 3x5 100 => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(ADDED))
def test_a_load_with_its_unit_behind_a_plus_is_added(text, context, meant) -> None:
    assert said(text, context) == meant


RECORDS = """
neuer rekord: bankdrücken 120x1
neue bestleistung: bankdrücken 120x1
bankdrücken 120x1 neuer rekord
nuevo récord: press banca 120x1
nouveau record: développé couché 120x1
nuovo massimale: panca piana 120x1
novo recorde: supino 120x1
новый рекорд: жим лежа 120x1
nieuw record: bankdrukken 120x1
nytt rekord: bänkpress 120x1
nowy rekord: wyciskanie leżąc 120x1
"""


@pytest.mark.parametrize("text", RECORDS.strip().splitlines())
def test_a_new_record_is_a_set(text) -> None:
    assert said(text) == "barbell bench press 1 at 120 kg"


@pytest.mark.parametrize("text", ["mein rekord: bankdrücken 115x1", "my record: bench 115x1"])
def test_an_old_record_is_none(text) -> None:
    assert said(text) == "no sets"
