"""Words that say that what stands was done, the other sets beside one, lists told again, and numbers left open."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, said, situation, standing_after

CONFIRMED = """
row 62.5 8 8 8 | barbell | all 3 done => barbell row 3×8 at 62.5 kg
deadlift 3x4 130 | did all 3 => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | got all three => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | managed all 3 sets => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | did the 3 => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | all 3 felt smooth => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | nah its fine, did all 3 of them => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | got all 4 reps on each => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | did all 12 reps => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | alle 3 geschafft => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | сделал все 3 => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | alla 3 klara => conventional deadlift 3×4 at 130 kg
deadlift 130x4 | 4 | got all 4 => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | that was 1 hard set => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | that was 3 hard sets => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | that was 2 hard sets => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | those were 3 good ones => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | das waren 3 harte sätze => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | that was 1 ugly rep => conventional deadlift 3×4 at 130 kg
deadlift 3x4 130 | that was 4 heavy reps => conventional deadlift 3×4 at 130 kg
deadlift 130x4 | that was 3 slow reps => conventional deadlift 3 at 130 kg
deadlift 3x4 130 | all 6 => conventional deadlift 3×6 at 130 kg
"""
OTHERS = """
ohp 3x6 45 | last rpe 9, rest rpe 8 => barbell overhead press 2×6 at 45 kg RPE 8, 6 at 45 kg RPE 9
ohp 3x6 45 | 2nd set rpe 9, rest 8 => barbell overhead press 6 at 45 kg RPE 8, 6 at 45 kg RPE 9, 6 at 45 kg RPE 8
dips 3x6 | first one 3 in the tank, the others 1 => dip 6 3 in reserve, 2×6 1 in reserve
ohp 3x6 45 | first set 47.5, rest 45 => barbell overhead press 6 at 47.5 kg, 2×6 at 45 kg
ohp 3x6 45 | the first was 50, the other two 47.5 => barbell overhead press 6 at 50 kg, 2×6 at 47.5 kg
ohp 3x6 45 | first set was 5, the rest 4 => barbell overhead press 5 at 45 kg, 2×4 at 45 kg
ohp 45x6 | 6 | 6 | last set @9 and the others @8 => barbell overhead press 2×6 at 45 kg RPE 8, 6 at 45 kg RPE 9
ohp 3x6 45 | erster war 50, der rest 45 => barbell overhead press 6 at 50 kg, 2×6 at 45 kg
ohp 3x6 45 | première à 50, les autres à 45 => barbell overhead press 6 at 50 kg, 2×6 at 45 kg
ohp 3x6 45 | last one was 5, rest 90 => barbell overhead press 2×6 at 45 kg, 5 at 45 kg
"""
TOLD_AGAIN = """
bench 4x6 75 | well, 6 6 6 5 => barbell bench press 3×6 at 75 kg, 5 at 75 kg
bench 4x6 75 | 6 6 6 5 in the end => barbell bench press 3×6 at 75 kg, 5 at 75 kg
bench 4x6 75 | bueno, 6 6 6 5 => barbell bench press 3×6 at 75 kg, 5 at 75 kg
bench 4x6 75 | na ja, 6 6 6 5 => barbell bench press 3×6 at 75 kg, 5 at 75 kg
bench 4x6 75 | change the sets to 3 => barbell bench press 3×6 at 75 kg
bench 4x6 75 | hold on the bar is 15 so 70 => barbell bench press 4×6 at 75 kg
bench 4x6 75 | 6 6 6 5 => barbell bench press 7×6 at 75 kg, 5 at 75 kg
bench 4x6 75 | well, 6 => barbell bench press 5×6 at 75 kg
bench 75x6 | 6 | last one 8 => barbell bench press 6 at 75 kg, 8 at 75 kg
bench 75x6 | 6 | last one: 8 => barbell bench press 6 at 75 kg, 8 at 75 kg
bench 75x6 | 6 | last set 5 => barbell bench press 2×6 at 75 kg, 5 at 75 kg
bench 4x6 75 | last set 5 => barbell bench press 3×6 at 75 kg, 5 at 75 kg
bench 4x6 75 | last one, 5 => barbell bench press 3×6 at 75 kg, 5 at 75 kg
bench 75x6 | last set 5 => barbell bench press 6 at 75 kg, 5 at 75 kg
bench 4x6 75 | one more, so 5 sets => barbell bench press 5×6 at 75 kg
bench 4x6 75 | add one more, did 5 sets => barbell bench press 5×6 at 75 kg
bench 4x6 75 | 2.5 more for 4 => barbell bench press 4×6 at 75 kg, 4 at 77.5 kg
bench 4x6 75 | take the last set off again pls => barbell bench press 3×6 at 75 kg
bench 75x6 | nvm that last was 7 => barbell bench press 7 at 75 kg
lat pulldown 3x12 20 | misread the stack, 25 => lat pulldown 3×12 at 25 kg
lat pulldown 3x12 20 | sorry wrong pin, 25 => lat pulldown 3×12 at 25 kg
snatch 70x1 | no lift => snatch 0 at 70 kg missed
deadlift 190x1 | failed it => conventional deadlift 0 at 190 kg missed
"""
GAPS = """
squat 4x4 1?5 | 115 => barbell back squat 4×4 at 115 kg
squat 4x4 1?5 | 125kg sorry => barbell back squat 4×4 at 125 kg
squat 4x4 ?5 | 95 => barbell back squat 4×4 at 95 kg
squat 4x4 ?5 | ninety five => barbell back squat 4×4 at 95 kg
squat 4x4 ?5 | 4x4 95 => barbell back squat 4×4 at 95 kg
squat 4x? 95 | 3 reps => barbell back squat 4×3 at 95 kg
squat ?x4 95 | 3 sets => barbell back squat 3×4 at 95 kg
squat 95x? | 6 => barbell back squat 6 at 95 kg
squat 4x4 ?5 | no idea =>
squat 4x4 ?5 | deadlift 3x3 140 => conventional deadlift 3×3 at 140 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(CONFIRMED))
def test_what_was_all_done_is_no_new_set(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(OTHERS))
def test_the_rest_are_the_other_sets(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(TOLD_AGAIN))
def test_what_stands_after_a_list_or_a_place_told_again(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(GAPS))
def test_an_answer_fills_the_number_that_could_not_be_read(told: str, standing: str) -> None:
    assert standing_after(told) == standing


