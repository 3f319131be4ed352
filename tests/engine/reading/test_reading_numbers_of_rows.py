"""Numbers of sets that stand in front of each, and tables headed by words with nothing but blanks between."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

NUMBERED = """
bench 80kg // 1: 8 // 2: 8 // 3: 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80kg 1: 8 2: 8 3: 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80kg 1: 8, 2: 8, 3: 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 1: 80 8 2: 80 7 => barbell bench press 8 at 80 kg, 7 at 80 kg
bench // 1 80 8 // 2 80 8 // 3 80 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench // 1 8 80 // 2 8 80 // 3 7 80 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench // 1 80kg 8 // 2 80kg 8 // 3 80kg 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench // 1 80x8 // 2 80x8 // 3 80x7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80kg // 1 8 // 2 8 // 3 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
pushups // 1 20 // 2 18 // 3 15 => push-up 20, 18, 15
bench // 1 8 80 // 2 6 90 => ask: barbell bench press 8 at 80 kg, 6 at 90 kg
bench // 1 100 // 2 95 // 3 90 => barbell bench press 1 at 100 kg, 2 at 95 kg, 3 at 90 kg
squat // 2 100 // 3 90 => barbell back squat 2 at 100 kg, 3 at 90 kg
"""

TABLES = """
Exercise Sets Reps Weight // Dip 3 8 // Squat 3 5 100 => no sets
Exercise Sets Reps Weight // Bench 3 8 80 // Dip 3 5 10 => barbell bench press 3×8 at 80 kg; dip 3×5 at +10 kg
Exercise Sets Reps Weight // Leg Press 3 8 80kg => leg press 3×8 at 80 kg
Exercise Set Weight Reps // Bench 1 80 8 // Bench 2 80 7 => barbell bench press 8 at 80 kg, 7 at 80 kg
Übung Sätze Wdh Gewicht // Bankdrücken 3 8 80 => barbell bench press 3×8 at 80 kg
Exercise Sets Reps Weight // Leg Press 3 8 80 kg => no sets
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(NUMBERED))
def test_the_number_of_a_set_is_no_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(TABLES))
def test_a_table_may_be_headed_by_words_with_blanks_between(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("sign", [" - ", " – ", ": ", ":", ". "])
def test_the_number_of_a_set_is_no_set_whatever_sign_is_behind_it(sign: str) -> None:
    right = "barbell bench press 2×8 at 80 kg, 7 at 80 kg"
    told = said("bench 80kg\n" + "\n".join(f"{place}{sign}{reps}" for place, reps in enumerate((8, 8, 7), start=1)))

    assert told == right or (told.startswith("ask: ") and right in told)


CELLS = """
bench 3 8 80 => ask: barbell bench press 3 at 80 kg, 8 at 80 kg | barbell bench press 3×8 at 80 kg
Bench: 3, 8, 80 => ask: barbell bench press 3 at 80 kg, 8 at 80 kg | barbell bench press 3×8 at 80 kg
Bench - 3 - 8 - 80 => ask: barbell bench press 3 at 80 kg, 8 at 80 kg | barbell bench press 3×8 at 80 kg
Bench;3;8;80 => ask: barbell bench press 3 at 80 kg, 8 at 80 kg | barbell bench press 3×8 at 80 kg
Bench / 3 / 8 / 80 => ask: barbell bench press 3 at 80 kg, 8 at 80 kg | barbell bench press 3×8 at 80 kg
Bench Press | 3 | 10 | 60 => ask: barbell bench press 3 at 60 kg, 10 at 60 kg | barbell bench press 3×10 at 60 kg
bench | 80 | 3 | 8 => ask: barbell bench press 3 at 80 kg, 8 at 80 kg | barbell bench press 3×8 at 80 kg
bench 80 3 8 => ask: barbell bench press 3 at 80 kg, 8 at 80 kg | barbell bench press 3×8 at 80 kg
bench 8, 6, 80 => barbell bench press 8 at 80 kg, 6 at 80 kg
pushups 3 20 => ask: push-up 3, 20 | push-up 3×20
dips 4 10 => ask: dip 4, 10 | dip 4×10
pullups 3 5 => pull-up 3, 5
pullups 3, 10 => pull-up 3, 10
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(CELLS))
def test_cells_of_a_row_may_be_sets_reps_and_load(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
