"""What somebody did without, told ahead of sets: "no belt 110x3" puts no set right that stands."""

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


@pytest.mark.parametrize(("messages", "standing"), dialogues(DONE_WITHOUT))
def test_what_was_done_without_changes_no_set_that_stands(messages: str, standing: str) -> None:
    assert log_after(*messages.split(" | ")) == standing
