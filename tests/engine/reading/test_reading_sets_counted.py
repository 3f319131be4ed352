"""How many sets a message means, and of how many reps: counts ahead and behind, names of reps and of sets."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import Conversation, readings, said, situation

EACH = """
db bench 30s 10 each x3 => dumbbell bench press 3×10 at 30 kg each
db bench 30kg 10 each x3 => dumbbell bench press 3×10 at 30 kg each
single leg rdl 24kg 8 each x3 => single-leg romanian deadlift 3×8 at 24 kg each
bss 16s 8 each x4 => bulgarian split squat 4×8 at 16 kg each
bss 8 each x3 with 16s => bulgarian split squat 3×8 at 16 kg each
step ups 10 each x3 20kg => step-up 3×10 at 20 kg each
{doing: dumbbell bench press; last: dumbbell bench press 30} 10 each x3 => dumbbell bench press 3×10 at 30 kg each
push ups 10 each x 3 => push-up 3×10
db bench 10 each x 8 => ask: dumbbell bench press 8×10
db bench 30 each x 8 => dumbbell bench press 8 at 30 kg each
db bench 24 each x 8, 26 each x 6 => dumbbell bench press 8 at 24 kg each, 6 at 26 kg each
"""

NAMED_BY_THEIR_PLACE = """
deadlift heavy triple 130 then 2 back offs of 5 at 110 => conventional deadlift 3 at 130 kg, 2×5 at 110 kg
squat 2 back offs of 5 at 110 => barbell back squat 2×5 at 110 kg
squat 140x3, 2 back off sets of 5 at 110 => barbell back squat 3 at 140 kg, 2×5 at 110 kg
squat 140x3, 3 backoffs at 110x5 => barbell back squat 3 at 140 kg, 3×5 at 110 kg
squat 140x3, 2 back-offs 5 at 110 => barbell back squat 3 at 140 kg, 2×5 at 110 kg
bench 2 top sets of 3 at 100, 3 back offs of 8 at 80 => barbell bench press 2×3 at 100 kg, 3×8 at 80 kg
squat top single 150, 3 back off triples at 130 => barbell back squat 1 at 150 kg, 3×3 at 130 kg
squat 100x5 back offs 80x8 80x8 => barbell back squat 5 at 100 kg, 2×8 at 80 kg
squat 140x3, back offs 2x5 110 => barbell back squat 3 at 140 kg, 2×5 at 110 kg
kreuzheben 180x2, 3 back off sätze mit 5 bei 150 => conventional deadlift 2 at 180 kg, 3×5 at 150 kg
squat triple 130 then 5 5 at 110 => barbell back squat 3 at 130 kg, 2×5 at 110 kg
squat heavy double 140, then 5 at 120, 5 at 120 => barbell back squat 2 at 140 kg, 2×5 at 120 kg
"""

COUNTED_AHEAD = """
squat 140x3, 2 sets 110x5 => barbell back squat 3 at 140 kg, 2×5 at 110 kg
squat 140x3, 2 sets at 110x5 => barbell back squat 3 at 140 kg, 2×5 at 110 kg
squat 140x3 then 3 sets of 110x5 => barbell back squat 3 at 140 kg, 3×5 at 110 kg
squat 140x3, then 2 sets at 110 for 5 => barbell back squat 3 at 140 kg, 2×5 at 110 kg
squat 3 sets 140x3, 2 sets 110x5 => barbell back squat 3×3 at 140 kg, 2×5 at 110 kg
squat 140x3 2 sets, 110x5 3 sets => barbell back squat 2×3 at 140 kg, 3×5 at 110 kg
squat 140x3, 2 sets => barbell back squat 2×3 at 140 kg
squat 2 sets: 110x5, 100x8 => barbell back squat 5 at 110 kg, 8 at 100 kg
squat 140x3, 2 sets: 110x5, 100x8 => ask: barbell back squat 3 at 140 kg, 2×5 at 110 kg, 8 at 100 kg
bench 3 sets at 80 for 8 reps, last one 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 3 sets at 80 for 8, 8, 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
db bench 2 sets of 24kg x 10 => dumbbell bench press 2×10 at 24 kg each
bench 80kg, two sets 8, one set 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
bench 80kg 3 sets 8, 1 set 6 => barbell bench press 3×8 at 80 kg, 6 at 80 kg
leg press 160: 2 sets 12, 1 set 15 => leg press 2×12 at 160 kg, 15 at 160 kg
squat two sets 5 100, one set 3 110 => barbell back squat 2×5 at 100 kg, 3 at 110 kg
squat two sets 100 5, one set 110 3 => barbell back squat 2×5 at 100 kg, 3 at 110 kg
squat 80kg 2 sets 8, 1 set 100kg 5 => barbell back squat 2×8 at 80 kg, 5 at 100 kg
squat 100: 8 2 sets, 6 1 set => barbell back squat 2×8 at 100 kg, 6 at 100 kg
pushups 2 sets 20, 1 set 15 => push-up 2×20, 15
db bench 24s 2 sets 10, 1 set 8 => dumbbell bench press 2×10 at 24 kg each, 8 at 24 kg each
bench 80kg, 3 sets 8, 8, 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
bankdrücken 80kg zwei sätze 8, ein satz 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
développé couché 80kg deux séries 8, une série 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
press banca 80kg dos series 8, una serie 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
panca piana 80kg due serie 8, una serie 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
bankdrukken 80kg twee sets 8, een set 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
wyciskanie 80kg dwie serie 8, jedna seria 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
supino 80kg duas séries 8, uma série 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
жим лежа 80кг два подхода 8, один подход 6 => barbell bench press 2×8 at 80 kg, 6 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(EACH))
def test_reps_of_each_side_stand_in_front_of_the_count_of_sets(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(NAMED_BY_THEIR_PLACE))
def test_a_word_for_their_place_counts_sets_as_the_word_sets_does(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(COUNTED_AHEAD))
def test_a_count_ahead_of_a_set_is_of_that_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


