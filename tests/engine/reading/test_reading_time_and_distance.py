"""Time and distance, and the numbers beside them that are no sets."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("plank 60s", situation(), "plank 60 s", id="plank 60s"),
        pytest.param("plank 45 sec", situation(), "plank 45 s", id="plank 45 sec"),
        pytest.param("plank 1:30", situation(), "plank 90 s", id="plank 1:30"),
        pytest.param("plank 1'30\"", situation(), "plank 90 s", id="plank 1'30\""),
        pytest.param('plank 40"', situation(), "plank 40 s", id='plank 40"'),
        pytest.param("plank 2 min", situation(), "plank 120 s", id="plank 2 min"),
        pytest.param("plank 4x40s", situation(), "plank 4×40 s", id="plank 4x40s"),
        pytest.param("plank 3x60", situation(), "plank 3×60 s", id="plank 3x60"),
        pytest.param(
            "farmers walk 32kg 40m", situation(), "farmer's walk 40 m at 32 kg each", id="farmers walk 32kg 40m"
        ),
        pytest.param(
            "sled push 100kg 25 metres", situation(), "sled push 25 m at 100 kg", id="sled push 100kg 25 metres"
        ),
        pytest.param(
            "sled push 80kg 25m in 18s", situation(), "sled push 25 m in 18 s at 80 kg", id="sled push 80kg 25m in 18s"
        ),
        pytest.param(
            "farmers walk 3x40m 32s", situation(), "farmer's walk 3×40 m at 32 kg each", id="farmers walk 3x40m 32s"
        ),
        pytest.param(
            "row 3x12 60 rest 90s",
            situation(doing="barbell row"),
            "barbell row 3×12 at 60 kg",
            id="row 3x12 60 rest 90s",
        ),
        pytest.param(
            "bench 3x8 70, 2 min between",
            situation(),
            "barbell bench press 3×8 at 70 kg",
            id="bench 3x8 70, 2 min between",
        ),
        pytest.param(
            "squat 3x5 100 3s pause", situation(), "barbell back squat 3×5 at 100 kg", id="squat 3x5 100 3s pause"
        ),
        pytest.param("squat 3x5 100 4010", situation(), "barbell back squat 3×5 at 100 kg", id="squat 3x5 100 4010"),
        pytest.param("bench 3x8 30° 60", situation(), "barbell bench press 3×8 at 60 kg", id="bench 3x8 30° 60"),
        pytest.param("leg ext 3x12 50 seat 4", situation(), "leg extension 3×12 at 50 kg", id="leg ext 3x12 50 seat 4"),
        pytest.param("dead hang 45s 40s", situation(), "dead hang 45 s, 40 s", id="dead hang 45s 40s"),
        pytest.param("wall sit 60 50 45", situation(), "wall sit 60 s, 50 s, 45 s", id="wall sit 60 50 45"),
        pytest.param("plank 10kg 3x45s", situation(), "plank 3×45 s at +10 kg", id="plank 10kg 3x45s"),
        pytest.param("sled drag 60kg 3 x 30m", situation(), "sled drag 3×30 m at 60 kg", id="sled drag 60kg 3 x 30m"),
    ],
)
def test_time_distance_and_what_is_none(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
