"""Sets in words that are plain all the same, loads told in words, and numbers that are one thing or another."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
squat 4x4, one plate a side, easy => barbell back squat 4×4 at 60 kg
squat 4x4 with one plate a side => barbell back squat 4×4 at 60 kg
squat 4x4 a plate a side => barbell back squat 4×4 at 60 kg
squat 4x4 with two plates => barbell back squat 4×4 at 100 kg
3ct pause squat 5x3 90 => pause squat 5×3 at 90 kg
bench 4x4 70, 2ct pause => barbell bench press 4×4 at 70 kg
aiming for 6 at 110 but only got 4 on squat => barbell back squat 4 at 110 kg
wanted 5 at 85, got 4 on bench => barbell bench press 4 at 85 kg
{doing: push-up} as many as i could: 18 and 15 => push-up 18, 15
squat 4x4 90 tempo 31X1 => barbell back squat 4×4 at 90 kg
guess who just squatted 110 for 4 => barbell back squat 4 at 110 kg
treadmill incline 10 => no sets
cardio 15 min incline 8 speed 6 => no sets
calve rasies seated 3x15 60 => seated calf raise 3×15 at 60 kg
"""),
)
def test_plain_sets_in_other_words(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    "text", ["dips 3x8 with a plate", "treadmill then incline 3x8 40", "guess who just squatted 110 for 4: tom"]
)
def test_what_stays_open_is_asked(text: str) -> None:
    assert said(text).startswith("ask")


@pytest.mark.parametrize(
    ("text", "one", "other"),
    [
        ("row machine 45x9 or maybe 8", "machine row 8 at 45 kg", "machine row 9 at 45 kg"),
        ("row machine 45x9, maybe 8", "machine row 8 at 45 kg", "machine row 9 at 45 kg"),
        ("row machine 45x9 (maybe 8)", "machine row 8 at 45 kg", "machine row 9 at 45 kg"),
        ("row machine 45x9 think it was 8", "machine row 8 at 45 kg", "machine row 9 at 45 kg"),
        ("row machine 45x9 could be 8", "machine row 8 at 45 kg", "machine row 9 at 45 kg"),
        ("row machine 45x9 or possibly 47.5", "machine row 9 at 45 kg", "machine row 9 at 47.5 kg"),
        ("Kniebeuge 95x4 oder vielleicht 5", "barbell back squat 4 at 95 kg", "barbell back squat 5 at 95 kg"),
        ("sentadilla 95x4 o quizás 5", "barbell back squat 4 at 95 kg", "barbell back squat 5 at 95 kg"),
    ],
)
def test_one_or_the_other_is_asked_as_two_readings(text: str, one: str, other: str) -> None:
    assert said(text) == f"ask: {one} | {other}"
