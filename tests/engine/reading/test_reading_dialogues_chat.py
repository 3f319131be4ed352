"""Talk beside the sets that logs and changes nothing."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
bench 80x5 | could have done 6 => barbell bench press 5 at 80 kg
bench 80x5 | almost got 6 => barbell bench press 5 at 80 kg
bench 80x5 | it was 7 am => barbell bench press 5 at 80 kg
bench 80x5 could have done 2 more => barbell bench press 5 at 80 kg 2 in reserve
bench 80x5 | that one was a grinder => barbell bench press 5 at 80 kg
bench 80x5 | one of those days => barbell bench press 5 at 80 kg
bench 80x5 | 3 guys are waiting for the rack => barbell bench press 5 at 80 kg
bench 80x5 | two people asked me to work in => barbell bench press 5 at 80 kg
bench 80x5 | 10 min late today => barbell bench press 5 at 80 kg
bench 80x5 | gym closes at 9 => barbell bench press 5 at 80 kg
bench 80x5 | rest 3 min => barbell bench press 5 at 80 kg
bench 80x5 | need 5 more minutes => barbell bench press 5 at 80 kg
bench 80x5 | one more set then done => barbell bench press 5 at 80 kg
bench 80x5 | my best is 100x5 => barbell bench press 5 at 80 kg
bench 80x5 | last week i did 82.5x5 => barbell bench press 5 at 80 kg
bench 80x5 | mate did 100x5 => barbell bench press 5 at 80 kg
bench 80x5 | tomorrow 85x5 => barbell bench press 5 at 80 kg
bench 80x5 | next week 85 => barbell bench press 5 at 80 kg
bench 80x5 | going for 85x5 next => barbell bench press 5 at 80 kg
bench 80x5 | should i do 85 next? => barbell bench press 5 at 80 kg
bench 80x5 | 85x5 next? => barbell bench press 5 at 80 kg
bench 80x5 | that was a good session yesterday => barbell bench press 5 at 80 kg
bench 80x5 | it was hot in there, 30 degrees => barbell bench press 5 at 80 kg
bench 80x5 | the first set was easy => barbell bench press 5 at 80 kg
bench 80x5 | second one felt better => barbell bench press 5 at 80 kg
bench 80x5 | both felt good => barbell bench press 5 at 80 kg
bench 80x5 | all good => barbell bench press 5 at 80 kg
bench 80x5 | last one was tough => barbell bench press 5 at 80 kg
bench 80x5 | i weigh 82 => barbell bench press 5 at 80 kg
bench 80x5 | slept 7 hours => barbell bench press 5 at 80 kg
bench 80x5 | locker 12 => barbell bench press 5 at 80 kg
bench 80x5 | 20 min of cardio => barbell bench press 5 at 80 kg
bench 80x5 | ran 5k => barbell bench press 5 at 80 kg
bench 80x5 | it's 6pm already => barbell bench press 5 at 80 kg
bench 80x5 | was 5 enough? => barbell bench press 5 at 80 kg
bench 80x5 | is that 80 or 82.5? => barbell bench press 5 at 80 kg
bench 80x5 | how many sets is that, 3? => barbell bench press 5 at 80 kg
bench 80x5 | they were 10 people here => barbell bench press 5 at 80 kg
bench 80x5 | sorry mate, 5 minutes => barbell bench press 5 at 80 kg
bench 80x5 | no worries => barbell bench press 5 at 80 kg
bench 80x5 | no pain today => barbell bench press 5 at 80 kg
bench 80x5 | wait what => barbell bench press 5 at 80 kg
bench 80x5 | oh no i forgot my belt => barbell bench press 5 at 80 kg
bench 80x5 | sorry, had to take a call => barbell bench press 5 at 80 kg
bench 80x5 | no spotter today so only 80 => barbell bench press 5 at 80 kg
bench 80x5 | the bar was 20kg => barbell bench press 5 at 80 kg
bench 80x5 | i was wrong about the weather => barbell bench press 5 at 80 kg
bench 80x5 | shoulder was a 7 out of 10 => barbell bench press 5 at 80 kg
bench 80x5 | remove me from the list => barbell bench press 5 at 80 kg
bench 80x5 | drop me a line => barbell bench press 5 at 80 kg
bench 80x5 | cut the last set short => barbell bench press 5 at 80 kg
bench 80x5 | change of plans => barbell bench press 5 at 80 kg
bench 80x5 | make it make sense => barbell bench press 5 at 80 kg
bench 80x5 | move over => barbell bench press 5 at 80 kg
bench 80x5 | music was too loud => barbell bench press 5 at 80 kg
bench 80x5 | it was leg day yesterday => barbell bench press 5 at 80 kg
bench 80x5 | dumbbells were taken => barbell bench press 5 at 80 kg
bench 80x5 | the squat rack was taken => barbell bench press 5 at 80 kg
bench 80x5 | someone took the 25s => barbell bench press 5 at 80 kg
bench 80x5 | the 20s were taken => barbell bench press 5 at 80 kg
bench 80x5 | the last one was a new pr => barbell bench press 5 at 80 kg
bench 80x5 | 80 is my new favourite number => barbell bench press 5 at 80 kg
bench 80x5 | 5 stars => barbell bench press 5 at 80 kg
bench 80x5 | about 5 to go => barbell bench press 5 at 80 kg
bench 80x5 | 2 exercises left => barbell bench press 5 at 80 kg
bench 80x5 | 3 more exercises => barbell bench press 5 at 80 kg
bench 80x5 | rpe was high => barbell bench press 5 at 80 kg
bench 80x5 | same as last week => barbell bench press 5 at 80 kg
bench 80x5 | was 3 kg up on last week => barbell bench press 5 at 80 kg
bench 80x5 | could have done 2 more => barbell bench press 5 at 80 kg 2 in reserve
bench 80x5 | had 1 more in me => barbell bench press 5 at 80 kg 1 in reserve
bench 80x5 | maybe 2 left => barbell bench press 5 at 80 kg 2 in reserve
bench 80x5 | left shoulder clicked => barbell bench press 5 at 80 kg
bench 80x5 | chest pain => barbell bench press 5 at 80 kg
bench 80x5 | sharp pain in my elbow on the second one => barbell bench press 5 at 80 kg
bench 80x5 | knee hurt a bit on set 2 => barbell bench press 5 at 80 kg
bench 80x5 | twinge in the back on rep 4 => barbell bench press 5 at 80 kg
bench 80x5 | pulled something on the 5th rep => barbell bench press 5 at 80 kg
bench 80x5 | dizzy after that one => barbell bench press 5 at 80 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_chat(told: str, standing: str) -> None:
    assert standing_after(told) == standing
