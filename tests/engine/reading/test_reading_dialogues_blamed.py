"""What was wrong is named, and she calls herself names beside it: the sets take what is told instead."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        leg press 3x10 180 | wrong number of sets, 4 => leg press 4×10 at 180 kg
        leg press 3x10 180 | got the sets wrong, it was 4 => leg press 4×10 at 180 kg
        leg press 3x10 180 | wrong reps, 12 => leg press 3×12 at 180 kg
        leg press 3x10 180 | the weight is wrong, 170 => leg press 3×10 at 170 kg
        leg press 3x10 180 | sorry, 12 => leg press 2×10 at 180 kg, 12 at 180 kg
        leg press 3x10 180 | why does it say 180, i did 170 => leg press 3×10 at 180 kg
    """),
)
def test_the_word_beside_wrong_says_what_the_number_is_of(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    "beside",
    ["dang it was 170", "brain fart, 170kg", "my brain is fried, 170kg", "170 sry im dumb", "can't type. 170",
     "170, im an idiot", "autocorrect, 170", "sorry hit send too early. 170", "thats not what i said. 170"],
)  # fmt: skip
def test_words_of_blame_are_a_slip(beside: str) -> None:
    assert standing_after(f"leg press 3x10 180 | {beside}") == "leg press 3×10 at 170 kg"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        leg press 3x10 180 | it went 10 10 8 => leg press 2×10 at 180 kg, 8 at 180 kg
        leg press 3x10 180 | tbh only 8 on the last => leg press 2×10 at 180 kg, 8 at 180 kg
        leg press 3x10 180 | actually cheated the last 2 reps of the last set => leg press 3×10 at 180 kg
    """),
)
def test_lists_and_reps_of_the_sets_that_stand(told: str, standing: str) -> None:
    assert standing_after(told) == standing
