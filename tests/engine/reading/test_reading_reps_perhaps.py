"""Reps behind a set that may tell what was possible, or what it counts for. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import log_after, readings, said

TOLD = """
bench 80x5 had 8 => ask: barbell bench press 5 at 80 kg | barbell bench press 5 at 80 kg, 8 at 80 kg
bench 80x5, had 8 easy => ask: barbell bench press 5 at 80 kg | barbell bench press 5 at 80 kg, 8 at 80 kg
squat 100x3 had 5 => ask: barbell back squat 3 at 100 kg | barbell back squat 3 at 100 kg, 5 at 100 kg
bankdrücken 80x5 hatte 8 => ask: barbell bench press 5 at 80 kg | barbell bench press 5 at 80 kg, 8 at 80 kg
bench 80x8, so 6 => ask: barbell bench press 8 at 80 kg | barbell bench press 8 at 80 kg, 6 at 80 kg
bench 80x8, only 6 => ask: barbell bench press 6 at 80 kg | barbell bench press 8 at 80 kg, 6 at 80 kg
bench 80x8, only 6 good => ask: barbell bench press 6 at 80 kg | barbell bench press 8 at 80 kg, 6 at 80 kg
bench 80x8, 6 counted => ask: barbell bench press 6 at 80 kg | barbell bench press 8 at 80 kg, 6 at 80 kg
bench 80x8, only 6 count => ask: barbell bench press 6 at 80 kg | barbell bench press 8 at 80 kg
bench 80x8, count it as 6 => barbell bench press 6 at 80 kg
bench 80x8 (count it as 6) => barbell bench press 6 at 80 kg
bench 80x8 but count 6 => barbell bench press 6 at 80 kg
bench 80x8, call it 6 => barbell bench press 6 at 80 kg
bench 80x8, log it as 6 => barbell bench press 6 at 80 kg
bench 80x8, count as 6, squat 3x5 100 => barbell bench press 6 at 80 kg; barbell back squat 3×5 at 100 kg
bankdrücken 80x8, zähl als 6 => barbell bench press 6 at 80 kg
press banca 80x8, cuenta como 6 => barbell bench press 6 at 80 kg
développé couché 80x8, compte comme 6 => barbell bench press 6 at 80 kg
panca piana 80x8, conta come 6 => barbell bench press 6 at 80 kg
bench 80 had 8 => barbell bench press 8 at 80 kg
bench 80x5, had 85x3 => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 had 2 still left => barbell bench press 5 at 80 kg 2 in reserve
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_reps_that_may_be_no_set_are_asked_about(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text",
    [
        "bench 80 8 8 8, count it as 6",
        "press banca 80x5 tenía 8",
        "panca piana 80x5 avevo 8",
        "bench 80x8, counts as 6",
    ],
)
def test_where_it_is_not_clear_of_what_it_is_asked(text) -> None:
    assert said(text).startswith("ask:")


ALL = """
squat 100x3 had 5 in me
squat 100x3 5 possible
squat 100x3 could have done 5
squat 100x3 could've had 5
squat 100x3 capable of 5
kniebeuge 100x3 5 wären gegangen
kniebeuge 100x3 hätte 5 geschafft
sentadilla 100x3 podía hacer 5
squat 100x3 aurais pu en faire 5
squat 100x3 potevo farne 5
squat 100x3 mogłem zrobić 5
squat 100x3 dava pra 5
приседания 100x3 мог бы 5
knäböj 100x3 hade klarat 5
knäböj 100x3 hade 5 inne
"""


@pytest.mark.parametrize("text", ALL.strip().splitlines())
def test_few_reps_that_were_possible_in_all_are_no_reserve(text) -> None:
    assert said(text) == "barbell back squat 3 at 100 kg"


@pytest.mark.parametrize(
    "text",
    [
        "squat 100x3 had 5 in the tank",
        "squat 100x3 could have done 5 more",
        "squat 100x3, had 5 left",
        "kniebeuge 100x3 noch 5 möglich",
        "kniebeuge 100x3 5 waren noch drin",
    ],
)
def test_so_many_more_are_what_was_left(text) -> None:
    assert said(text) == "barbell back squat 3 at 100 kg 5 in reserve"


def test_what_a_set_counts_for_is_asked_of_no_second_one_behind_it() -> None:
    assert log_after("bench 80x8", "80x8, count it as 6") == "barbell bench press 8 at 80 kg, 6 at 80 kg"


OF_EACH = """
bench 60 8 8 8, 7 reps each => ask: barbell bench press 3×8 at 60 kg
bench 8 8 8 60, 7 each => ask: barbell bench press 3×8 at 60 kg
bench 60x8, 60x8, 7 reps each => ask: barbell bench press 2×8 at 60 kg
bankdrücken 60 8 8 8, je 7 => ask: barbell bench press 3×8 at 60 kg
press banca 60 8 8 8, 7 cada una => ask: barbell bench press 3×8 at 60 kg
bench 60 8 8 8, 8 reps each => barbell bench press 3×8 at 60 kg
bench 60, 70, 80, 7 reps each => barbell bench press 7 at 60 kg, 7 at 70 kg, 7 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(OF_EACH))
def test_reps_of_each_set_are_no_set_more(text, context, meant) -> None:
    assert said(text, context) == meant
