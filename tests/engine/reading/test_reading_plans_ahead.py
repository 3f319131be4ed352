"""Sets told with a time that has not come yet: plans are none, and what may be done is asked about."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.engine.reading.saying import NOW, readings, said, situation

NOON, NIGHT = NOW.replace(hour=12, minute=0), NOW.replace(hour=21, minute=0)


@pytest.mark.parametrize(
    ("now", "text", "meant"),
    [
        (NOON, "gym at 18:00, 3x5 deadlift", "no sets"),
        (NIGHT, "gym at 18:00, 3x5 deadlift", "ask: conventional deadlift 3×5"),
        (NOON, "gym at 6pm, 3x5 deadlift", "no sets"),
        (NOON, "gym at 18:00, deadlift 3x5 100", "ask: conventional deadlift 3×5 at 100 kg"),
        (NIGHT, "gym at 18:00, deadlift 3x5 100", "conventional deadlift 3×5 at 100 kg"),
        (NOON, "training at 18:30, bench then 5x5 squats", "no sets"),
        (NIGHT, "training at 18:30, bench then 5x5 squats", "ask: barbell back squat 5×5"),
        (NOON, "training um 18:30, kniebeugen 5x5", "no sets"),
        (NOON, "heute abend 18 uhr bank 3x5", "no sets"),
        (NOON, "tonight 18:30 bench 3x5", "no sets"),
        (NIGHT, "tonight 18:30 bench 3x5", "ask: barbell bench press 3×5"),
        (NOON, "tonight bench 3x5", "no sets"),
        (NOON, "this evening bench 3x5 80", "ask: barbell bench press 3×5 at 80 kg"),
        (NIGHT, "tonight bench 3x5 80", "barbell bench press 3×5 at 80 kg"),
        (NOON, "18:30 bench 3x5", "ask: barbell bench press 3×5"),
        (NOON, "18:30 bench 3x5 80", "barbell bench press 3×5 at 80 kg"),
        (NIGHT, "18:30 bench 3x5", "barbell bench press 3×5"),
        (NIGHT, "trained at 18:00, bench 3x5", "barbell bench press 3×5"),
        (NIGHT, "gym closed at 18:00, bench 3x5 80", "barbell bench press 3×5 at 80 kg"),
    ],
)
def test_an_hour_to_come_makes_a_plan(now, text, meant) -> None:
    assert said(text, replace(situation(), now=now)).strip() == meant


AHEAD = """
tomorrow, bench 3x5 80 => no sets
morgen, bank 3x5 80 => no sets
next session, squat 3x5 102.5 => no sets
gym tomorrow, deadlift 3x5 100 => ask: conventional deadlift 3×5 at 100 kg
leg day tomorrow, 5x5 squats => ask: barbell back squat 5×5
gym later, 3x5 deadlift => ask: conventional deadlift 3×5
planning legs on friday, 5x5 squats => ask: barbell back squat 5×5
gym tomorrow, did bench 3x5 80 today => barbell bench press 3×5 at 80 kg
no gym tomorrow, bench 3x5 80 => barbell bench press 3×5 at 80 kg
rest day tomorrow, bench 3x5 80 => barbell bench press 3×5 at 80 kg
next exercise, bench 3x5 80 => barbell bench press 3×5 at 80 kg
bench 3x5 80, legs tomorrow => barbell bench press 3×5 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(AHEAD))
def test_a_time_to_come_in_front_of_sets_makes_a_plan(text, context, meant) -> None:
    assert said(text, context).strip() == meant


