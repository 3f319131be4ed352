"""Corrections whose little words are mistyped: a letter missing, two that changed places, or no space between."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        leg press 4x10 140 | shouldve been 145 on all of thm => leg press 4×10 at 145 kg
        leg press 4x10 140 | should hve been 145 for all of tehm => leg press 4×10 at 145 kg
        leg press 4x10 140 | shud have been 145 => leg press 4×10 at 145 kg
        leg press 4x10 140 | tht was 145 => leg press 4×10 at 145 kg
        leg press 4x10 140 | thta shoud hav been 145 => leg press 4×10 at 145 kg
        leg press 4x10 140 | mak it 145 => leg press 4×10 at 145 kg
        leg press 4x10 140 | alll four wer at 145 => leg press 4×10 at 145 kg
        leg press 4x10 140 | itwas 145 => leg press 4×10 at 145 kg
        leg press 4x10 140 | allof them were 145 => leg press 4×10 at 145 kg
        bench 75 8 8 7 | last oen was 6 => barbell bench press 2×8 at 75 kg, 6 at 75 kg
        bench 75 8 8 7 | teh lst one was 6 => barbell bench press 2×8 at 75 kg, 6 at 75 kg
        bench 75 8 8 7 | lastone was 6 => barbell bench press 2×8 at 75 kg, 6 at 75 kg
        bench 75 8 8 7 | the lat one was 6 => barbell bench press 2×8 at 75 kg, 6 at 75 kg
        bench 75 8 8 7 | first tow were 77.5 => barbell bench press 2×8 at 77.5 kg, 7 at 75 kg
        bench 75 8 8 7 | frst was 9, lst was 6 => barbell bench press 9 at 75 kg, 8 at 75 kg, 6 at 75 kg
        bench 75 8 8 7 | delte teh lst one => barbell bench press 2×8 at 75 kg
        kniebeuge 3x5 100 | der lezte satz war 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
        sentadilla 3x5 100 | toddas eran 105 => barbell back squat 3×5 at 105 kg
        sentadilla 3x5 100 | la ultma fue 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
        squat 3x5 100 | sissta var 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
    """),
)
def test_a_little_word_mistyped_corrects_all_the_same(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    "beside", ["tim was 80", "tow truck was 40 min late", "dan got 140", "fist pump 5", "ben was 90kg"]
)
def test_a_word_of_its_own_is_no_slip_of_a_little_one(beside: str) -> None:
    assert standing_after(f"squat 3x5 100 | {beside}") == "barbell back squat 3×5 at 100 kg"
