"""Sets told again behind those that stand: put right, confirmed, or asked; never added in silence."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import Conversation, dialogues, log_after, standing_after

ROW = "barbell row"
BENCH = "barbell bench press"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues(f"""
barbell row 3x6 70 | i did 4x6 => {ROW} 3×6 at 70 kg
barbell row 3x6 70 | did 4x6 70 => {ROW} 3×6 at 70 kg
barbell row 3x6 70 | i did 3x7 => {ROW} 3×6 at 70 kg
barbell row 3x6 70 | ich habe 4x6 gemacht => {ROW} 3×6 at 70 kg
barbell row 3x6 70 | i did 4x6 | yes => {ROW} 7×6 at 70 kg
barbell row 3x6 70 | i did 4x6 | no => {ROW} 3×6 at 70 kg
barbell row 3x6 70 | i did 4x6 | it was 4x6 => {ROW} 4×6 at 70 kg
barbell row 3x6 70 | i only did 2x6 => {ROW} 2×6 at 70 kg
barbell row 3x6 70 | did 5x6 in total => {ROW} 5×6 at 70 kg
barbell row 3x6 70 | then i did 2x6 => {ROW} 5×6 at 70 kg
barbell row 3x6 70 | did another 2x6 => {ROW} 5×6 at 70 kg
barbell row 3x6 70 | 2x6 => {ROW} 5×6 at 70 kg
barbell row 70x6 | i did 72.5x6 => {ROW} 6 at 70 kg, 6 at 72.5 kg
"""),
)
def test_a_group_told_with_did_is_asked_about(told: str, standing: str) -> None:
    assert standing_after(told) == standing


def test_the_question_says_how_to_put_the_standing_sets_right() -> None:
    talk = Conversation()
    talk.say("barbell row 3x6 70")
    talk.say("i did 4x6")

    assert talk.open is not None
    assert "more sets" in talk.open.question
    assert "it was" in talk.open.question


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues(f"""
barbell row 3x6 70 | it was 3x6 => {ROW} 3×6 at 70 kg
barbell row 70x6 | that was 70x6 => {ROW} 6 at 70 kg
barbell row 3x6 70 | das war 3x6 => {ROW} 3×6 at 70 kg
barbell row 3x6 70 | it was 4x6 => {ROW} 4×6 at 70 kg
barbell row 70x6 | bench was 60x8 => {ROW} 6 at 70 kg; {BENCH} 8 at 60 kg
barbell row 70x6 | no, bench 60x8 => {ROW} 6 at 70 kg
barbell row 60x8 | no, bench 60x8 => {BENCH} 8 at 60 kg
barbell row 60x8 | it was bench 60x8 => {BENCH} 8 at 60 kg
"""),
)
def test_what_stands_told_again_adds_nothing(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues(f"""
barbell row 70x7 | that was 6.5 => {ROW} 6 at 70 kg
barbell row 70x7 | last was 6 and a half => {ROW} 6 at 70 kg
barbell row 70 7 7 | last one was 5½ => {ROW} 7 at 70 kg, 5 at 70 kg
pull ups 9 | that was 8.5 => pull-up 8
barbell row 70x7 | that was 72.5 => {ROW} 7 at 72.5 kg
lateral raise 7kg x10 | it was 7.5 => dumbbell lateral raise 10 at 7.5 kg each
barbell row 70x7 | that was 12.03. => {ROW} 7 at 70 kg on 2025-03-12
barbell row 70x7 | move it to 7.5 => {ROW} 7 at 70 kg on 2024-05-07
"""),
)
def test_a_half_number_is_of_reps_where_it_is_far_from_the_load_and_no_day(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues(f"""
barbell row 70x6 | 7/10 => {ROW} 6 at 70 kg
barbell row 70x6 | 2/4 done => {ROW} 6 at 70 kg
barbell row 70x6 | up 5 => {ROW} 6 at 70 kg
barbell row 70x6 | or 7 => {ROW} 6 at 70 kg
barbell row 70x6 | could have been 7 => {ROW} 6 at 70 kg
barbell row 70x6 | should have been 7 => {ROW} 7 at 70 kg
barbell row 70x6 | 4x6 done => {ROW} 6 at 70 kg
barbell row 70x6 | 6/5 => {ROW} 2×6 at 70 kg, 5 at 70 kg
barbell row 70x6 | 72.5x6 done => {ROW} 6 at 70 kg, 6 at 72.5 kg
"""),
)
def test_numbers_alone_that_may_tell_no_sets_are_asked(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize("words", ["got 8 7 7", "did 8 7 7", "got 8, 7, 7", "did 8/7/7"])
def test_as_many_reps_as_there_were_sets_are_asked_about(words: str) -> None:
    assert log_after("bench 3x8 60", words) == "barbell bench press 3×8 at 60 kg"
    assert log_after("bench 3x8 60", words, "it was 8 7 7") == "barbell bench press 8 at 60 kg, 2×7 at 60 kg"


@pytest.mark.parametrize("words", ["then got 8 7 7", "8 7 7"])
def test_reps_that_follow_are_more_sets(words: str) -> None:
    assert log_after("bench 3x8 60", words) == "barbell bench press 4×8 at 60 kg, 2×7 at 60 kg"
