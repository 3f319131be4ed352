"""What each hand held, told behind the sets: the load that stands, another one, or reps of a leg or an arm."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

STANDS = """
db bench 24 3x10 | 24 each => dumbbell bench press 3×10 at 24 kg each
db bench 24 3x10 | 24kg each => dumbbell bench press 3×10 at 24 kg each
db bench 24 3x10 | 24 each hand => dumbbell bench press 3×10 at 24 kg each
db row 30 3x10 | 30 pro hand => dumbbell row 3×10 at 30 kg each
db row 30 3x10 | 30 por mano => dumbbell row 3×10 at 30 kg each
db row 30 3x10 | 30 par main => dumbbell row 3×10 at 30 kg each
db bench 24 3x10 | 24 per side => dumbbell bench press 3×10 at 24 kg each
db bench 24 3x10 | 26 each => dumbbell bench press 3×10 at 24 kg each
"""

CHANGED = """
db bench 24 3x10 | 26 each hand => dumbbell bench press 3×10 at 26 kg each
db bench 24 3x10 | 26kg each => dumbbell bench press 3×10 at 26 kg each
db bench 24 3x10 | 26 par main => dumbbell bench press 3×10 at 26 kg each
db bench 24 3x10 | 12 each => dumbbell bench press 3×10 at 12 kg each
db row 30 3x10 | 32 pro hand => dumbbell row 3×10 at 32 kg each
"""

MORE_SETS = """
bss 24 3x10 | 12 each leg => bulgarian split squat 3×10 at 24 kg each, 12 at 24 kg each
bss 16 3x10 | 16 each leg => bulgarian split squat 3×10 at 16 kg each, 16 at 16 kg each
db row 30 3x10 | 12 per arm => dumbbell row 3×10 at 30 kg each, 12 at 30 kg each
db row 30 10 | 10 each => dumbbell row 2×10 at 30 kg each
"""


@pytest.mark.parametrize(("said", "standing"), dialogues(STANDS))
def test_the_load_that_stands_is_no_set_of_so_many_reps(said: str, standing: str) -> None:
    assert standing_after(said) == standing


@pytest.mark.parametrize(("said", "standing"), dialogues(CHANGED))
def test_what_each_hand_held_is_the_load_of_the_latest_sets(said: str, standing: str) -> None:
    assert standing_after(said) == standing


@pytest.mark.parametrize(("said", "standing"), dialogues(MORE_SETS))
def test_what_each_leg_or_arm_did_is_reps(said: str, standing: str) -> None:
    assert standing_after(said) == standing
