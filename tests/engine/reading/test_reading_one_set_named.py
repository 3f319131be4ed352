"""One set told by the name of its reps alone, at the load of the lift in hand."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, log_after, said, situation


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
squat 140x3 | triple => barbell back squat 2×3 at 140 kg
squat 140x5 | a triple => barbell back squat 5 at 140 kg, 3 at 140 kg
squat 140x5 | then a triple => barbell back squat 5 at 140 kg, 3 at 140 kg
squat 140x5 | triple rpe 8 => barbell back squat 5 at 140 kg, 3 at 140 kg RPE 8
bench 80x5 | easy double => barbell bench press 5 at 80 kg, 2 at 80 kg
bench 80x5 | single @9 => barbell bench press 5 at 80 kg, 1 at 80 kg RPE 9
pull ups 8 | triple => pull-up 8, 3
front squat 90x3 | trea => barbell front squat 2×3 at 90 kg
"""),
)
def test_a_set_told_by_name_is_done_at_the_load_in_hand(told: str, standing: str) -> None:
    assert log_after(*told.split(" | ")) == standing


@pytest.mark.parametrize(
    "told",
    ["triples", "got a triple", "missed the triple", "triple tomorrow", "double check that", "going for a triple"],
)
def test_what_may_be_more_or_less_than_one_set_adds_none(told: str) -> None:
    assert log_after("squat 140x5", told) == "barbell back squat 5 at 140 kg"


def test_a_lift_that_the_plan_has_next_is_given_none() -> None:
    plan = [("barbell row", 3, 10, "50")]

    assert said("triple", situation(doing="barbell row", plan=plan)) == "no sets"
