"""Numbers told roughly are no loads and no reps: they are asked about in messages, corrections and answers."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, said, standing_after


@pytest.mark.parametrize(
    "told",
    [
        "front squat 3x6 at eighty something",
        "front squat 3x6 80 something",
        "front squat 3x6 80-something",
        "front squat 3x6 at eightysomething",
        "front squat 3x6 at 100 and something",
        "front squat 3x6 at 80 and change",
        "front squat 3x6 with 80kg and a bit",
        "front squat 3x6 80 odd",
        "front squat 3x6 with 80-odd kg",
        "front squat 3x6 at 80 point something",
        "front squat 80 something x6",
        "front squat eighty something for 6",
        "front squat 3x6 ochenta y pico",
        "front squat 3x6 80 y tantos",
        "front squat 3x6 mit 80 irgendwas",
        "front squat 3x6 siebzig irgendwas",
        "front squat 3x6 soixante et quelques",
        "front squat 3x6 80 e qualcosa",
        "front squat 3x6 80 e poucos",
        "front squat 3x6 80 och nåt",
    ],
)
def test_a_load_told_roughly_is_asked_about(told: str) -> None:
    assert said(told).startswith("ask: ")


@pytest.mark.parametrize(
    "beside",
    ["something felt off in my knee", "and something for abs", "and a bit of stretching", "odd sensation in my knee"],
)
def test_a_remark_leaves_the_load_what_it_is(beside: str) -> None:
    assert "barbell front squat 3×6 at 80 kg" in said(f"front squat 3x6 80 {beside}")


@pytest.mark.parametrize(
    "correction",
    [
        "make it ninety something",
        "it was 90 and a bit",
        "was 90ish",
        "it was 85kg or so",
        "sorry around 90 or so",
        "last was 90 something",
        "last one was 5 or so",
        "85 or so not 80",
        "eran ochenta y pico",
    ],
)
def test_a_number_told_roughly_puts_nothing_right(correction: str) -> None:
    assert standing_after(f"front squat 3x6 80 | {correction}") == "barbell front squat 3×6 at 80 kg"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        squat triples at 120 | 4 or so =>
        squat triples at 120 | around 4 =>
        squat triples at 120 | 4 => barbell back squat 4×3 at 120 kg
        bench 3x8 900 | about 90 =>
        bench 3x8 900 | 90 and change =>
        bench 3x8 at 90ish | 92.5 => barbell bench press 3×8 at 92.5 kg
        bench 3x8 at ninety something | it was 92.5kg => barbell bench press 3×8 at 92.5 kg
        bench 3x8 at 90ish | yes => barbell bench press 3×8 at 90 kg
        bench 80x8ish | 7 => barbell bench press 7 at 80 kg
        bench 80x8ish | 82.5 => barbell bench press 8 at 82.5 kg
    """),
)
def test_an_answer_tells_the_number_as_it_was_or_leaves_the_question_open(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        bench 3x8 at 90ish | 1 => barbell bench press 3×8 at 90 kg
        bench 3x8 at 90ish | 2 =>
        bench 3x8 80 lost a rep | 1 => barbell bench press 3×8 at 80 kg
        bench 3x8 80 lost a rep | 8 8 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
        bench 3x8 80 and zorp 20 | 1 => barbell bench press 3×8 at 80 kg
        bench 3x8 80 and zorp 20 | 5 =>
        bench 3x8 80, squat 100 | 1 => barbell bench press 3×8 at 80 kg
    """),
)
def test_one_is_the_choice_that_is_shown_and_no_set_of_one_rep(told: str, standing: str) -> None:
    assert standing_after(told) == standing
