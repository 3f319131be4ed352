"""So many of the first or last sets, sides written to their reps, counts announced, words about a set told before."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said, situation, standing_after

TABLE = """
{doing: barbell bench press} first two sets 82x6, third 77x8 => barbell bench press 2×6 at 82 kg, 8 at 77 kg
{doing: barbell bench press} first two sets 7, last one 5 => barbell bench press 2×7, 5
bench 72: first two sets were 7, last one 5 => barbell bench press 2×7 at 72 kg, 5 at 72 kg
bench 72 first 2 sets 9, last 2 sets 7 => barbell bench press 2×9 at 72 kg, 2×7 at 72 kg
kreuzheben 120 erste zwei Sätze 6, letzter 4 => conventional deadlift 2×6 at 120 kg, 4 at 120 kg
{doing: barbell bench press} first set 7, last two 5 => ask: barbell bench press 7, 2, 5
last squat set, 117 for 4 => barbell back squat 4 at 117 kg
last set of squats, 117x4 => barbell back squat 4 at 117 kg
last squat set, 3x8 62 => ask: barbell back squat 3×8 at 62 kg
squats first, 97x5x3 => barbell back squat 3×5 at 97 kg
bench last, 3x8 62 => barbell bench press 3×8 at 62 kg
squat 97x5, last, 92x8 => ask: barbell back squat 5 at 97 kg, 8 at 92 kg
letzter Satz Kniebeuge, 117x4 => barbell back squat 4 at 117 kg
bench first 2 sets 82x6, last two 77x8 => barbell bench press 2×6 at 82 kg, 2×8 at 77 kg
right bench 3x5 80 => barbell bench press 3×5 at 80 kg
right pull ups 10 8 7 => pull-up 10, 8, 7
right lateral raise 3x10 12 => dumbbell lateral raise 3×10 at 12 kg each right
at the gym pull ups 10 8 7 => pull-up 10, 8, 7
pistols L5 R4 => pistol squat 5 left, 4 right
one arm row 32 L10 R9 => dumbbell row 10 at 32 kg each left, 9 at 32 kg each right
{doing: ez-bar curl} 3 sets: 32.5x10, 30x10, 30x9 => ez-bar curl 10 at 32.5 kg, 10 at 30 kg, 9 at 30 kg
ez curl 3 sets: 30x10, 30x10, 30x9 => ez-bar curl 2×10 at 30 kg, 9 at 30 kg
присед 4 по 6 на 92, жим лежа 3 по 8 на 72 => barbell back squat 4×6 at 92 kg; barbell bench press 3×8 at 72 kg
plank 55s 3 times, push ups 22 19 => plank 3×55 s; push-up 22, 19
hang clean doubles at 82 87 92, 87 was ugly => hang clean 2 at 82 kg, 2 at 87 kg, 2 at 92 kg
bench 82x5 87x5, the 87 felt heavy => barbell bench press 5 at 82 kg, 5 at 87 kg
bench 82x5, 87 felt heavy => ask:
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TABLE))
def test_places_sides_and_words_about_sets(text, context, meant) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize("text", ["bench 3x5 9?.5", "bench 82x5, 8?x5", "bench 3x5 9?,5"])
def test_a_digit_in_question_is_no_number(text: str) -> None:
    assert said(text) == "ask: "


NEVER_LOST = """
{doing: barbell bench press} dropped to 57, 3x9 => barbell bench press 3×9 at 57 kg
3 rds of 6 chins, 11 dips => chin-up 3×6; dip 3×11
leg press 3x7, 145 bonnes sensations => leg press 3×7 at 145 kg
what comes after this one? => request: next
saturday: squat 3x5 102, who is in? => ask: barbell back squat 3×5 at 102 kg
squat 3x5 102, who is next? => barbell back squat 3×5 at 102 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(NEVER_LOST))
def test_what_stands_beside_talk_or_the_plan_is_kept_or_asked(text, context, meant) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize(
    ("told", "standing"),
    [
        ("arnold press 18kg x 10 | nah, 9", "arnold press 9 at 18 kg each"),
        ("leg curl 3x12 36 | lol hang on | lying", "lying leg curl 3×12 at 36 kg"),
        ("bench 3x5 85 | undo the last set", "barbell bench press 2×5 at 85 kg"),
    ],
)
def test_talk_names_no_exercise_and_a_no_corrects(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize("text", ["next time ,7.5", "tomorrow,7", ", ,7.5 next time", "next time 7,5", "planned: ,5"])
def test_a_plan_with_commas_and_nothing_else_is_read_without_an_error(text: str) -> None:
    assert said(text, situation(doing="barbell bench press"))


@pytest.mark.parametrize("text", ["hip thrust rpe 8 missed +5 @8 left last set", "squat missed +5 right, missed left"])
def test_a_side_behind_a_miss_without_a_number_is_read_without_an_error(text: str) -> None:
    assert said(text)


@pytest.mark.parametrize(
    ("told", "read"),
    [
        (
            "row dumbbell 2x8 30 left, set 1 rir 2",
            "ask: dumbbell row 8 at 30 kg each 2 in reserve left, 8 at 30 kg each left",
        ),
        (
            "dumbbell row 2x8 30 left, set 1 rpe 9",
            "ask: dumbbell row 8 at 30 kg each RPE 9 left, 8 at 30 kg each left",
        ),
        (
            "dumbbell row 30kg left, set 1 8 reps, set 2 9 reps",
            "dumbbell row 8 at 30 kg each left, 9 at 30 kg each left",
        ),
    ],
)
def test_the_side_stays_where_a_set_is_named_behind_it(told: str, read: str) -> None:
    assert said(told) == read
