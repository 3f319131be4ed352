"""Marks of sets that stand: put on several, taken off again, and sets pointed at by the marks that they carry."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

TAKEN_OFF = """
pec deck wu 20x9 30x8, then 45x6 | 30x8 was no warmup => pec deck 9 at 20 kg warmup, 8 at 30 kg, 6 at 45 kg
pec deck wu 20x9 30x8, then 45x6 | the 30 wasn't a warm up => pec deck 9 at 20 kg warmup, 8 at 30 kg, 6 at 45 kg
pec deck wu 20x9 30x8, then 45x6 | 30 wasnt warmup => pec deck 9 at 20 kg warmup, 8 at 30 kg, 6 at 45 kg
pec deck wu 20x9 30x8, then 45x6 | the second one wasn't a warm up => pec deck 9 at 20 kg warmup, 8 at 30 kg, 6 at 45 kg
pec deck wu 20x9 30x8, then 45x6 | set 2 was a working set => pec deck 9 at 20 kg warmup, 8 at 30 kg, 6 at 45 kg
pec deck wu 20x9 30x8, then 45x6 | 30x8 was a work set, no warm up => pec deck 9 at 20 kg warmup, 8 at 30 kg, 6 at 45 kg
pec deck wu 20x9 30x8, then 45x6 | the 30s were no warm ups => pec deck 9 at 20 kg warmup, 8 at 30 kg, 6 at 45 kg
pec deck wu 20x9 30x8, then 45x6 | none of those were warm ups => pec deck 9 at 20 kg, 8 at 30 kg, 6 at 45 kg
ohp warmup 40x5 | that wasn't a warm up => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | no warm up => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | not a warmup => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | das war kein aufwärmsatz => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | no era calentamiento => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | ce n'était pas un échauffement => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | non era riscaldamento => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | não era aquecimento => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | was geen warming up => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | to nie była rozgrzewka => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | это была не разминка => barbell overhead press 5 at 40 kg
ohp warmup 40x5 | det var ingen uppvärmning => barbell overhead press 5 at 40 kg
chin ups 9 7F | last wasnt to failure => chin-up 9, 7
chin ups 9 7F | the last one was not to failure => chin-up 9, 7
chin ups 9 7F | wasn't failure => chin-up 9, 7
chin ups 9 7F | no failure on the last => chin-up 9, 7
chin ups 9 7F | that wasn't to failure => chin-up 9, 7
chin ups 9 7F | not to failure => chin-up 9, 7
chin ups 9 7F | didn't fail the last one => chin-up 9, 7
chin ups 9F 7F | neither was to failure => chin-up 9, 7
chin ups 9F 7F | first wasnt to failure => chin-up 9, 7 to failure
chin ups 9 7F | last had 1 left, not failure => chin-up 9, 7 1 in reserve
chin ups 9 7F | der letzte war nicht bis zum versagen => chin-up 9, 7
chin ups 9 7F | la última no fue al fallo => chin-up 9, 7
chin ups 9 7F | le dernier pas à l'échec => chin-up 9, 7
deadlift 150x4, 160x2 miss | i didnt miss the last => conventional deadlift 4 at 150 kg, 2 at 160 kg
deadlift 150x4, 160x2 miss | the last wasnt a miss => conventional deadlift 4 at 150 kg, 2 at 160 kg
deadlift 150x4, 160x2 miss | that wasnt missed => conventional deadlift 4 at 150 kg, 2 at 160 kg
deadlift 150x4, 160x2 miss | the 160 wasn't missed => conventional deadlift 4 at 150 kg, 2 at 160 kg
deadlift 150x4, 160x2 miss | no miss => conventional deadlift 4 at 150 kg, 2 at 160 kg
pec deck 55x12 > 45x9 | that wasnt a drop => pec deck 12 at 55 kg, 9 at 45 kg
pec deck 55x12 > 45x9 | the 45 wasn't a drop set => pec deck 12 at 55 kg, 9 at 45 kg
pec deck 55x12 > 45x9 | no drop, separate sets => pec deck 12 at 55 kg, 9 at 45 kg
pec deck 55x12 > 45x9 | last one wasnt a drop => pec deck 12 at 55 kg, 9 at 45 kg
front squat 70x3 warm up, 80x3 | that was a work set => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 70x3 warm up | that was a work set => barbell front squat 3 at 70 kg
front squat 70x3 warm up | that was a working set actually => barbell front squat 3 at 70 kg
front squat 70x3 warm up | first was a work set => barbell front squat 3 at 70 kg
front squat 70x3 warm up | war ein arbeitssatz => barbell front squat 3 at 70 kg
front squat 70x3 warm up | era una serie efectiva => barbell front squat 3 at 70 kg
front squat 70x3 warm up | was een werkset => barbell front squat 3 at 70 kg
front squat 70x3 warm up | to była seria robocza => barbell front squat 3 at 70 kg
front squat 70x3 warm up | это был рабочий подход => barbell front squat 3 at 70 kg
front squat 70x3 @8, 80x3 @9 | remove the rpe from the first => barbell front squat 3 at 70 kg, 3 at 80 kg RPE 9
front squat 70x3 @8, 80x3 @9 | delete the rpes => barbell front squat 3 at 70 kg, 3 at 80 kg
squat 60x5 warm up, 80x3 F | delete the failure => barbell back squat 5 at 60 kg warmup, 3 at 80 kg
squat 60x5 warm up, 80x3 @9 | delete rpe => barbell back squat 5 at 60 kg warmup, 3 at 80 kg
squat 60x5 F 70x3 F | set 1 not failure, 2 left => barbell back squat 5 at 60 kg 2 in reserve, 3 at 70 kg to failure
squat 60x5 F | not failure, rpe 9 => barbell back squat 5 at 60 kg RPE 9
"""

OF_ALL = """
push ups 22 18 14 | all three to failure => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | all to failure => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | all three were to failure => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | all 3 to failure => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | all of them to failure => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | every one to failure => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | all three sets to failure btw => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | last two to failure => push-up 22, 18 to failure, 14 to failure
push ups 22 18 | both to failure => push-up 22 to failure, 18 to failure
push ups 22 18 | both of them to failure btw => push-up 22 to failure, 18 to failure
push ups 22 18 14 | alle drei bis zum versagen => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | las tres al fallo => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | les trois à l'échec => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | tutte e tre a cedimento => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | as três até a falha => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | alle drie tot falen => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | wszystkie trzy do upadku => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | все три в отказ => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | alla tre till failure => push-up 22 to failure, 18 to failure, 14 to failure
push ups 22 18 14 | all four to failure => push-up 22, 18, 14
"""

BY_MARK = """
pec deck 55x12, 45x9 | last was a drop => pec deck 12 at 55 kg, 9 at 45 kg drop
pec deck 55x12, 45x9 | the 45 was a drop set => pec deck 12 at 55 kg, 9 at 45 kg drop
pec deck 55x12, 45x9 | the 45x9 was a drop => pec deck 12 at 55 kg, 9 at 45 kg drop
pec deck 55x12 > 45x9 > 30x8 | first drop was 10 => pec deck 12 at 55 kg, 10 at 45 kg drop, 8 at 30 kg drop
pec deck 55x12 > 45x9 > 30x8 | second drop was 7 => pec deck 12 at 55 kg, 9 at 45 kg drop, 7 at 30 kg drop
pec deck 55x12 > 45x9 > 30x8 | the drop was 7 => pec deck 12 at 55 kg, 9 at 45 kg drop, 8 at 30 kg drop
pec deck 55x12 > 45x9 > 30x8 | the drops were 8 and 7 => pec deck 12 at 55 kg, 8 at 45 kg drop, 7 at 30 kg drop
pec deck 55x12 > 45x9 > 30x8 | both drops were 8 => pec deck 12 at 55 kg, 8 at 45 kg drop, 8 at 30 kg drop
pec deck 55x12 > 45x9 > 30x8 | last drop set was 20kg => pec deck 12 at 55 kg, 9 at 45 kg drop, 8 at 20 kg drop
pec deck 55x12 > 45x9 | first drop to failure => pec deck 12 at 55 kg, 9 at 45 kg drop to failure
pec deck 55x12 > 45x9 > 30x8 | delete the last drop => pec deck 12 at 55 kg, 9 at 45 kg drop
"""

REMARKS = """
front squat 70x3 | no era calentamiento => barbell front squat 3 at 70 kg
front squat 70x3 | não era aquecimento => barbell front squat 3 at 70 kg
front squat 70x3 | non era riscaldamento => barbell front squat 3 at 70 kg
front squat 70x3 | no era al fallo => barbell front squat 3 at 70 kg
front squat 70x3 | no, era calentamiento => barbell front squat 3 at 70 kg warmup
front squat 70x3 | no, al fallo => barbell front squat 3 at 70 kg to failure
front squat 70x3 | no, warm up => barbell front squat 3 at 70 kg warmup
front squat 70x3 | no that was a warm up => barbell front squat 3 at 70 kg warmup
front squat 70x3 | no warm up => barbell front squat 3 at 70 kg
front squat 70x3 | no warm up today => barbell front squat 3 at 70 kg
front squat 70x3 F | no failure today => barbell front squat 3 at 70 kg to failure
front squat 70x3 warm up, 80x3 | no warm up for bench => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 70x3, 80x3 F | not all to failure => barbell front squat 3 at 70 kg, 3 at 80 kg to failure
front squat 70x3 F, 80x3 F | not all to failure => barbell front squat 3 at 70 kg to failure, 3 at 80 kg to failure
front squat 70x3, 80x3 F | close to failure => barbell front squat 3 at 70 kg, 3 at 80 kg to failure
front squat 70x3 warm up, 80x3 | warm up wasn't hard => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 70x3 warm up, 80x3 | didn't warm up properly => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 70x3 warm up, 80x3 | no proper warm up => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 70x3 warm up, 80x3 | not much of a warm up => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 70x3 warm up, 80x3 | warm up felt bad, not to failure => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 70x3 warm up, 80x3 | was i supposed to warm up => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 3x4 70 F | last wasnt to failure => barbell front squat 2×4 at 70 kg to failure, 4 at 70 kg
front squat 3x4 70 F | those werent to failure => barbell front squat 3×4 at 70 kg
front squat 70x3 warm up, 80x3 | last wasn't hard => barbell front squat 3 at 70 kg warmup, 3 at 80 kg
front squat 70x3 warm up | no work today => barbell front squat 3 at 70 kg warmup
front squat 70x3 warm up | that was hard work => barbell front squat 3 at 70 kg warmup
squat 60x5 warm up, 80x3 F | delete the set to failure => barbell back squat 5 at 60 kg warmup, 3 at 80 kg to failure
squat 60x5 warm up, 80x3 @9 | delete the rpe 9 set => barbell back squat 5 at 60 kg warmup, 3 at 80 kg RPE 9
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(TAKEN_OFF))
def test_a_mark_that_is_denied_goes_from_the_sets_that_carry_it(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(OF_ALL))
def test_a_mark_of_all_of_so_many_is_put_on_each_and_adds_no_set(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(BY_MARK))
def test_a_place_beside_a_mark_counts_among_the_sets_that_carry_it(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(REMARKS))
def test_talk_of_warm_ups_and_failure_marks_nothing(told, standing):
    assert standing_after(told) == standing


