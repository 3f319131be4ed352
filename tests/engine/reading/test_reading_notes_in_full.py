"""What is kept beside sets is kept as it was written, numbers and all."""

from __future__ import annotations

import pytest

from engine.reading import read
from engine.reading.values import Logged
from tests.engine.reading.saying import KNOWN, situation


@pytest.mark.parametrize(
    ("text", "sets", "note"),
    [
        ("squat 3x5 100, slept 5 hours", 3, "slept 5 hours"),
        ("squat 3x5 100 (slept 5 hours)", 3, "slept 5 hours"),
        ("bench 80x5 with 3 sec pause", 1, "3 sec pause"),
        ("leg press 4x10 160 feet high, knee 2/10", 4, "feet high, knee 2/10"),
        ("squat 3x5 100 knee 2/10 by the end", 3, "knee 2/10 by the end"),
        ("pull ups 10 8 7, 5 min rest, tired", 3, "5 min rest, tired"),
        ("bench 80x5 sweaty after 20 min run", 1, "sweaty after 20 min run"),
        ("squat 3x5 100 after 12 hour shift", 3, "12 hour shift"),
        ("bench 80x8 felt easy 85x5", 2, "felt easy"),
        ("deadlift 140x5, grip went at rep 4", 1, "grip went at rep 4"),
        ("deadlift 140x5 felt easy, 160x3 grindy", 2, "felt easy, grindy"),
        ("deadlift 140 x 5 (belt) 160 x 3 (straps)", 2, "belt, straps"),
    ],
)
def test_a_note_keeps_the_numbers_of_its_words(text: str, sets: int, note: str) -> None:
    outcome = read(text, situation(), KNOWN)

    assert isinstance(outcome, Logged)
    assert (len(outcome.sets), outcome.note) == (sets, note)
