"""Warm-ups, drops, rest-pause, misses, partials."""

# ruff: noqa: E501 — the readings of a table stand on one line each

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param(
            "warm up: squat bar x10 60x5",
            situation(),
            "barbell back squat 10 at 20 kg warmup, 5 at 60 kg warmup",
            id="warm up: squat bar x10 60x5",
        ),
        pytest.param(
            "squat wu 60x5, 80x3 / 100 5 5 5",
            situation(),
            "barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 3×5 at 100 kg",
            id="squat wu 60x5, 80x3 / 100 5 5 5",
        ),
        pytest.param(
            "bench (w) 40x8, 60x5 (w), 80x5",
            situation(),
            "barbell bench press 8 at 40 kg warmup, 5 at 60 kg warmup, 5 at 80 kg",
            id="bench (w) 40x8, 60x5 (w), 80x5",
        ),
        pytest.param(
            "squat 60x5 (warm up) 80x3 (warm up) 100x5 100x5",
            situation(),
            "barbell back squat 5 at 60 kg warmup, 3 at 80 kg warmup, 2×5 at 100 kg",
            id="squat 60x5 (warm up) 80x3 (warm up) 100x5 100x5",
        ),
        pytest.param(
            "ohp empty bar 2x10, 40x5 40x5",
            situation(),
            "barbell overhead press 2×10 at 20 kg warmup, 2×5 at 40 kg",
            id="ohp empty bar 2x10, 40x5 40x5",
        ),
        pytest.param(
            "squat 60x5 80x5 100x5",
            situation(),
            "barbell back squat 5 at 60 kg, 5 at 80 kg, 5 at 100 kg",
            id="squat 60x5 80x5 100x5",
        ),
        pytest.param(
            "leg ext 45x12->35x9", situation(), "leg extension 12 at 45 kg, 9 at 35 kg drop", id="leg ext 45x12->35x9"
        ),
        pytest.param(
            "curl drop set 16x10 12x8 8x8",
            situation(doing="dumbbell curl"),
            "ask: dumbbell curl 10 at 16 kg each, 8 at 12 kg each drop, 8 at 8 kg each drop | dumbbell curl 16 at 10 kg each, 12 at 8 kg each drop, 8 at 8 kg each drop",
            id="curl drop set 16x10 12x8 8x8",
        ),
        pytest.param(
            "lateral raise 12x10, drop 8x8",
            situation(),
            "ask: dumbbell lateral raise 10 at 12 kg each, 8 at 8 kg each drop | dumbbell lateral raise 12 at 10 kg each, 8 at 8 kg each drop",
            id="lateral raise 12x10, drop 8x8",
        ),
        pytest.param(
            "pec deck 45x12 straight down to 35x8",
            situation(),
            "pec deck 12 at 45 kg, 8 at 35 kg drop",
            id="pec deck 45x12 straight down to 35x8",
        ),
        pytest.param(
            "pec deck triple drop 45x12 35x10 25x8",
            situation(),
            "pec deck 12 at 45 kg, 10 at 35 kg drop, 8 at 25 kg drop",
            id="pec deck triple drop 45x12 35x10 25x8",
        ),
        pytest.param(
            "bench 60x8+3+2",
            situation(),
            "barbell bench press 8 at 60 kg, 3 at 60 kg rest-pause, 2 at 60 kg rest-pause",
            id="bench 60x8+3+2",
        ),
        pytest.param(
            "leg press 50x11(+4+2)",
            situation(),
            "leg press 11 at 50 kg, 4 at 50 kg rest-pause, 2 at 50 kg rest-pause",
            id="leg press 50x11(+4+2)",
        ),
        pytest.param(
            "curl rp 14/6/3 20kg",
            situation(doing="ez-bar curl"),
            "ez-bar curl 14 at 20 kg, 6 at 20 kg rest-pause, 3 at 20 kg rest-pause",
            id="curl rp 14/6/3 20kg",
        ),
        pytest.param(
            "leg extension 40 18+4+4+3",
            situation(),
            "leg extension 18 at 40 kg, 2×4 at 40 kg rest-pause, 3 at 40 kg rest-pause",
            id="leg extension 40 18+4+4+3",
        ),
        pytest.param(
            "bench 5,5,4+miss 100",
            situation(),
            "barbell bench press 2×5 at 100 kg, 4 at 100 kg missed",
            id="bench 5,5,4+miss 100",
        ),
        pytest.param("squat 135 miss", situation(), "barbell back squat 0 at 135 kg missed", id="squat 135 miss"),
        pytest.param("bench 100x0", situation(), "barbell bench press 0 at 100 kg missed", id="bench 100x0"),
        pytest.param(
            "bench 100x3 missed the third",
            situation(),
            "barbell bench press 2 at 100 kg missed",
            id="bench 100x3 missed the third",
        ),
        pytest.param(
            "deadlift 200x1 (f)", situation(), "conventional deadlift 0 at 200 kg missed", id="deadlift 200x1 (f)"
        ),
        pytest.param(
            "lateral raise 8kg 12 + 4 partials",
            situation(),
            "dumbbell lateral raise 12 at 8 kg each",
            id="lateral raise 8kg 12 + 4 partials",
        ),
        pytest.param(
            "db curl 12kg 10 + 6 half reps",
            situation(),
            "dumbbell curl 10 at 12 kg each",
            id="db curl 12kg 10 + 6 half reps",
        ),
        pytest.param("bench 80x7½", situation(), "barbell bench press 7 at 80 kg", id="bench 80x7½"),
    ],
)
def test_warm_ups_drops_and_misses(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
