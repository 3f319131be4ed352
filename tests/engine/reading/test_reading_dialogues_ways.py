"""Ways of lifting and what was done without, told a message later or in an answer to a question about them."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, log_after

DONE_WITHOUT = """
squat 100x5 | no belt 110x3 => barbell back squat 5 at 100 kg, 3 at 110 kg
squat 100x5 | no belt, 110x3 => barbell back squat 5 at 100 kg, 3 at 110 kg
deadlift 140x5 | no straps 150x3 => conventional deadlift 5 at 140 kg, 3 at 150 kg
bench 80x5 | no pause 85x5 => barbell bench press 5 at 80 kg, 5 at 85 kg
bench 80x5 | no spotter 85x5 => barbell bench press 5 at 80 kg, 5 at 85 kg
squat 100x5 | no wraps 110x5 => barbell back squat 5 at 100 kg, 5 at 110 kg
sentadilla 100x5 | no cinturón 110x5 => barbell back squat 5 at 100 kg, 5 at 110 kg
pull ups 8 8 | no band 5 => pull-up 2×8, 5
squat 100x5 | no 110x5 => barbell back squat 5 at 110 kg
squat 100x5 | no, 110x5 => barbell back squat 5 at 110 kg
bench 80x5 | no weight was 85 => barbell bench press 5 at 85 kg
"""
A_MESSAGE_LATER = """
squat 100x5 | 80x5 front => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5 | front 80x5 => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5 | 80x5 front felt good => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5 | 80x5 (front) => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg
squat 100x5 | 80x5 front was hard @8 => barbell back squat 5 at 100 kg; barbell front squat 5 at 80 kg RPE 8
squat 100x5 | 80x5 felt good up front => barbell back squat 5 at 100 kg, 5 at 80 kg
squat 100x5 | 80x5 front leg shaky => barbell back squat 5 at 100 kg
bench 100x5 | paused 80x8 => barbell bench press 5 at 100 kg; paused bench press 8 at 80 kg
bench 100x5 | pause 2 min, 80x8 => barbell bench press 5 at 100 kg, 8 at 80 kg
plank 60s | side 30s => plank 60 s; side plank 30 s
bench smith 60x8 | free 70x5 => smith machine bench press 8 at 60 kg; barbell bench press 5 at 70 kg
squat 100x5, belt 120x3 => barbell back squat 5 at 100 kg, 3 at 120 kg
"""
NO_PAUSE_LATER = """
bench paused 90x5 | no pause 90x5 => paused bench press 5 at 90 kg; barbell bench press 5 at 90 kg
bench paused 90x5 | 95x5 no pause => paused bench press 5 at 90 kg; barbell bench press 5 at 95 kg
bench paused 90x5 | touch and go 100x5 => paused bench press 5 at 90 kg; barbell bench press 5 at 100 kg
bench paused 90x5 | unpaused 90x5 => paused bench press 5 at 90 kg; barbell bench press 5 at 90 kg
bench paused 90x5 | sin pausa 95x5 => paused bench press 5 at 90 kg; barbell bench press 5 at 95 kg
squat pause 90x5 | no pause 3x5 100 => pause squat 5 at 90 kg; barbell back squat 3×5 at 100 kg
bench paused 90x5 | 80x5, 85x5 no pause => paused bench press 5 at 90 kg
bench paused 90x5 | no pause between 90x5 => paused bench press 2×5 at 90 kg
bench paused 90x5 | 90x5 => paused bench press 2×5 at 90 kg
"""
ANSWERED = """
squat 80x5 front, 100x5 | both front => barbell front squat 5 at 80 kg, 5 at 100 kg
squat 80x5 front, 100x5 | only the first => barbell front squat 5 at 80 kg; barbell back squat 5 at 100 kg
squat 60x5, 70x5, 80x5 front | only the last => barbell back squat 5 at 60 kg, 5 at 70 kg; \
barbell front squat 5 at 80 kg
squat 60x5, 70x5, 80x5 front | all of them => barbell front squat 5 at 60 kg, 5 at 70 kg, 5 at 80 kg
pull ups 8, 8, 5 +10 | only the last => pull-up 2×8, 5 at +10 kg
pull ups 8, 8, 5 +10 | all with 10 => pull-up 2×8 at +10 kg, 5 at +10 kg
pull ups 8, 8, 5 +10 | only the 5 had 10 => pull-up 2×8, 5 at +10 kg
pull ups 8, 8, 5 +10 | the last =>
pull ups 8, 8, 5 +10 | only the first =>
pull ups 8, 8, 8 +10 | just the 8 =>
pull ups 8, 8, 5 +10 | every set => pull-up 2×8 at +10 kg, 5 at +10 kg
squat 100x5, belt 60x9 | with a belt => barbell back squat 5 at 100 kg, 9 at 60 kg
squat 100x5, belt 60x9 | belt on => barbell back squat 5 at 100 kg, 9 at 60 kg
squat 100x5, belt 60x9 | i wore a belt => barbell back squat 5 at 100 kg, 9 at 60 kg
squat 100x5, belt 60x9 | a lifting belt => barbell back squat 5 at 100 kg, 9 at 60 kg
squat 100x5, belt 60x9 | back squat => barbell back squat 5 at 100 kg, 9 at 60 kg
squat 100x5, belt 60x9 | belt squat => barbell back squat 5 at 100 kg; belt squat 9 at 60 kg
pull ups 8, 8, 5 +10 | just the 5 => pull-up 2×8, 5 at +10 kg
"""


@pytest.mark.parametrize(
    ("messages", "standing"),
    [row for table in (DONE_WITHOUT, A_MESSAGE_LATER, NO_PAUSE_LATER, ANSWERED) for row in dialogues(table)],
)
def test_a_way_told_later_changes_no_set_that_stands(messages: str, standing: str) -> None:
    assert log_after(*messages.split(" | ")) == standing