AMID_TALK = """
row 4x10 50 | cable | phew, last one only 8 => seated cable row 3×10 at 50 kg, 8 at 50 kg
ohp 4x7 40 | lol the 4th only 5 => barbell overhead press 3×7 at 40 kg, 5 at 40 kg
ohp 4x7 40 | back from the loo. 4th only 5 => barbell overhead press 3×7 at 40 kg, 5 at 40 kg
ohp 4x7 40 | man im dead. last one only 5 => barbell overhead press 3×7 at 40 kg, 5 at 40 kg
ohp 4x7 40 | great pump!! make the last 5 => barbell overhead press 3×7 at 40 kg, 5 at 40 kg
ohp 4x7 40 | the phone froze.. 42.5 not 40 => barbell overhead press 4×7 at 42.5 kg
ohp 4x7 40 | 42.5 not 40, the phone froze => barbell overhead press 4×7 at 42.5 kg
ohp 4x7 40 | last was 5 cos i was knackered => barbell overhead press 3×7 at 40 kg, 5 at 40 kg
ohp 4x7 40 | only 5 on the last cause the bar slipped => barbell overhead press 3×7 at 40 kg, 5 at 40 kg
ohp 4x7 40 | phew that was hard, 5 => barbell overhead press 4×7 at 40 kg, 5 at 40 kg
ohp 4x7 40 | gym is packed. 6 => barbell overhead press 4×7 at 40 kg, 6 at 40 kg
ohp 4x7 40 | not bad, 42.5 for 5 => barbell overhead press 4×7 at 40 kg, 5 at 42.5 kg
ohp 4x7 40 | gym is packed. squat 3x4 110 => barbell overhead press 4×7 at 40 kg; barbell back squat 3×4 at 110 kg
chins 9 8 6 | i lied, 9 8 5 => chin-up 9, 8, 5
front squat 5x3 90 | so yeah 5 of em => barbell front squat 5×3 at 90 kg
front squat 5x3 90 | ended up with 4 sets => barbell front squat 4×3 at 90 kg
rdl 3x9 85 | dips 9 8 | rdl first set 90 => romanian deadlift 9 at 90 kg, 2×9 at 85 kg; dip 9, 8
"""
TWICE = """
bench 77.5x6 | bench 77.5x6 | oops sent twice => barbell bench press 6 at 77.5 kg
bench 3x6 75 | bench 3x6 75 | logged that twice by accident => barbell bench press 3×6 at 75 kg
bench 3x6 75 | bench 3x6 75 | double post, delete one => barbell bench press 3×6 at 75 kg
bench 3x6 75 | bench 3x6 75 | thats a duplicate => barbell bench press 3×6 at 75 kg
bench 75x6 | bench 77.5x6 | sent twice => barbell bench press 6 at 75 kg, 6 at 77.5 kg
bench 75x6 | bench 75x6 | did it twice => barbell bench press 2×6 at 75 kg
"""
APART = """
rdl 2x9 85 | dips 9 8 | rdls were yesterday, dips today => dip 9, 8; romanian deadlift 2×9 at 85 kg on 2025-03-13
rdl 2x9 85 | dips 9 8 | dips today but the rdls were on tue => dip 9, 8; romanian deadlift 2×9 at 85 kg on 2025-03-11
rdl 2x9 85 | dips 9 8 | dips and rdls were yesterday => romanian deadlift 2×9 at 85 kg; dip 9, 8 on 2025-03-13
rdl 2x9 85 | dips 9 8 | dips today, rdls tomorrow => romanian deadlift 2×9 at 85 kg; dip 9, 8
rdl 2x9 85 | dips 9 8 | squats were yesterday, dips today => romanian deadlift 2×9 at 85 kg; dip 9, 8
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(AMID_TALK))
def test_talk_around_a_correction_makes_no_new_set(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(TWICE))
def test_what_was_sent_twice_stands_once(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(APART))
def test_each_lift_told_with_its_day(told: str, standing: str) -> None:
    assert standing_after(told) == standing


BY_PLAN = """
bench 3x7 65 | first two as planned, last one 5 => barbell bench press 2×7 at 65 kg, 5 at 65 kg
bankdrücken 3x7 65 | der zweite nur 5 => barbell bench press 7 at 65 kg, 5 at 65 kg, 7 at 65 kg
press de banca 3x7 65 | la última fueron 5 => barbell bench press 2×7 at 65 kg, 5 at 65 kg
bench 3x7 65 | got an extra rep on the last => barbell bench press 2×7 at 65 kg, 8 at 65 kg
bench 3x7 65 | did an extra set => barbell bench press 4×7 at 65 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(BY_PLAN))
def test_what_was_as_planned_stays(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("squat as planned but last set 4", "barbell back squat 2×6 at 90 kg, 4 at 90 kg"),
        ("squat first two sets as planned, third 4", "barbell back squat 2×6 at 90 kg, 4 at 90 kg"),
        ("squat: first as planned, second 5, third 4", "barbell back squat 6 at 90 kg, 5 at 90 kg, 4 at 90 kg"),
        ("squat as planned, rpe 8", "barbell back squat 3×6 at 90 kg RPE 8"),
        ("squat as planned at 92.5", "barbell back squat 3×6 at 92.5 kg"),
        ("squat as planned, last one 92.5", "barbell back squat 2×6 at 90 kg, 6 at 92.5 kg"),
        ("squat first at 85, rest as planned", "barbell back squat 6 at 85 kg, 2×6 at 90 kg"),
        ("squat as planned for 3", "ask: "),
        ("squat as planned, 20 min", "ask: "),
    ],
)
def test_sets_by_the_plan_told_apart(text: str, meant: str) -> None:
    assert said(text, situation(plan=[("barbell back squat", 3, 6, "90")])) == meant