COUNTED_BEHIND_THE_LOAD = """
squat doubles at 120 x3 => barbell back squat 3×2 at 120 kg
squat triples at 100 x 5 => barbell back squat 5×3 at 100 kg
squat triples 100x5 => barbell back squat 5×3 at 100 kg
squat singles at 140 x3 => barbell back squat 3×1 at 140 kg
squat singles 100x3 110x2 120x1 => barbell back squat 3×1 at 100 kg, 2×1 at 110 kg, 1 at 120 kg
squat doubles @ 120kg x3 @8 => barbell back squat 3×2 at 120 kg RPE 8
squat triples 100x3, 110x3, 120x3 => barbell back squat 3 at 100 kg, 3 at 110 kg, 3 at 120 kg
squat fives at 100x5 => ask: barbell back squat 5×5 at 100 kg
squat doubles, 120 x3 => ask: barbell back squat 3×2 at 120 kg
squat singles at 100, 110, 120 x3 => ask: barbell back squat 1 at 100 kg, 1 at 110 kg, 3 at 120 kg
squat single at 140, 120x5 => barbell back squat 1 at 140 kg, 5 at 120 kg
squat 5s at 100 x3 => barbell back squat 3×5 at 100 kg
squat triples at 100 5x => barbell back squat 5×3 at 100 kg
squat triples at 100 (x5) => barbell back squat 5×3 at 100 kg
squat 120 for a triple, x4 => barbell back squat 4×3 at 120 kg
squat x3 doubles at 120 => barbell back squat 3×2 at 120 kg
squat 3x doubles at 120 => barbell back squat 3×2 at 120 kg
{doing: barbell back squat; last: barbell back squat 100} triples x 5 => barbell back squat 5×3 at 100 kg
squat sets of 3 at 100 x5 => barbell back squat 5×3 at 100 kg
bench 75 for sets of 4, did five of those => barbell bench press 5×4 at 75 kg
squat 100, sets of 5, did 4 => barbell back squat 4×5 at 100 kg
squat triples at 120, 5 of them => barbell back squat 5×3 at 120 kg
squat 40 reps in sets of 8 at 60 => barbell back squat 5×8 at 60 kg
"""