NOT_NOW = """
still to do: bench 3x8 60 => no sets
if all goes well squat 3x5 105 => no sets
one day squat 200x1 => ask: barbell back squat 1 at 200 kg
later: bench 3x5 80 => ask: barbell bench press 3×5 at 80 kg
bench 3x5 80 later => ask: barbell bench press 3×5 at 80 kg
i usually squat 3x5 100 => ask: barbell back squat 3×5 at 100 kg
normalerweise kniebeugen 3x5 100 => ask: barbell back squat 3×5 at 100 kg
bench 3x8 62.5 maybe => ask: barbell bench press 3×8 at 62.5 kg
deadlift 140x1 not locked out => ask: conventional deadlift 1 at 140 kg
bench 3x8 60 @8 maybe => barbell bench press 3×8 at 60 kg RPE 8
squat 3x5 100, later bench 3x5 80 => barbell back squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg
one day late, squat 3x5 100 => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(NOT_NOW))
def test_what_may_be_no_set_of_now_is_asked_about(text, context, meant) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("remind me to squat 3x5 100 tomorrow", "request: remind"),
        ("remind me at 7 to squat 3x5 100", "request: remind 2025-03-14 19:00:00"),
        ("remind me to squat 3x5 100 tomorrow at 7", "request: remind 2025-03-15 07:00:00"),
        ("remind me in 3 days", "request: remind"),
        ("remind me in 3 days at 7", "request: remind 2025-03-17 07:00:00"),
    ],
)
def test_numbers_of_sets_and_of_days_are_no_hour_of_a_reminder(text, meant) -> None:
    assert said(text) == meant


SPOKEN_OF = """
{doing: barbell bench press; last: barbell bench press 80} 100 was too heavy, did 80x5 => barbell bench press 5 at 80 kg
bench 100 was too heavy, did 80x5 => barbell bench press 5 at 80 kg
85 moved like 60! bench 3x5 85 => barbell bench press 3×5 at 85 kg
85 felt easy. bench 3x5 85 => barbell bench press 3×5 at 85 kg
{doing: barbell back squat; last: barbell back squat 100} 105 fail => barbell back squat 0 at 105 kg missed
{doing: barbell back squat; last: barbell back squat 100} 12 fail => barbell back squat 12 at 100 kg to failure
{doing: push-up} 40 fail => push-up 40 to failure
bench 80x5 will go for 82.5 on friday => barbell bench press 5 at 80 kg
bench 80x5 going for 82.5 next week => barbell bench press 5 at 80 kg
25 min late but: front squat 4x3 80 => barbell front squat 4×3 at 80 kg
squat 5,5,5,3,1 up to 120 => ask: barbell back squat 3×5 at 120 kg, 3 at 120 kg, 1 at 120 kg
bench 8,8,7 60 up from 57.5 => barbell bench press 2×8 at 60 kg, 7 at 60 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(SPOKEN_OF))
def test_a_load_that_is_only_spoken_of_is_no_set(text, context, meant) -> None:
    assert said(text, context).strip() == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
t-bar row 50-9-9-8, third week on these, 52.5 on monday => t-bar row 2×9 at 50 kg, 8 at 50 kg
bench 3x8 60, 62.5 on monday => barbell bench press 3×8 at 60 kg
bench 60 8 8 8 (monday 62.5) => barbell bench press 3×8 at 60 kg
bank 60 8 8 8, am Montag 62,5 => barbell bench press 3×8 at 60 kg
banca 60 8 8 8, el lunes 62,5 => barbell bench press 3×8 at 60 kg
жим лежа 60 8 8 8, в понедельник 62,5 => barbell bench press 3×8 at 60 kg
t-bar row 50-9-9-8, 52.5 next week => t-bar row 2×9 at 50 kg, 8 at 50 kg
bench 60 8 8 8, 62.5 next time => barbell bench press 3×8 at 60 kg
panca 60 8 8 8, la prossima 62,5 => barbell bench press 3×8 at 60 kg
bench 60x8, 62.5x8 on monday => barbell bench press 8 at 60 kg, 8 at 62.5 kg on 2025-03-10
bench 3x8 60 didn't go to failure => barbell bench press 3×8 at 60 kg
"""),
)
def test_a_heavier_load_for_another_day_leaves_the_sets_before_it(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("plan", ["exam at 9 tomorrow", "work at 6 tomorrow", "want 12 next week"])
def test_a_number_of_something_ahead_takes_no_list_of_reps_with_it(plan):
    assert said(f"pull ups 10 8 7, {plan}") == "pull-up 10, 8, 7"


@pytest.mark.parametrize(
    "remark",
    ["up from last week", "more chalk next time", "want 4 plates some day", "my best is 130", "tomorrow legs at 8"],
)
def test_words_of_another_time_behind_whole_sets_take_them_nowhere(remark):
    assert said(f"squat 3x5 100 {remark}") == "ask: barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize("plan", ["next week", "tomorrow", "planned for next week"])
def test_sets_of_a_time_ahead_are_none(plan):
    assert said(f"squat 3x5 105 {plan}") == "no sets"


@pytest.mark.parametrize("remark", ["rows tomorrow", "skipped rows", "curls felt bad last time"])
def test_another_lift_in_brackets_leaves_the_sets_be(remark):
    assert said(f"squat 3x5 100 ({remark})") == "barbell back squat 3×5 at 100 kg"


def test_sets_behind_a_lift_of_another_day_are_asked_about():
    assert said("rows tomorrow, squat 3x5 100") == "ask: barbell back squat 3×5 at 100 kg"
    assert said("tomorrow squat 5x5, bench 5x5") == "no sets"


@pytest.mark.parametrize("sets", ["squat 3x5 100", "bench 80 8 8 7", "pull ups 10 8 7"])
@pytest.mark.parametrize("remark", ["could have done more", "deload next week", "cardio tomorrow"])
def test_sets_are_not_lost_behind_a_wish_or_a_plan_without_a_sign(sets, remark):
    assert said(f"{sets} {remark}") == f"ask: {said(sets)}"