@pytest.mark.parametrize("text", ["why do i stall on bench?", "why am i stuck at 60 on ohp", "why is my squat so weak"])
def test_a_complaint_asks_for_no_reason_of_a_load(text: str) -> None:
    assert said(text) == "no sets"


PLURAL_NUMBERS = """
squat 4x6 92.5 | it was 5s => barbell back squat 4×5 at 92.5 kg
squat 4x6 92.5 | that was fives => barbell back squat 4×5 at 92.5 kg
squat 4x2 110 | it was triples => barbell back squat 4×3 at 110 kg
squat 4x2 110 | triples not doubles, lost count => barbell back squat 4×3 at 110 kg
squat 4x6 92.5 | fives not sixes, can't think today => barbell back squat 4×5 at 92.5 kg
squat 4x6 92.5 | last one was a triple => barbell back squat 3×6 at 92.5 kg, 3 at 92.5 kg
squat 4x6 92.5 | last two were 5s => barbell back squat 2×6 at 92.5 kg, 2×5 at 92.5 kg
squat 110x5 | 110x5 | it was a triple => barbell back squat 5 at 110 kg, 3 at 110 kg
"""


@pytest.mark.parametrize(("told", "meant"), dialogues(PLURAL_NUMBERS))
def test_a_number_in_the_plural_is_of_all_sets(told: str, meant: str) -> None:
    assert standing_after(told) == meant


OTHERS_ABOUT = """
dips 4x8 | only 3 sets, someone took the station => dip 3×8
dips 4x8 | somebody needed the bar, just 3 sets => dip 3×8
dips 4x8 | only 3 sets, my brother did 4 => dip 4×8
"""


@pytest.mark.parametrize(("told", "meant"), dialogues(OTHERS_ABOUT))
def test_others_are_talk_where_they_count_nothing(told: str, meant: str) -> None:
    assert standing_after(told) == meant
