"""A mark told of all the sets reaches all of them; lists of marks reach a set each."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

ALL = """
preacher curl 22 11/9/8 all to failure => \
preacher curl 11 at 22 kg to failure, 9 at 22 kg to failure, 8 at 22 kg to failure
preacher curl 22 11 9, alle bis muskelversagen => preacher curl 11 at 22 kg to failure, 9 at 22 kg to failure
bench 62x8 62x7 both to failure => barbell bench press 8 at 62 kg to failure, 7 at 62 kg to failure
bench 62 8 7, each to failure => barbell bench press 8 at 62 kg to failure, 7 at 62 kg to failure
bench 62 9 7 all @9 => barbell bench press 9 at 62 kg RPE 9, 7 at 62 kg RPE 9
bench 62x9, 67x7, all rpe 9 => barbell bench press 9 at 62 kg RPE 9, 7 at 67 kg RPE 9
Kniebeuge 87 9 9 9 alles bis Muskelversagen => barbell back squat 3×9 at 87 kg to failure
przysiad 87 9 8, wszystko do upadku => barbell back squat 9 at 87 kg to failure, 8 at 87 kg to failure
todas 4x9 sentadilla 72, prensa 112 => barbell back squat 4×9 at 72 kg; leg press 4×9 at 112 kg
tutte 4x9 squat 72, leg press 112 => barbell back squat 4×9 at 72 kg; leg press 4×9 at 112 kg
bench 67x9 rpe approximately 7 => barbell bench press 9 at 67 kg RPE 7
deadlift 4@7 4@7.5 4@8.5 all with 145 => \
conventional deadlift 4 at 145 kg RPE 7, 4 at 145 kg RPE 7.5, 4 at 145 kg RPE 8.5
"""
LISTS = """
bench 82.5 4 4 4 @ 7 8 9 => \
barbell bench press 4 at 82.5 kg RPE 7, 4 at 82.5 kg RPE 8, 4 at 82.5 kg RPE 9
bench 3x4 82.5 @7, 8, 9 => barbell bench press 4 at 82.5 kg RPE 7, 4 at 82.5 kg RPE 8, 4 at 82.5 kg RPE 9
bench 82.5 4 4 @ 7 8 9 => \
ask: barbell bench press 2×4 at 82.5 kg RPE 7, 8 at 82.5 kg, 9 at 82.5 kg
bench 82 5 5 5 rpe 9 on the 3rd => ask: barbell bench press 3×5 at 82 kg RPE 9
bench 62 8 @8 8 7 => barbell bench press 8 at 62 kg RPE 8, 8 at 62 kg, 7 at 62 kg
"""
RUNS = """
bench 102x3, 5 5 5 with 82 => barbell bench press 3 at 102 kg, 3×5 at 82 kg
bench 102x3 then 5 5 5 with 82 => barbell bench press 3 at 102 kg, 3×5 at 82 kg
bench 102x3 5 5 5 with 82 => ask: barbell bench press 3 at 102 kg, 3×5 at 82 kg
bench 102x3, 5, 5, 5 with 82 => ask: barbell bench press 3 at 102 kg, 2×5 at 102 kg, 5 at 82 kg
bench 62x8, 8, then 6 with 57 => barbell bench press 2×8 at 62 kg, 6 at 57 kg
"""
REPEATED = """
bench (82x5, 77x5) twice => \
barbell bench press 5 at 82 kg, 5 at 77 kg, 5 at 82 kg, 5 at 77 kg
bench 82x5, 87x5, twice => ask: barbell bench press 5 at 82 kg, 2×5 at 87 kg
plank 55s with a 10kg plate x2 => plank 2×55 s at +10 kg
hip thrust 3 x 10 x 105 + 1 x 20 x 65 => barbell hip thrust 3×10 at 105 kg, 20 at 65 kg
leg press myo 130x15 +5 +4 => leg press 15 at 130 kg, 5 at 130 kg rest-pause, 4 at 130 kg rest-pause
"""
BESIDE = """
push ups with a 10kg plate on my back 13 12 10 => push-up 13 at +10 kg, 12 at +10 kg, 10 at +10 kg
ring rows 3x12 feet up on a 40cm box => inverted row 3×12
dips -15 assist x 10, -10 x 8, unassisted 4 => dip 10 at −15 kg, 8 at −10 kg, 4
bench 5x5 @ 82, locker 14 jammed => barbell bench press 5×5 at 82 kg
bench 3x5 82, jammed my shoulder => barbell bench press 3×5 at 82 kg, pain
incline bench, bench on hole 3, 4x8 57 => incline barbell bench press 4×8 at 57 kg
front squat. squat 3x5 82 => ask: barbell back squat 3×5 at 82 kg | barbell front squat 3×5 at 82 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(ALL))
def test_a_mark_of_all_sets_reaches_each(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(LISTS + RUNS.lstrip() + REPEATED.lstrip()))
def test_lists_and_repeats_reach_the_sets_they_are_told_of(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(BESIDE))
def test_words_beside_the_sets_leave_them_whole(text, context, meant) -> None:
    assert said(text, context) == meant


