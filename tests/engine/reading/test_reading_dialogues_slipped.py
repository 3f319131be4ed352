"""Corrections with slips in small words, greetings beside a question, halves, counts that stand, and hours."""

from __future__ import annotations

import pytest

from engine.reading.wording import describe
from tests.engine.reading.saying import NOW, Conversation, dialogues, standing_after

STANDING = {
    "squat 3x5 100 | teh last one was only 4 reps": "barbell back squat 2×5 at 100 kg, 4 at 100 kg",
    "bench 3x8 60 | teh bench shoud be 77.5": "barbell bench press 3×8 at 77.5 kg",
    "db curl 3x12 14 | all were 12": "dumbbell curl 3×12 at 12 kg each",
    "db curl 3x12 14 | those were the 12s": "dumbbell curl 3×12 at 12 kg each",
    "db curl 3x12 14 | first two were 12s": "dumbbell curl 2×12 at 12 kg each, 12 at 14 kg each",
    "db curl 3x12 14 | 8 each": "dumbbell curl 3×12 at 14 kg each, 8 at 14 kg each",
    "db bench 3x8 60 | 30 each": "dumbbell bench press 3×8 at 30 kg each",
    "db bench 3x8 60 | that was both dumbbells together": "dumbbell bench press 3×8 at 30 kg each",
    "bench 3x8 60 | that was both hands": "barbell bench press 3×8 at 60 kg",
    "bench 80x8 | 8 | 7 | that's 3 sets": "barbell bench press 2×8 at 80 kg, 7 at 80 kg",
    "bench 80x8 | it was 3 sets": "barbell bench press 3×8 at 80 kg",
    "press 3x8 40 | good morning all | overhead": "barbell overhead press 3×8 at 40 kg",
    "press 3x8 40 | good morning": "",
    "squat 3x5 100 | one more with 4": "barbell back squat 3×5 at 100 kg, 4 at 100 kg",
    "squat 3x5 100 | another with 95": "barbell back squat 3×5 at 100 kg, 5 at 95 kg",
    "squat 3x5 100 | another at 8": "barbell back squat 3×5 at 100 kg",
    "squat 3x5 100 | that should've been lbs": "barbell back squat 3×5 at 100 lb",
    "bench 70x5 | 4 | ugh 3": "barbell bench press 5 at 70 kg, 4 at 70 kg, 3 at 70 kg",
    "bench 70x5 | ugh last was 4": "barbell bench press 4 at 70 kg",
    "bench 80x5 | 85x5 | those were lbs": "barbell bench press 5 at 80 lb, 5 at 85 lb",
    "bench 80x5 | squat 100x5 | that was lbs": "barbell bench press 5 at 80 kg; barbell back squat 5 at 100 lb",
    "plank 60s | 45s | that was 50s": "plank 60 s, 50 s",
    "incline db curl 10s 12 11 10 | 12s not 10s": (
        "incline dumbbell curl 12 at 12 kg each, 11 at 12 kg each, 10 at 12 kg each"
    ),
    "incline db curl 10s 12 11 10 | those were the 12s": (
        "incline dumbbell curl 12 at 12 kg each, 11 at 12 kg each, 10 at 12 kg each"
    ),
    "deadlift 180x1 | 190x1 miss | 185x1 | the miss was 187.5": (
        "conventional deadlift 1 at 180 kg, 0 at 187.5 kg missed, 1 at 185 kg"
    ),
    "bench 80x8 > 60x10 | the drop was 55": "barbell bench press 8 at 80 kg, 10 at 55 kg drop",
    "lat pulldown 3x10 50 | close grip sorry": "close-grip lat pulldown 3×10 at 50 kg",
    "barbell row 3x10 50 | close grip sorry": "barbell row 3×10 at 50 kg",
    "goblet squat 3x12 288kg | 28kg obviously": "goblet squat 3×12 at 28 kg",
    "goblet squat 3x12 288kg | 28 of course": "goblet squat 3×12 at 28 kg",
    "goblet squat 3x12 288kg | 28 kg lol": "goblet squat 3×12 at 28 kg",
    "goblet squat 3x12 288kg | haha i meant 28": "goblet squat 3×12 at 28 kg",
    "goblet squat 3x12 28kg | 10 obviously": "goblet squat 2×12 at 28 kg, 10 at 28 kg",
    "goblet squat 3x12 28kg | 10 lol": "goblet squat 3×12 at 28 kg, 10 at 28 kg",
    "bench 3x5 80 | 8kg": "barbell bench press 3×5 at 80 kg",
    "squat 100x3 | sorry, 10": "barbell back squat 10 at 100 kg",
    "bench 80x5 | 5 | ugh third one only got 4": "barbell bench press 2×5 at 80 kg, 4 at 80 kg",
    "rdl 3x8 50 | no, bench 3x5 80": "romanian deadlift 3×8 at 50 kg",
    "leg press 3x13 475 | 47.5 i mean": "leg press 3×13 at 47.5 kg",
    "leg press 3x13 475 | that was 47.5": "leg press 3×13 at 47.5 kg",
    "squat 3x5 100 | no squat today": "barbell back squat 3×5 at 100 kg",
}


@pytest.mark.parametrize(("told", "standing"), [pytest.param(*one, id=one[0]) for one in STANDING.items()])
def test_what_stands(told: str, standing: str) -> None:
    talk = Conversation()
    for text in told.split(" | "):
        talk.say(text)

    assert (describe([one.done for one in talk.log]) if talk.log else "") == standing


def test_a_no_in_front_of_a_lift_that_was_another_day_is_a_slip_and_moves_that_lift() -> None:
    talk = Conversation()
    for text in ("squat 3x5 100", "bench 3x8 60", "no squat was monday"):
        talk.say(text)

    assert [one.on.weekday() for one in talk.log] == [0] * 3 + [NOW.weekday()] * 3


ZEROS = """
bench 3x8 7 | 70!! left out a zero => barbell bench press 3×8 at 70 kg
bench 3x8 7 | 70, forgot the zero => barbell bench press 3×8 at 70 kg
bench 3x8 7 | missed a 0, 70 => barbell bench press 3×8 at 70 kg
bench 3x8 7 | null vergessen, 70 => barbell bench press 3×8 at 70 kg
bench 3x8 7 | 70, me faltó un cero => barbell bench press 3×8 at 70 kg
bench 3x8 7 | 70 il manque un zéro => barbell bench press 3×8 at 70 kg
bench 3x8 7 | ho dimenticato uno zero, 70 => barbell bench press 3×8 at 70 kg
bench 3x8 7 | faltou um zero, 70 => barbell bench press 3×8 at 70 kg
bench 3x8 7 | nul vergeten, 70 => barbell bench press 3×8 at 70 kg
bench 3x8 7 | zapomniałem zera, 70 => barbell bench press 3×8 at 70 kg
bench 3x8 7 | 70, забыл ноль => barbell bench press 3×8 at 70 kg
bench 3x8 7 | glömde en nolla, 70 => barbell bench press 3×8 at 70 kg
bench 3x8 70 | missed a zero => barbell bench press 3×8 at 70 kg
squat 100x5 | missed a rep => barbell back squat 5 at 100 kg missed
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(ZEROS))
def test_a_zero_that_was_left_out_is_no_missed_set(told, standing):
    assert standing_after(told) == standing
