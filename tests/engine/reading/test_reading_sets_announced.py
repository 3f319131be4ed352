"""Sets counted as goes and trips, announced behind others with a load of their own, and what ends a list."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
sandbag carry 50 kg, 30 metres, 4 trips => sandbag carry 4×30 m at 50 kg
farmers 28kg 20m 4 lengths => farmer's walk 4×20 m at 28 kg each
4 runs of 30m of sled push at 70 => sled push 4×30 m at 70 kg
bench 85x4, 2 goes => barbell bench press 2×4 at 85 kg
sled push 70kg, 20m in 15s, second run 20m in 17s => sled push 20 m in 15 s at 70 kg, 20 m in 17 s at 70 kg
bench 75 9 9 then two sets with 65, 12 and 11 => \
barbell bench press 2×9 at 75 kg, 12 at 65 kg, 11 at 65 kg
bench 50x10 then 3 sets at 75, 8 8 7 => barbell bench press 10 at 50 kg, 2×8 at 75 kg, 7 at 75 kg
bench 2 sets at 75: 8 8, 2 sets at 65: 11 9 => barbell bench press 2×8 at 75 kg, 11 at 65 kg, 9 at 65 kg
squat 3x5 90, two sets at 80: 9 and 8 => barbell back squat 3×5 at 90 kg, 9 at 80 kg, 8 at 80 kg
dips 14,11,9 then 2 sets at +5: 9, 7 => dip 14, 11, 9, 9 at +5 kg, 7 at +5 kg
bench 75 8, 8, and 6 on the last => barbell bench press 2×8 at 75 kg, 6 at 75 kg
bench 75x8, 75x8, 75x6 on the last => barbell bench press 2×8 at 75 kg, 6 at 75 kg
empty bar x15 then bench 3x8 55 => barbell bench press 15 at 20 kg warmup, 3×8 at 55 kg
bench 115x1+miss => barbell bench press 1 at 115 kg missed
bench 115x1 + 1 fail => barbell bench press 1 at 115 kg missed
bench 115x1 miss => barbell bench press 0 at 115 kg missed
{doing: barbell overhead press; last: barbell overhead press 35} +1,25 on last time: 6, 6, 5 => \
barbell overhead press 2×6 at 36.25 kg, 5 at 36.25 kg
pec deck, 3x12, 22 => pec deck 3×12 at 22 kg
hammer curls 3x10, dumbbells 12 => hammer curl 3×10 at 12 kg each
leg extension 20kg 11 each leg, 2 sets => leg extension 2×11 at 20 kg
squat 95x5, went for 105, missed the second => barbell back squat 5 at 95 kg, 1 at 105 kg missed
bench 4x6 70, misread the plates => barbell bench press 4×6 at 70 kg
bench 4x6 70 plates were cold => barbell bench press 4×6 at 70 kg
"""),
)
def test_sets_are_counted_and_loaded_as_told(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("text", ["bench 75 8 8 8, 4 on the last", "bench 80, 7 on the last"])
def test_what_a_last_set_came_to_may_be_one_set_more(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize("text", ["swam 40 lengths", "3 trips to the shop today"])
def test_trips_alone_are_no_sets(text: str) -> None:
    assert said(text) == "no sets"


@pytest.mark.parametrize(
    "text",
    [
        "didn't write it down last night - squat 3x5 80",
        "forgot to log this last night: squat 3x5 80",
        "didn't get round to logging last night - squat 3x5 80",
    ],
)
def test_a_day_behind_what_was_not_written_down_is_the_day_of_the_sets(text: str) -> None:
    assert said(text) == "barbell back squat 3×5 at 80 kg on 2025-03-13"


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
9, 8, 7 @ 60 incline bench // 13, 11 @ 25 rope pushdowns => incline barbell bench press 9 at 60 kg, 8 at 60 kg, \
7 at 60 kg; rope pushdown 13 at 25 kg, 11 at 25 kg
9, 8 @ 70 bench; 13, 11 @ 25 rope pushdowns => barbell bench press 9 at 70 kg, 8 at 70 kg; rope pushdown 13 at 25 kg, \
11 at 25 kg
bench 70x5 // 60x5, 60x4 incline bench => barbell bench press 5 at 70 kg; incline barbell bench press 5 at 60 kg, \
4 at 60 kg
bench 90: 3, 3, missed the third on set three => barbell bench press 2×3 at 90 kg, 2 at 90 kg missed
3 sets of 9 goblet squats with the 20 kilo one and a 1 minute plank => goblet squat 3×9 at 20 kg; plank 60 s
"""),
)
def test_numbers_are_those_of_the_name_behind_them(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text",
    [
        "bench 90 3 3 3, missed the third on set two",
        "bench 80x8, 8, only 7 on the last",
        "bench 80x8, 8, got 7 on the last",
        "bench 90x3 90x3 failed the 3rd on the third set",
    ],
)
def test_what_may_be_of_another_set_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")


@pytest.mark.parametrize("text", ["deadlift 4x4 130 back feels fine, no pinch", "squat 3x5 95 hip good, no pinching"])
def test_no_in_front_of_a_pain_denies_it(text: str) -> None:
    assert "pain" not in said(text)


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("warmed up, squat 3x5 95", "barbell back squat 3×5 at 95 kg"),
        ("aufgewärmt, Kniebeuge 3x5 95", "barbell back squat 3×5 at 95 kg"),
        ("barbell row 55x10x3 left a rep in the tank", "barbell row 3×10 at 55 kg 1 in reserve"),
    ],
)
def test_what_was_done_before_and_what_is_left_marks_no_other_sets(text: str, meant: str) -> None:
    assert said(text) == meant