def test_what_a_set_came_to_is_never_lost_among_talk() -> None:
    assert said("pulldown 57x11, 57x11, pin slipped on the 3rd so only 6").startswith("ask:")


def test_a_count_ahead_of_rounds_is_no_number_of_one() -> None:
    meant = "chin-up 3×6; dip 3×11"
    assert said("3 rounds of 6 chins / 11 dips") == said("3 rounds 6 chins 11 dips") == meant


PLACED = """
bench 3x8 at 60 kg, set 3 rpe 9 => barbell bench press 2×8 at 60 kg, 8 at 60 kg RPE 9
bench 3x8 60, set 2 missed => barbell bench press 8 at 60 kg, 8 at 60 kg missed, 8 at 60 kg
bench 3x8 60 (set 3 to failure) => barbell bench press 2×8 at 60 kg, 8 at 60 kg to failure
bench 2x8 60, set 1 rpe 8, then 2x5 at 70 kg, set 2 missed => \
barbell bench press 8 at 60 kg RPE 8, 8 at 60 kg, 5 at 70 kg, 5 at 70 kg missed
bench 3x8 60, set 4 rpe 9 => ask:
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(PLACED))
def test_a_mark_of_one_set_of_a_group_is_of_that_one(text, context, meant) -> None:
    assert said(text, context).strip() == meant


OF_A_LIST = """
plank 60s, 45s to failure, 60s => plank 60 s, 45 s to failure, 60 s
dead hang 40s, 30s to failure => dead hang 40 s, 30 s to failure
plank 3x45s last 30s to failure => plank 3×45 s
bench 8 at 80, rpe 9, then 7, 6 rpe 8, 5 at 62.5 kg => ask: \
barbell bench press 8 at 80 kg RPE 9, 7 at 62.5 kg RPE 8, 6 at 62.5 kg RPE 8, 5 at 62.5 kg \
| barbell bench press 8 at 80 kg RPE 9, 7 at 62.5 kg, 6 at 62.5 kg RPE 8, 5 at 62.5 kg
bench 5 5 5 rpe 7, 8, 9 at 100kg => barbell bench press 5 at 100 kg RPE 7, 5 at 100 kg RPE 8, 5 at 100 kg RPE 9
deadlift 2x4 at 60 kg, then 9 at 40 kg, rest-pause => conventional deadlift 2×4 at 60 kg, 9 at 40 kg rest-pause
bench 60x8, 3, 2, rest-pause => barbell bench press 8 at 60 kg, 3 at 60 kg rest-pause, 2 at 60 kg rest-pause
pull ups 4 with 15 kg help, then 3 with +5 kg => pull-up 4 at −15 kg, 3 at +5 kg
assisted pull ups +20 8 8 => pull-up 2×8 at −20 kg
dip 2x10, then 10 with +10 kg => ask: dip 2×10, 10 at +10 kg
bulgarian split squat 9, 8 at 20 kg left, then 7 at 20 kg right => \
bulgarian split squat 9 at 20 kg each left, 8 at 20 kg each left, 7 at 20 kg each right
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(OF_A_LIST))
def test_what_is_told_of_some_sets_of_a_list_is_of_those(text, context, meant) -> None:
    assert said(text, context) == meant
