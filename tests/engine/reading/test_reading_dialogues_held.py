"""How sets were done, told afterwards: another lift where one is known so, and otherwise nothing."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.reading import read
from engine.reading.values import NoSets
from tests.engine.reading.saying import KNOWN, Conversation, dialogues, situation, standing_after

DIALOGUES = """
ohp 3x6 30 | that was seated => seated barbell overhead press 3×6 at 30 kg
ohp 3x6 30 | seated btw => seated barbell overhead press 3×6 at 30 kg
ohp 3x6 30 | i did it sitting down => seated barbell overhead press 3×6 at 30 kg
ohp 3x6 30 | seated, not standing => seated barbell overhead press 3×6 at 30 kg
seated ohp 3x6 30 | that was standing => barbell overhead press 3×6 at 30 kg
standing calf raise 3x12 40 | those were seated => seated calf raise 3×12 at 40 kg
bench 3x8 60 | that was paused => paused bench press 3×8 at 60 kg
bench 3x8 60 | did it close grip => close-grip bench press 3×8 at 60 kg
dl 3x5 140 | sumo btw => sumo deadlift 3×5 at 140 kg
squat 3x5 100 | those were paused tho => pause squat 3×5 at 100 kg
front squat 3x5 80 | those were paused => barbell front squat 3×5 at 80 kg
incline bench 3x5 80 | those were paused => incline barbell bench press 3×5 at 80 kg
pulldown 3x10 40 | did them with a close grip => close-grip lat pulldown 3×10 at 40 kg
incline bench 3x9 20 | did them with dumbells => incline dumbbell bench press 3×9 at 20 kg each
incline bench 3x9 20 | used dumbbells => incline dumbbell bench press 3×9 at 20 kg each
incline bench 3x9 20 | did it with db's lol => incline dumbbell bench press 3×9 at 20 kg each
bench 3x8 40 | did those on the machine => machine chest press 3×8 at 40 kg
bench 3x8 40 | used the smith machine => smith machine bench press 3×8 at 40 kg
barbell row 3x8 40 | on cables btw => seated cable row 3×8 at 40 kg
barbell curl 3x8 20 | used the ez bar => ez-bar curl 3×8 at 20 kg
bench 3x8 60 | squat 3x5 100 | the bench was paused => paused bench press 3×8 at 60 kg; barbell back squat 3×5 at 100 kg
bench 3x8 60 | dumbbells were all taken => barbell bench press 3×8 at 60 kg
bench 3x8 60 | they used dumbbells => barbell bench press 3×8 at 60 kg
bench 3x8 60 | maybe with dumbbells => barbell bench press 3×8 at 60 kg
bench 3x8 60 | the machine was broken btw => barbell bench press 3×8 at 60 kg
bench 3x8 60 | incline is next btw => barbell bench press 3×8 at 60 kg
bench 3x8 60 | not with dumbbells => barbell bench press 3×8 at 60 kg
squat 3x5 100 | single leg was shaky => barbell back squat 3×5 at 100 kg
squat 3x5 100 | paused for a call btw => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_how_it_was_done(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("sets", "told"), [("dl 3x8 60", "used kettlebells"), ("squat 3x8 60", "did those on cables")])
def test_equipment_that_no_such_lift_is_known_for_is_said(sets: str, told: str) -> None:
    conversation = Conversation()
    conversation.say(sets)
    outcome = read(told, replace(situation(), recent=tuple(conversation.log)), KNOWN)

    assert isinstance(outcome, NoSets)
    assert outcome.why.startswith("no such lift")


@pytest.mark.parametrize("told", ["used a kettlebell", "with a dumbbell btw"])
def test_what_the_lift_is_done_with_anyway_is_no_other_lift(told: str) -> None:
    assert standing_after(f"goblet squat 3x8 24 | {told}") == "goblet squat 3×8 at 24 kg"
