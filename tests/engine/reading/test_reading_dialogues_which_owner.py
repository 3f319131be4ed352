"""Which of a name's lifts an answer means: by its equipment, or by a name that several go by in turn."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read_answer
from engine.reading.values import Settled
from tests.engine.reading.saying import Conversation, dialogues, situation, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
row 60x8 | seated, machine => machine row 8 at 60 kg
row 60x8 | machine seated => machine row 8 at 60 kg
row 60x8 | t bar => t-bar row 8 at 60 kg
row 60x8 | seated => seated cable row 8 at 60 kg
press 40x8 | shoulder, barbell | overhead => barbell overhead press 8 at 40 kg
press 40x8 | barbell shoulder => barbell overhead press 8 at 40 kg
press 40x8 | db shoulder => dumbbell shoulder press 8 at 40 kg each
press 40x8 | shoulder =>
press 40x8 | shoulder | machine => machine shoulder press 8 at 40 kg
"""),
)
def test_equipment_that_was_said_is_the_one_recorded(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
squat 3x5 100 // row 3x12 55 | bar => barbell back squat 3×5 at 100 kg, barbell row 3×12 at 55 kg
squat 3x5 100 // row 3x12 55 | dumbbell => barbell back squat 3×5 at 100 kg, dumbbell row 3×12 at 55 kg each
squat 3x5 100 // row 3x12 55 | row was 60 | bar => barbell back squat 3×5 at 100 kg, barbell row 3×12 at 60 kg
squat 3x5 99 // row 3x8 55 | squat was only 2 sets | bar => barbell back squat 2×5 at 99 kg, barbell row 3×8 at 55 kg
db curl 3x10 12 // row 3x12 55 | barbell => dumbbell curl 3×10 at 12 kg each, barbell row 3×12 at 55 kg
"""),
)
def test_the_lift_told_beside_the_one_in_doubt_answers_nothing(told, standing):
    assert standing_after(told).replace("; ", ", ") == standing


@pytest.mark.parametrize("answer", ["dumbbell", "t bar", "bar"])
def test_a_word_in_doubt_never_means_the_lift_beside_it(answer):
    conversation = Conversation()
    conversation.say("squat 3x5 100\nrow 3x12 55")
    context = replace(situation(), now=conversation.now)
    assert conversation.open is not None
    found = read_answer(answer, conversation.open, context, catalogue())

    assert isinstance(found, Settled)
    assert "barbell back squat" not in found.teaches.values()
