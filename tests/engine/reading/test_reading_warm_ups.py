"""Which sets a word for warming up speaks of: the one before it, a run of them, what stands in its brackets."""

# ruff: noqa: E501 — a message and its reading stand on one line each

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

SEVERAL = """
bench 50x8 70x5 (warm-ups), 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 50x8, 70x5 (warmup sets), 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 50x8, 70x5 warm ups then 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 95x1; 50x8, 70x5 (warm ups) => barbell bench press 1 at 95 kg, 8 at 50 kg warmup, 5 at 70 kg warmup
bench 50x8, 60x5, 70x3 (both warm ups), 90x3 => barbell bench press 8 at 50 kg, 5 at 60 kg warmup, 3 at 70 kg warmup, 3 at 90 kg
bench 50x8, 60x5, 70x3 (all warm up) then 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 60 kg warmup, 3 at 70 kg warmup, 3 at 90 kg
bench 50x8 and 70x5 for warm up, 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 50 8 8 (warm ups) 90 3 3 => barbell bench press 2×8 at 50 kg warmup, 2×3 at 90 kg
bench // 50x8 // 70x5 // warmups // 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bankdrücken 50x8, 70x5 (aufwärmsätze), 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
press banca 50x8 70x5 (series de calentamiento), 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 50x8, 70x5 (opwarmsets), 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
жим лежа 50x8, 70x5 (разминочные), 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
"""
ONE_OR_ALL = """
bench 50x8wu 70x5wu 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 50x8 wu 70x5 wu 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 50x8 70x5 wu 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 50x8, 70x5, warm up, 90x3 => barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg
bench 50x8 70x5 (warm up), 90x3 => ask: barbell bench press 8 at 50 kg warmup, 5 at 70 kg warmup, 3 at 90 kg | barbell bench press 8 at 50 kg, 5 at 70 kg warmup, 3 at 90 kg
bench 70x5 wu 70x5 70x5 => ask: barbell bench press 5 at 70 kg warmup, 2×5 at 70 kg | barbell bench press 5 at 70 kg, 2×5 at 70 kg warmup
warm-up 50x6, bench 85x4 => ask: barbell bench press 6 at 50 kg warmup, 4 at 85 kg | barbell bench press 6 at 50 kg warmup, 4 at 85 kg warmup
warmup 50x6, bench 85x4x3 => ask: barbell bench press 6 at 50 kg warmup, 3×4 at 85 kg | barbell bench press 6 at 50 kg warmup, 3×4 at 85 kg warmup
warmup 50x6, bench 70x4, then 85x4 => ask: barbell bench press 6 at 50 kg warmup, 4 at 70 kg warmup, 4 at 85 kg | barbell bench press 6 at 50 kg warmup, 4 at 70 kg, 4 at 85 kg
warmup 50x6 then bench 85x4 => barbell bench press 6 at 50 kg warmup, 4 at 85 kg
bench 3x5 85 (warm-up 60x5) => barbell bench press 3×5 at 85 kg, 5 at 60 kg warmup
bench 3x5 85 (warm-ups: 40x5, 60x5), last set rpe 9 => barbell bench press 2×5 at 85 kg, 5 at 85 kg RPE 9, 5 at 40 kg warmup, 5 at 60 kg warmup
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SEVERAL))
def test_several_warm_ups_mark_the_whole_run(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(ONE_OR_ALL))
def test_a_word_between_sets_marks_what_can_be_a_warm_up_or_is_asked(text, context, meant) -> None:
    assert said(text, context) == meant


COUNTED = """
bench 2 warm ups: 40x8, 60x5, 85 3x4 => barbell bench press 8 at 40 kg warmup, 5 at 60 kg warmup, 3×4 at 85 kg
bench 2 warm-up sets 40x8 60x5 then 85x4 => barbell bench press 8 at 40 kg warmup, 5 at 60 kg warmup, 4 at 85 kg
bench 2 warm-up sets at 40, then 3x4 85 => ask:
bench 40x8w 60x5w 85x4 => barbell bench press 8 at 40 kg warmup, 5 at 60 kg warmup, 4 at 85 kg
bench 3x12w 45 => barbell bench press 3×12 at 45 kg
bench 85x4 (after warm up 60x5) => barbell bench press 4 at 85 kg, 5 at 60 kg warmup
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(COUNTED))
def test_warm_ups_that_are_counted_or_lettered(text, context, meant) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
squats done. 60x5, 80x4 and 95x2 were warm ups, then my 3x4 at 110, moved well => barbell back squat 5 at 60 kg warmup, 4 at 80 kg warmup, 2 at 95 kg warmup, 3×4 at 110 kg
squat: bar for 9, 60 for 5, 80 for 4, all of that warm up. then 110 for 2 sets of 4 => barbell back squat 9 at 20 kg warmup, 5 at 60 kg warmup, 4 at 80 kg warmup, 2×4 at 110 kg
squat 60x5, 80x4, all warm up, then 110x4 => barbell back squat 5 at 60 kg warmup, 4 at 80 kg warmup, 4 at 110 kg
squat 60x5, 80x4, that was my warm up, then 110x4 => barbell back squat 5 at 60 kg warmup, 4 at 80 kg warmup, 4 at 110 kg
squat 60x5. 80x4. 95x2. all warm ups. then 110x4 => barbell back squat 5 at 60 kg warmup, 4 at 80 kg warmup, 2 at 95 kg warmup, 4 at 110 kg
squat 60 for 5, 80 for 4, 95 for 2 to warm up, then 110 for 4 => barbell back squat 5 at 60 kg warmup, 4 at 80 kg warmup, 2 at 95 kg warmup, 4 at 110 kg
squat 110x4, 115x4, 60x5 and 80x4 were warm ups => barbell back squat 4 at 110 kg, 4 at 115 kg, 5 at 60 kg warmup, 4 at 80 kg warmup
squat 110x4, all warm ups: 60x5 80x4 => barbell back squat 4 at 110 kg, 5 at 60 kg warmup, 4 at 80 kg warmup
squat 60x5, 80x4, 95x4, first two warm ups => barbell back squat 5 at 60 kg warmup, 4 at 80 kg warmup, 4 at 95 kg
squat 60x5, 95x4x3, first one was a warm up => barbell back squat 5 at 60 kg warmup, 3×4 at 95 kg
squat 60x5, 80x4 and 95x2 were warm ups, 110x4 => barbell back squat 5 at 60 kg warmup, 4 at 80 kg warmup, 2 at 95 kg warmup, 4 at 110 kg
Kniebeuge 60x5, 80x4, 95x2, alles aufwärmen, dann 110x4 => barbell back squat 5 at 60 kg warmup, 4 at 80 kg warmup, 2 at 95 kg warmup, 4 at 110 kg
"""),
)
def test_words_that_point_back_mark_all_the_sets_that_rise_to_them(text, context, meant) -> None:
    assert said(text) == meant


TOLD_BESIDE = """
bench 3x8 60 bar only for warmup => barbell bench press 3×8 at 60 kg
bench 60kg 3x8 just the bar as warm up => barbell bench press 3×8 at 60 kg
bench 3x8 60 w/ empty bar warm up => barbell bench press 3×8 at 60 kg
bench bar only for warmup 3x8 60 => barbell bench press 3×8 at 60 kg
rdl 3x10 80 band warm up => romanian deadlift 3×10 at 80 kg
bench 3x8 60 no warmup => barbell bench press 3×8 at 60 kg
bench 3x8 60 skipped the warm up => barbell bench press 3×8 at 60 kg
bankdrücken 3x8 60 ohne aufwärmen => barbell bench press 3×8 at 60 kg
press banca 3x8 60 sin calentamiento => barbell bench press 3×8 at 60 kg
bench 3x8 60 as warm up => barbell bench press 3×8 at 60 kg warmup
bench 3x8 60 bar 2x10 warm up => barbell bench press 3×8 at 60 kg, 2×10 at 20 kg warmup
squat 2x10 bar only warmup, 3x5 100 => barbell back squat 2×10 at 20 kg warmup, 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD_BESIDE))
def test_a_warm_up_that_was_done_with_something_else_or_not_at_all_marks_no_set(text, context, meant) -> None:
    assert said(text, context).strip() == meant


HEAVIER = """
leg press 3x5 60, 80x3 warm up => ask: leg press 3×5 at 60 kg warmup, 3 at 80 kg warmup | leg press 3×5 at 60 kg, 3 at 80 kg warmup
leg press 3x5 60; 1x3 80 warm up => ask: leg press 3×5 at 60 kg warmup, 3 at 80 kg warmup | leg press 3×5 at 60 kg, 3 at 80 kg warmup
leg press 60 3x5, 80x3 warm up => ask: leg press 3×5 at 60 kg warmup, 3 at 80 kg warmup | leg press 3×5 at 60 kg, 3 at 80 kg warmup
squat 3x5 100, 60x5 warm up => barbell back squat 3×5 at 100 kg, 5 at 60 kg warmup
squat 60x5, 80x3 warm up => barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(HEAVIER))
def test_a_warm_up_heavier_than_the_group_before_it_is_asked_about(text, context, meant) -> None:
    assert said(text, context).strip() == meant


def test_warm_ups_told_for_warming_up_in_french() -> None:
    assert said("d'abord 60x5, 80x3 pour l'échauffement, puis 100 3x5 squat") == (
        "barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 3×5 at 100 kg"
    )