SEVERAL_TOLD = """
pec deck 40x9 45x8 | 40 was rpe 8, 45 was rpe 9 => pec deck 9 at 40 kg RPE 8, 8 at 45 kg RPE 9
pec deck 40x9 45x8 | the 40 was 10 and the 45 was 7 => pec deck 10 at 40 kg, 7 at 45 kg
pec deck 40x9 45x8 | the 40 and 45 were to failure => pec deck 9 at 40 kg to failure, 8 at 45 kg to failure
pec deck 40x9 45x8 50x7 | everything before 50 was warm up => pec deck 9 at 40 kg warmup, 8 at 45 kg warmup, 7 at 50 kg
pec deck 40x9 45x8 50x7 | all before the 45 were warm ups => pec deck 9 at 40 kg warmup, 8 at 45 kg, 7 at 50 kg
pec deck 40x9 45x8 50x7 | all before lunch => pec deck 9 at 40 kg, 8 at 45 kg, 7 at 50 kg
pec deck 3x8 45 @8 | rpe should be 9 => pec deck 3×8 at 45 kg RPE 9
pec deck 3x8 45 @8 | rpe shld be 7 => pec deck 3×8 at 45 kg RPE 7
pec deck 3x8 45 2 rir | rir should be 1 => pec deck 3×8 at 45 kg 1 in reserve
pec deck 40x9 45x8 | one of them was 7 => pec deck 9 at 40 kg, 8 at 45 kg
pec deck 40x9 45x8 | one was 7 => pec deck 9 at 40 kg, 8 at 45 kg
pec deck 40x9 45x8 | eine davon war 7 => pec deck 9 at 40 kg, 8 at 45 kg
pec deck 40x9 45x8 | una de ellas fue 7 => pec deck 9 at 40 kg, 8 at 45 kg
pec deck 40x9 45x8 | that one was 7 => pec deck 9 at 40 kg, 7 at 45 kg
pec deck 3x8 45 | those were 12 in total => pec deck 3×8 at 45 kg
pec deck 3x8 45 | squat 3x5 100 | both were 2 sets => pec deck 2×8 at 45 kg; barbell back squat 2×5 at 100 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(SEVERAL_TOLD))
def test_marks_of_several_sets_are_put_on_each_of_them(told, standing):
    assert standing_after(told) == standing
