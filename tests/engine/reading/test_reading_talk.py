"""Talk that holds set-like numbers and no sets, and questions that must be asked."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("what is 5x5?", situation(), "no sets", id="what is 5x5?"),
        pytest.param("bench 100x5 next week", situation(), "no sets", id="bench 100x5 next week"),
        pytest.param(
            "tomorrow squat 5x5 100, bench 5x5 80", situation(), "no sets", id="tomorrow squat 5x5 100, bench 5x5 80"
        ),
        pytest.param("planning 3x5 at 90", situation(), "no sets", id="planning 3x5 at 90"),
        pytest.param("my mate did 3x5 at 140", situation(), "no sets", id="my mate did 3x5 at 140"),
        pytest.param("coach says 4x8 at 60", situation(), "no sets", id="coach says 4x8 at 60"),
        pytest.param("my best bench is 100x1", situation(), "no sets", id="my best bench is 100x1"),
        pytest.param("used to squat 180x3", situation(), "no sets", id="used to squat 180x3"),
        pytest.param("ran 5k in 25 min", situation(), "no sets", id="ran 5k in 25 min"),
        pytest.param("locker 27x3", situation(), "no sets", id="locker 27x3"),
        pytest.param("slept 7h", situation(), "no sets", id="slept 7h"),
        pytest.param("is 80x5 good?", situation(), "no sets", id="is 80x5 good?"),
        pytest.param(
            "bench 80x5, is that good?", situation(), "barbell bench press 5 at 80 kg", id="bench 80x5, is that good?"
        ),
        pytest.param(
            "bench 80x5. what's next?", situation(), "barbell bench press 5 at 80 kg", id="bench 80x5. what's next?"
        ),
        pytest.param("bench 80x5, 80x5 tomorrow", situation(), "no sets", id="bench 80x5, 80x5 tomorrow"),
        pytest.param(
            "did 3x5 80 on bench, going for 82.5 next week",
            situation(),
            "barbell bench press 3×5 at 80 kg",
            id="did 3x5 80 on bench, going for 82.5 next week",
        ),
        pytest.param(
            "bench 3x5 82.5 new pb!", situation(), "barbell bench press 3×5 at 82.5 kg", id="bench 3x5 82.5 new pb!"
        ),
        pytest.param("should have done 3x8 60", situation(), "no sets", id="should have done 3x8 60"),
        pytest.param("i want to bench 100x5 by june", situation(), "no sets", id="i want to bench 100x5 by june"),
        pytest.param(
            "benched 100x3 today, best ever",
            situation(),
            "barbell bench press 3 at 100 kg",
            id="benched 100x3 today, best ever",
        ),
        pytest.param("paul squatted 150x5", situation(), "no sets", id="paul squatted 150x5"),
        pytest.param(
            "the gym has 24 racks and 3x10kg plates",
            situation(),
            "no sets",
            id="the gym has 24 racks and 3x10kg plates",
        ),
        pytest.param("queue of 5 for the rack", situation(), "no sets", id="queue of 5 for the rack"),
        pytest.param("12 min on the bike", situation(), "no sets", id="12 min on the bike"),
        pytest.param("10 min row, 2k", situation(), "ask: ", id="10 min row, 2k"),
        pytest.param("gym opens 6 to 22", situation(), "no sets", id="gym opens 6 to 22"),
        pytest.param(
            "lifted with 2 friends, bench 80x5",
            situation(),
            "barbell bench press 5 at 80 kg",
            id="lifted with 2 friends, bench 80x5",
        ),
        pytest.param("bought 2x10kg plates", situation(), "no sets", id="bought 2x10kg plates"),
    ],
)
def test_talk_is_left_alone(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            "row 4x10 55",
            situation(),
            "ask: barbell row 4×10 at 55 kg | dumbbell row 4×10 at 55 kg each | seated cable row 4×10 at 55 kg",
            id="row 4x10 55",
        ),
        pytest.param(
            "db press 3x10 20",
            situation(),
            "ask: dumbbell bench press 3×10 at 20 kg each | dumbbell shoulder press 3×10 at 20 kg each",
            id="db press 3x10 20",
        ),
        pytest.param(
            "incline 3x8 60",
            situation(),
            "ask: incline barbell bench press 3×8 at 60 kg | incline dumbbell bench press 3×8 at 60 kg each",
            id="incline 3x8 60",
        ),
        pytest.param(
            "leg curl 3x12 40",
            situation(),
            "ask: lying leg curl 3×12 at 40 kg | seated leg curl 3×12 at 40 kg",
            id="leg curl 3x12 40",
        ),
        pytest.param(
            "fly 3x12 12",
            situation(),
            "ask: cable fly 3×12 at 12 kg | dumbbell fly 3×12 at 12 kg each | pec deck 3×12 at 12 kg",
            id="fly 3x12 12",
        ),
        pytest.param(
            "incline 26s 3x8", situation(), "incline dumbbell bench press 3×8 at 26 kg each", id="incline 26s 3x8"
        ),
        pytest.param(
            "bench 3x5 800",
            situation(last={"barbell bench press": "80"}),
            "ask: barbell bench press 3×5 at 800 kg",
            id="bench 3x5 800",
        ),
        pytest.param(
            "bench 3x5 8",
            situation(last={"barbell bench press": "80"}),
            "ask: barbell bench press 3×5 at 8 kg",
            id="bench 3x5 8",
        ),
        pytest.param("front squat 4x4 1?0", situation(), "ask: ", id="front squat 4x4 1?0"),
        pytest.param("glorp 3x10 50", situation(), "ask: ", id="glorp 3x10 50"),
        pytest.param("3x12 40", situation(), "ask: ", id="3x12 40"),
        pytest.param("80x5", situation(), "ask: ", id="80x5"),
        pytest.param("12", situation(), "ask: ", id="12"),
        pytest.param("felt good today", situation(), "no sets", id="felt good today"),
    ],
)
def test_open_messages_are_asked(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
