"""Words that mark sets met with a slip of the thumb are read as what they mark; other words stay remarks."""

from __future__ import annotations

import pytest

from engine.reading.lexing.marks_misspelt import MEANT
from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
bench 60x8 warmpu, 90x5 => barbell bench press 8 at 60 kg warmup, 5 at 90 kg
db row 32kg 9 eahc side => dumbbell row 9 at 32 kg each
dips 9 7 asisted 15kg => dip 9 at −15 kg, 7 at −15 kg
asisted dips 15kg 9 7 => dip 9 at −15 kg, 7 at −15 kg
squat 110 5 5 4 missde => barbell back squat 2×5 at 110 kg, 4 at 110 kg missed
bench 75 8 8 7 alst to failure => barbell bench press 2×8 at 75 kg, 7 at 75 kg to failure
to failrue: hammers 12s 11 9 => hammer curl 11 at 12 kg each to failure, 9 at 12 kg each to failure
barbell curl 20kg 11 9 to failur => barbell curl 11 at 20 kg, 9 at 20 kg to failure
plank 2x1 miunte => plank 2×60 s
bench 95 x 5, 2 reps in resreve => barbell bench press 5 at 95 kg 2 in reserve
squat 100 4 tripples => barbell back squat 4×3 at 100 kg
deadlift 160, four dobules => conventional deadlift 4×2 at 160 kg
squat 3x5 80, slept 3 nights => barbell back squat 3×5 at 80 kg
Bankdrücken 80x5 Muskelversgaen => barbell bench press 5 at 80 kg to failure
"""),
)
def test_a_slip_in_a_word_that_marks_sets_is_put_right(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("word", ["places", "warning", "leading", "messed", "strange", "países", "camping", "barco"])
def test_common_words_are_no_slips_of_a_mark(word: str) -> None:
    assert said(f"squat 3x5 80 {word}").startswith("barbell back squat 3×5 at 80 kg")
    assert "warmup" not in said(f"squat 3x5 80 {word}")
    assert "missed" not in said(f"squat 3x5 80 {word}")


def test_a_word_of_the_lists_is_no_slip_of_another() -> None:
    assert not any(MEANT[word] for word in ("warmup", "failure", "same", "last", "drop", "each", "with", "without"))
