"""What a remark beside sets says of a mark, of equipment or of the last number of a list: it changes no set in silence.

What lifters mean by such words is common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

NOT_MET = """
bench 3x5 80, didn't fail
bench 3x5 80, did not miss
bench 3x5 80, no failed reps
bench 3x5 80, zero misses
bench 3x5 80, not a single miss
bench 3x5 80, never failed
bench 3x5 80, not to failure
bench 3x5 80 (not quite to failure)
bench 3x5 80 close to failure
bench 3x5 80, last set almost to failure
bench 3x5 80, just short of failure
bench 3x5 80, stopped before failure
bench 3x5 80, thought i'd fail the last one
bench 3x5 80, nearly missed the last rep
bench 3x5 80, almost failed the 5th
bench 3x5 80, no drop sets
bench 3x5 80, nearly dropped it
bankdrücken 3x5 80, nicht bis zum versagen
bankdrücken 3x5 80, kein fehlversuch
press banca 3x5 80, sin fallo
press banca 3x5 80, casi al fallo
développé couché 3x5 80, presque à l'échec
supino 3x5 80, quase até a falha
panca piana 3x5 80, quasi a cedimento
жим лежа 3x5 80, почти до отказа
bankdrukken 3x5 80, bijna tot falen
bänkpress 3x5 80, nästan till failure
wyciskanie leżąc 3x5 80, prawie do upadku
"""


@pytest.mark.parametrize("text", [line for line in NOT_MET.splitlines() if line])
def test_a_mark_that_was_not_met_marks_no_set(text: str) -> None:
    assert said(text) == "barbell bench press 3×5 at 80 kg"


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 3x5 80 to failure                     => barbell bench press 3×5 at 80 kg to failure
bench 3x5 80, last set to failure           => barbell bench press 2×5 at 80 kg, 5 at 80 kg to failure
bench 3x5 80, not great, last to failure    => barbell bench press 2×5 at 80 kg, 5 at 80 kg to failure
bench 3x5 80, failed the last rep           => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
bench 80x5, 5, no belt, drop 60x8           => barbell bench press 2×5 at 80 kg, 8 at 60 kg drop
"""),
)
def test_a_mark_that_was_met_marks_its_set(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    "text",
    [
        "bench 3x5 80, 2 reps short of failure",
        "bench 3x5 80, 2 shy of failure",
        "bench 3x5 80, stopped 2 reps before failure",
        "bench 3x5 80, 2 reps away from failure",
        "bench 3x5 80 (2 from failure)",
    ],
)
def test_reps_short_of_failure_are_reps_in_reserve(text: str) -> None:
    assert said(text) == "barbell bench press 3×5 at 80 kg 2 in reserve"


def test_one_short_of_failure_is_one_in_reserve() -> None:
    assert said("bench 3x5 80, one from failure") == "barbell bench press 3×5 at 80 kg 1 in reserve"


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 3x8 60, dumbbells were all taken      => barbell bench press 3×8 at 60 kg
bench 3x8 60, cables were taken             => barbell bench press 3×8 at 60 kg
bench 3x8 60, smith machine was taken       => barbell bench press 3×8 at 60 kg
bench 3x8 60, kettlebell fell on my foot    => barbell bench press 3×8 at 60 kg
bench 80x8, machine by the window           => ask: barbell bench press 8 at 80 kg | machine chest press 8 at 80 kg
bench 80x8, machine                         => machine chest press 8 at 80 kg
bench 80x8 on the machine by the window     => machine chest press 8 at 80 kg
bench 30x8, dumbbells felt great            => dumbbell bench press 8 at 30 kg each
leg press 3x10 150, the blue machine        => leg press 3×10 at 150 kg
"""),
)
def test_equipment_that_only_a_remark_names_is_not_what_was_lifted(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome


@pytest.mark.parametrize(
    ("text", "context", "outcome"),
    readings("""
bench 80x8, 8, 7 slept badly                => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 7 slept badly                   => barbell bench press 8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7 F slept badly              => barbell bench press 2×8 at 80 kg, 7 at 80 kg to failure
bench 80x8, 8, 7 miss slept badly           => barbell bench press 2×8 at 80 kg, 7 at 80 kg missed
bench 80: 8, 8, 7 coffee did its job        => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bankdrücken 80x8, 8, 7 schlecht geschlafen  => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 7 tomorrow rest              => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80x8, 8, 4 hours sleep                => barbell bench press 2×8 at 80 kg
bench 80x8, 8, 3 guys watching              => barbell bench press 2×8 at 80 kg
bench 80x8, 8, locker 12                    => barbell bench press 2×8 at 80 kg
"""),
)
def test_words_behind_the_last_number_of_a_list_take_no_set_away(text: str, context: Context, outcome: str) -> None:
    assert said(text, context) == outcome
