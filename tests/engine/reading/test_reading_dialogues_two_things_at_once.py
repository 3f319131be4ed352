"""Two things put right in one message: both of them, or neither. Common practice, no source; words from memory."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

FEWER_AND_THE_LAST = [
    "only 2 sets, last one 6", "2 sets only and the last 6", "last one 6, only 2 sets", "only did 2, last one 6",
    "only got 2 sets, last 6 reps", "nur 2 Sätze, letzter 6", "solo 2 series, la última 6",
    "seulement 2 séries, la dernière 6", "apenas 2 séries, última 6", "solo 2 serie, l'ultima 6",
    "только 2 подхода, последний 6", "maar 2 sets, laatste 6", "slechts 2 sets, de laatste 6", "bara 2 set, sista 6",
    "tylko 2 serie, ostatnia 6", "only did 2 sets, last was 6",
]  # fmt: skip

FEWER_AND_NOT_CLEAR = [
    "only 2 sets, second 6", "only 2 sets, 8 and 6", "just 2 sets, last one at 6", "só 2 séries, a última 6",
    "only 2 sets today, last one 6",
]  # fmt: skip

COUNTS = """
bench 3x8 80 | only 2 sets => barbell bench press 2×8 at 80 kg
bench 3x8 80 | only 4 sets, last one 6 => barbell bench press 3×8 at 80 kg, 6 at 80 kg
bench 3x8 80 | only 2 sets, last one 75 => barbell bench press 8 at 80 kg, 8 at 75 kg
bench 3x8 80 | 4 sets not 3, last one 6 => barbell bench press 3×8 at 80 kg, 6 at 80 kg
bench 3x8 80 | only 2 sets, too tired => barbell bench press 2×8 at 80 kg
"""

REPS_WITH_AN_EFFORT = [
    "that was 7 with rpe 9", "last was 7 with rpe 9", "make it 7 with rpe 9", "das waren 7 mit rpe 9",
    "fueron 7 con rpe 9", "c'était 7 avec rpe 9", "foram 7 com rpe 9", "erano 7 con rpe 9", "dat waren 7 met rpe 9",
    "det var 7 med rpe 9", "to było 7 z rpe 9", "that was 7 rpe 9",
    "7 not 8, rpe 9", "7 not 8 and rpe 9", "not 8 but 7, rpe 9", "make it 7 not 8 and rpe 9", "7 statt 8, rpe 9",
    "7 no 8, rpe 9", "7 pas 8, rpe 9", "7 não 8, rpe 9", "7 non 8, rpe 9", "7 а не 8, rpe 9", "7 niet 8, rpe 9",
    "7 inte 8, rpe 9", "7 nie 8, rpe 9",
]  # fmt: skip

BOTH = """
bench 80x8 | 85 not 80 and rpe 9 => barbell bench press 8 at 85 kg RPE 9
bench 80x8 | change 80 to 85, rpe 9 => barbell bench press 8 at 85 kg RPE 9
bench 80x8 | 7 not 8, to failure => barbell bench press 7 at 80 kg to failure
bench 3x8 80 | last was 7 not 8, rpe 9 => barbell bench press 2×8 at 80 kg, 7 at 80 kg RPE 9
bench 3x8 80 | 8 7 6 not 8 8 8, rpe 9 => barbell bench press 8 at 80 kg RPE 9, 7 at 80 kg RPE 9, 6 at 80 kg RPE 9
bench 80x8 rpe 8 | rpe 9 not 8 => barbell bench press 8 at 80 kg RPE 9
bench 80x8 | that was 6 with failure => barbell bench press 6 at 80 kg to failure
bench 80x8 | that was 7 with a belt => barbell bench press 7 at 80 kg
bench 80x8 | that was with 85 => barbell bench press 8 at 85 kg
bench 80x8 | squat 100 not bench 80 => barbell back squat 8 at 100 kg
bench 80x8 | kniebeuge 100 statt bank 80 => barbell back squat 8 at 100 kg
bench 3x8 80 | squat 3x5 100 not bench 3x8 80 => barbell back squat 3×5 at 100 kg
bench 80x8 | squat 100 not bench 80, rpe 9 => barbell back squat 8 at 100 kg RPE 9
bench 80x8 | squat 80 not bench 100 => barbell bench press 8 at 80 kg
bench 2x8 80 85x5 | squat 100 not bench 80 => barbell bench press 2×8 at 80 kg, 5 at 85 kg
bench 80x8 | bench 85 not bench 80 => barbell bench press 8 at 85 kg
bench 80x8 | 7 not 8, in lbs => barbell bench press 8 at 80 kg
bench 80x8 | 7 not 8 in pounds => barbell bench press 8 at 80 kg
bench 80x8 | 7 not 8 in kg => barbell bench press 7 at 80 kg
"""


@pytest.mark.parametrize("told", FEWER_AND_THE_LAST)
def test_fewer_sets_and_the_last_of_them_add_none(told):
    assert standing_after(f"bench 3x8 80 | {told}") == "barbell bench press 8 at 80 kg, 6 at 80 kg"


@pytest.mark.parametrize("told", FEWER_AND_NOT_CLEAR)
def test_fewer_sets_beside_what_is_not_clear_change_nothing(told):
    assert standing_after(f"bench 3x8 80 | {told}") == "barbell bench press 3×8 at 80 kg"


@pytest.mark.parametrize(("told", "standing"), dialogues(COUNTS))
def test_a_count_of_sets_and_what_is_told_beside_it_are_both_done(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize("told", REPS_WITH_AN_EFFORT)
def test_reps_with_an_effort_are_no_load(told):
    assert standing_after(f"bench 80x8 | {told}") == "barbell bench press 7 at 80 kg RPE 9"


@pytest.mark.parametrize(("told", "standing"), dialogues(BOTH))
def test_what_is_told_beside_an_old_and_a_new_number_is_not_dropped(told, standing):
    assert standing_after(told) == standing
