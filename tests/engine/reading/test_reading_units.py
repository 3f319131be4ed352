"""Number and unit habits: commas, halves, signs, letters for digits."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    [
        pytest.param("bench 3x8 52,5", situation(), "barbell bench press 3×8 at 52.5 kg", id="bench 3x8 52,5"),
        pytest.param(
            "bench 90,5x5",
            situation(),
            "ask: barbell bench press 5 at 90.5 kg | barbell bench press 5×5 at 90 kg",
            id="bench 90,5x5",
        ),
        pytest.param(
            "curl 12½ 3x10", situation(doing="dumbbell curl"), "dumbbell curl 3×10 at 12.5 kg each", id="curl 12½ 3x10"
        ),
        pytest.param("bench 3×8 60", situation(), "barbell bench press 3×8 at 60 kg", id="bench 3×8 60"),
        pytest.param("bench 3✕8 60", situation(), "barbell bench press 3×8 at 60 kg", id="bench 3✕8 60"),
        pytest.param("жим лежа 3х8 60", situation(), "barbell bench press 3×8 at 60 kg", id="жим лежа 3х8 60"),
        pytest.param(
            "bench · 80x5 · 80x5 · 80x4",
            situation(),
            "barbell bench press 2×5 at 80 kg, 4 at 80 kg",
            id="bench · 80x5 · 80x5 · 80x4",
        ),
        pytest.param("bench – 80x5 – 80x5", situation(), "barbell bench press 2×5 at 80 kg", id="bench – 80x5 – 80x5"),
        pytest.param("bench: 8O x 5", situation(), "barbell bench press 5 at 80 kg", id="bench: 8O x 5"),
        pytest.param("bench 3z10 60", situation(), "barbell bench press 3×10 at 60 kg", id="bench 3z10 60"),
        pytest.param("bench 80xx5", situation(), "barbell bench press 5 at 80 kg", id="bench 80xx5"),
        pytest.param("bench 80x5,, 80x5", situation(), "barbell bench press 2×5 at 80 kg", id="bench 80x5,, 80x5"),
        pytest.param("kb swing 24k 3x15", situation(), "kettlebell swing 3×15 at 24 kg", id="kb swing 24k 3x15"),
        pytest.param("присед 80кг 3х5", situation(), "barbell back squat 3×5 at 80 kg", id="присед 80кг 3х5"),
        pytest.param("deadlift 315# 3x3", situation(), "conventional deadlift 3×3 at 315 lb", id="deadlift 315# 3x3"),
        pytest.param("bench 70kg/154lb x 5", situation(), "barbell bench press 5 at 70 kg", id="bench 70kg/154lb x 5"),
        pytest.param(
            "bench 60kg x 8, 145lb x 6",
            situation(),
            "barbell bench press 8 at 60 kg, 6 at 145 lb",
            id="bench 60kg x 8, 145lb x 6",
        ),
    ],
)
def test_units_and_signs(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
