"""Sets told one after another by the names of their reps: "a triple and a double at 130" loses none of them."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import dialogues, readings, said, standing_after


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
deadlift a triple and a double at 130 => conventional deadlift 3 at 130 kg, 2 at 130 kg
deadlift a single and a double @ 150kg => conventional deadlift 1 at 150 kg, 2 at 150 kg
bench one triple, one double at 55 => barbell bench press 3 at 55 kg, 2 at 55 kg
two doubles and a single at 140 on deadlift => conventional deadlift 2×2 at 140 kg, 1 at 140 kg
deadlift a double, then a single at 100 => conventional deadlift 2 at 100 kg, 1 at 100 kg
squat 2 doubles, 3 singles with 120 => barbell back squat 2×2 at 120 kg, 3×1 at 120 kg
squat a double, a single and a triple 120 kg => barbell back squat 2 at 120 kg, 1 at 120 kg, 3 at 120 kg
deadlift 2 sets of 3 and a double at 130 => conventional deadlift 2×3 at 130 kg, 2 at 130 kg
weighted pull ups a triple and a double at +20 => pull-up 3 at +20 kg, 2 at +20 kg
deadlift 3x5 100, then a triple and a double at 120 => \
conventional deadlift 3×5 at 100 kg, 3 at 120 kg, 2 at 120 kg
deadlift 120x5, a double and a single at 140 => conventional deadlift 5 at 120 kg, 2 at 140 kg, 1 at 140 kg
deadlift a triple at 125, then a double => conventional deadlift 3 at 125 kg, 2 at 125 kg
squat triple double single at 130 140 150 => \
barbell back squat 3 at 130 kg, 2 at 140 kg, 1 at 150 kg
squat a triple and a double at 130 and 140 => barbell back squat 3 at 130 kg, 2 at 140 kg
squat a triple and a double both at 140 => barbell back squat 3 at 140 kg, 2 at 140 kg
squat a triple and a double at 140, bench a single and a double at 100 => \
barbell back squat 3 at 140 kg, 2 at 140 kg; barbell bench press 1 at 100 kg, 2 at 100 kg
deadlift a triple at 130 and a double at 140 => conventional deadlift 3 at 130 kg, 2 at 140 kg
{doing: conventional deadlift; last: conventional deadlift 120} a triple and a double at 130 => \
conventional deadlift 3 at 130 kg, 2 at 130 kg
{doing: conventional deadlift; last: conventional deadlift 120} a triple and a double => \
conventional deadlift 3 at 120 kg, 2 at 120 kg
squat 3x5 100 triple 120 => barbell back squat 3×5 at 100 kg, 3 at 120 kg
squat 5x3 100 single 120 double 110 => barbell back squat 5×3 at 100 kg, 1 at 120 kg, 2 at 110 kg
bench 80x5, double 100 => barbell bench press 5 at 80 kg, 2 at 100 kg
squat 100x5 top single 140 => barbell back squat 5 at 100 kg, 1 at 140 kg
bench 100x3 triple => barbell bench press 3 at 100 kg
bench 100x3 doubles => barbell bench press 3×2 at 100 kg
kettlebell swing 24x10, 32x10 double => ask: kettlebell swing 10 at 24 kg, 10 at 32 kg
kreuzheben ein Dreier und ein Zweier mit 130 => conventional deadlift 3 at 130 kg, 2 at 130 kg
peso muerto un triple y un doble con 130 => conventional deadlift 3 at 130 kg, 2 at 130 kg
soulevé de terre un triple et un double à 130 => conventional deadlift 3 at 130 kg, 2 at 130 kg
stacco una tripla e una doppia con 130 => conventional deadlift 3 at 130 kg, 2 at 130 kg
deadlift een triple en een double met 130 => conventional deadlift 3 at 130 kg, 2 at 130 kg
martwy ciąg dwójka i trójka 130 => conventional deadlift 2 at 130 kg, 3 at 130 kg
становая тройка и двойка на 130 => conventional deadlift 3 at 130 kg, 2 at 130 kg
marklyft en trea och en tvåa på 130 => conventional deadlift 3 at 130 kg, 2 at 130 kg
levantamento terra uma dupla e uma tripla com 130 => conventional deadlift 2 at 130 kg, 3 at 130 kg
"""),
)
def test_one_load_is_that_of_all(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
deadlift 120x5, a double, a single at 140 => \
ask: conventional deadlift 5 at 120 kg, 2 at 140 kg, 1 at 140 kg
deadlift fives and triples at 100 => ask: conventional deadlift 5 at 100 kg, 3 at 100 kg
{doing: conventional deadlift; last: conventional deadlift 120} a double, then a single at 100 => \
ask: conventional deadlift 2 at 100 kg, 1 at 100 kg
"""),
)
def test_what_may_have_another_load_is_asked(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
deadlift 120x5 | a triple and a double => conventional deadlift 5 at 120 kg, 3 at 120 kg, 2 at 120 kg
deadlift 120x5 | two doubles, then a single => conventional deadlift 5 at 120 kg, 2×2 at 120 kg, 1 at 120 kg
deadlift 120x5 | a triple at 125, then a double => conventional deadlift 5 at 120 kg, 3 at 125 kg, 2 at 125 kg
"""),
)
def test_sets_in_hand(told: str, standing: str) -> None:
    assert standing_after(told) == standing