AT_SEVERAL_LOADS = """
deadlift two singles at 140 and one at 145 => conventional deadlift 2×1 at 140 kg, 1 at 145 kg
deadlift 3 singles at 140, two at 145, one at 150 => conventional deadlift 3×1 at 140 kg, 2×1 at 145 kg, 1 at 150 kg
deadlift one single at 140 and two at 150 => conventional deadlift 1 at 140 kg, 2×1 at 150 kg
deadlift 3 triples at 140, 2 at 145 => ask: conventional deadlift 3×3 at 140 kg, 2×3 at 145 kg
squat 3x5 100, two at 110 => barbell back squat 3×5 at 100 kg, 2 at 110 kg
squat 60 80 100 singles => barbell back squat 1 at 60 kg, 1 at 80 kg, 1 at 100 kg
squat 60, 80 and 100 for singles => barbell back squat 1 at 60 kg, 1 at 80 kg, 1 at 100 kg
squat 60x5, 80x3, 100 120 singles => barbell back squat 5 at 60 kg, 3 at 80 kg, 1 at 100 kg, 1 at 120 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(COUNTED_BEHIND_THE_LOAD))
def test_a_number_beside_a_name_of_reps_counts_sets(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(AT_SEVERAL_LOADS))
def test_a_name_of_reps_holds_for_each_of_the_loads(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


MISSED_REPS = """
bench 100x5, failed 6 => barbell bench press 5 at 100 kg missed
bench 100x5 failed rep 6 => barbell bench press 5 at 100 kg missed
bench 100x5, failed on 6 => barbell bench press 5 at 100 kg missed
bench 100x5 failed at 6 => barbell bench press 5 at 100 kg missed
bench 100x5, rep 6 failed => barbell bench press 5 at 100 kg missed
bench 100x5 missed rep 5 => barbell bench press 4 at 100 kg missed
bench 100 5 5 4 failed 5 => barbell bench press 2×5 at 100 kg, 4 at 100 kg missed
bench 80x8 failed 9, 80x7 failed 8 => barbell bench press 8 at 80 kg missed, 7 at 80 kg missed
pull ups 10 8 7 failed on 8 => pull-up 10, 8, 7 missed
{doing: barbell bench press; last: barbell bench press 100} 5, failed 6 => barbell bench press 5 at 100 kg missed
bench 100x5, failed 110 => barbell bench press 5 at 100 kg, 0 at 110 kg missed
bench 100x5 failed 5 => ask: barbell bench press 4 at 100 kg missed
bench 100x5, failed 3 => ask: barbell bench press 2 at 100 kg missed
bench 100x5, 6 failed => ask: barbell bench press 5 at 100 kg, 6 at 100 kg missed
bench 100x5, missed 2 reps => ask: barbell bench press 5 at 100 kg missed
bench 100x8 missed 9 and 10 => ask: barbell bench press 8 at 100 kg missed, 10 at 100 kg
bench 100x5, failed 110x3 => ask: barbell bench press 5 at 100 kg missed, 3 at 110 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(MISSED_REPS))
def test_a_number_behind_a_miss_is_the_rep_that_failed(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


TOLD_OF_ALL = """
bench 3 sets at 80, 5 on all three => barbell bench press 3×5 at 80 kg
bench 3 sets at 80, got 8 on all of them => barbell bench press 3×8 at 80 kg
bench 3 sets at 80, all for 8 => barbell bench press 3×8 at 80 kg
bench 3 sets at 80, all 8s => barbell bench press 3×8 at 80 kg
bench 2 sets at 80, 8 on both => barbell bench press 2×8 at 80 kg
pull ups 10 on all three => pull-up 3×10
bench 80x5 80x5 80x5, all three felt good => barbell bench press 3×5 at 80 kg
bench 5 5 5 at 80 all three paused => barbell bench press 3×5 at 80 kg
bench 60x5, 80x3, all three felt heavy => ask: barbell bench press 5 at 60 kg, 3 at 80 kg
bench 3x5 80, rpe 8 on all three => barbell bench press 3×5 at 80 kg RPE 8
push ups 14,12,11 each to failure => push-up 14 to failure, 12 to failure, 11 to failure
bench 40 14,12 all taken to failure => barbell bench press 14 at 40 kg to failure, 12 at 40 kg to failure
"""

TOLD_OF_THE_LAST = """
ohp 45 5,5,4 (5 on last was close) => barbell overhead press 2×5 at 45 kg, 4 at 45 kg
ohp 45 5,5,4, 5 on the last was close => barbell overhead press 2×5 at 45 kg, 4 at 45 kg
ohp 45 5 5 4 (5 was so close) => barbell overhead press 2×5 at 45 kg, 4 at 45 kg
ohp 45 5 5 4 (the 4 was slow) => barbell overhead press 2×5 at 45 kg, 4 at 45 kg
ohp 45 3x5 (4 on the last) => barbell overhead press 2×5 at 45 kg, 4 at 45 kg
ohp 45 5 5 5 (4 on the last) => ask: barbell overhead press 3×5 at 45 kg
ohp 45 5 5 4 (5 missed) => ask: barbell overhead press 2×5 at 45 kg, 4 at 45 kg, 5 at 45 kg missed
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD_OF_ALL))
def test_what_is_told_of_all_sets_is_no_set_more(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD_OF_THE_LAST))
def test_a_remark_on_the_last_set_is_no_set_more(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


def _with_the_next_lift_in_hand() -> Context:
    """The squats of the plan are done, and the press is next."""
    done = Conversation()
    done.say("squat 3x5 85")
    plan = [("barbell back squat", 3, 5, "85"), ("barbell overhead press", 3, 6, "40")]
    loads = {"barbell back squat": "85", "barbell overhead press": "40"}
    return replace(situation("barbell overhead press", "kg", loads, plan), now=done.now, recent=tuple(done.log))


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        pytest.param("another triple", "barbell back squat 3 at 85 kg", id="another, by name of its reps"),
        pytest.param("another set of 5", "barbell back squat 5 at 85 kg", id="another set of so many"),
        pytest.param("two more triples", "barbell back squat 2×3 at 85 kg", id="two more"),
        pytest.param("and another 85x5", "barbell back squat 5 at 85 kg", id="another, at the load of the latest"),
        pytest.param(
            "another 5 at 40",
            "ask: barbell back squat 5 at 40 kg | barbell overhead press 5 at 40 kg",
            id="a load that only suits the next lift",
        ),
        pytest.param("6 6 6", "barbell overhead press 3×6 at 40 kg", id="no word that goes on"),
        pytest.param(
            "a double at 90",
            "ask: barbell back squat 2 at 90 kg | barbell overhead press 2 at 90 kg",
            id="may be of both",
        ),
    ],
)
def test_one_more_is_of_the_latest_lift_although_the_plan_has_another_next(text: str, meant: str) -> None:
    assert said(text, _with_the_next_lift_in_hand()) == meant


def test_reps_told_by_name_are_read_for_each_lift_that_may_be_meant() -> None:
    presses = "barbell bench press 2 at 40 kg | barbell overhead press 2 at 40 kg | leg press 2 at 40 kg"

    assert said("press double at 40") == f"ask: {presses}"


CHANGED_GRIPS = """
close grip 60x8, wide 70x6 => ask: close-grip bench press 8 at 60 kg, 6 at 70 kg
bench close grip 60x8, wide grip 70x6 => close-grip bench press 8 at 60 kg; barbell bench press 6 at 70 kg
close grip 60x8, 70x6 => close-grip bench press 8 at 60 kg, 6 at 70 kg
bench 60x8, 70x6 close grip => barbell bench press 8 at 60 kg; close-grip bench press 6 at 70 kg
wide grip pulldown 60x8, close grip 65x8 => lat pulldown 8 at 60 kg; close-grip lat pulldown 8 at 65 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(CHANGED_GRIPS))
def test_another_grip_that_makes_another_lift_is_asked_about_where_its_lift_is_not_told(
    text: str, context: Context, meant: str
) -> None:
    assert said(text, context) == meant
