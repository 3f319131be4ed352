"""Several lifts of a message in doubt: each answer settles one of them, and none is settled by a guess."""

from __future__ import annotations

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading.answers.one_by_one import first_in_doubt
from tests.engine.reading.saying import Conversation, dialogues

TWO = "row 3x10 60\ncurl 3x12 14"
THREE = "row 3x10 60\npress 3x8 40\ncurl 3x12 14"


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
barbell =>
barbell | dumbbell => barbell row 3×10 at 60 kg, dumbbell curl 3×12 at 14 kg each
cable | 2 => seated cable row 3×10 at 60 kg, ez-bar curl 3×12 at 14 kg
3 | 3 => seated cable row 3×10 at 60 kg, dumbbell curl 3×12 at 14 kg each
pendlay | ez => pendlay row 3×10 at 60 kg, ez-bar curl 3×12 at 14 kg
cable, dumbbell => seated cable row 3×10 at 60 kg, dumbbell curl 3×12 at 14 kg each
db curls and cable row => seated cable row 3×10 at 60 kg, dumbbell curl 3×12 at 14 kg each
db curls | cable => seated cable row 3×10 at 60 kg, dumbbell curl 3×12 at 14 kg each
the curls were dumbbell | cable => seated cable row 3×10 at 60 kg, dumbbell curl 3×12 at 14 kg each
both barbell => barbell row 3×10 at 60 kg, barbell curl 3×12 at 14 kg
cable 65 | dumbbell => seated cable row 3×10 at 65 kg, dumbbell curl 3×12 at 14 kg each
row was 65 | cable | dumbbell => seated cable row 3×10 at 65 kg, dumbbell curl 3×12 at 14 kg each
not the barbell | cable | dumbbell => seated cable row 3×10 at 60 kg, dumbbell curl 3×12 at 14 kg each
cable | forget it =>
lol what a day | cable | nice | dumbbell => seated cable row 3×10 at 60 kg, dumbbell curl 3×12 at 14 kg each
"""),
)
def test_each_answer_settles_one_of_two_lifts(told: str, standing: str) -> None:
    assert standing_after(TWO, told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
cable | leg | ez bar => seated cable row 3×10 at 60 kg, leg press 3×8 at 40 kg, ez-bar curl 3×12 at 14 kg
cable, leg, ez bar => seated cable row 3×10 at 60 kg, leg press 3×8 at 40 kg, ez-bar curl 3×12 at 14 kg
cable | overhead =>
"""),
)
def test_of_three_lifts_none_is_taken_for_granted(told: str, standing: str) -> None:
    assert standing_after(THREE, told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
barbell row 3x8 62.5 => barbell row 3×8 at 62.5 kg, barbell bench press 3×8 at 60 kg
barbell 62.5 => barbell row 3×10 at 62.5 kg, barbell bench press 3×8 at 60 kg
bench 3x8 65 => barbell bench press 3×8 at 65 kg
"""),
)
def test_numbers_told_again_leave_the_other_lift_its_sets(told: str, standing: str) -> None:
    assert standing_after("row 3x10 60\nbench 3x8 60", told) == standing


def test_one_name_told_twice_is_asked_about_once() -> None:
    told = "row 3x10 60\nbench 3x8 60\nrow 3x8 65"

    assert standing_after(told, "cable") == (
        "seated cable row 3×10 at 60 kg, barbell bench press 3×8 at 60 kg, seated cable row 3×8 at 65 kg"
    )


@pytest.mark.parametrize("told", [TWO, THREE])
def test_only_the_first_lift_in_doubt_is_shown(told: str) -> None:
    conversation = Conversation()
    conversation.say(told)
    assert conversation.open is not None
    shown = first_in_doubt(conversation.open, catalogue())

    assert [reading.sets[0].exercise for reading in shown.readings] == [
        "barbell row",
        "dumbbell row",
        "seated cable row",
    ]
    assert {len(reading.sets) for reading in shown.readings} == {3}


def standing_after(message: str, answers: str) -> str:
    conversation = Conversation()
    conversation.say(message)
    for answer in answers.split(" | "):
        conversation.say(answer)
    return conversation.standing().replace("; ", ", ")
