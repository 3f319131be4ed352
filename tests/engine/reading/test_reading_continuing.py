"""Sets that go on from the ones that stand, with talk between."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import log_after


@pytest.mark.parametrize(
    ("messages", "standing"),
    [
        pytest.param(("plank 60s", "it was 50"), "plank 50 s", id="plank 60s | it was 50"),
        pytest.param(
            ("pull ups 11 9 8", "+5kg x 6", "6"), "pull-up 11, 9, 8, 2×6 at +5 kg", id="pull ups 11 9 8 | +5kg x 6 | 6"
        ),
        pytest.param(
            ("bench 72.5x6", "another 6"), "barbell bench press 2×6 at 72.5 kg", id="bench 72.5x6 | another 6"
        ),
        pytest.param(("bench 72.5x6", "two more"), "barbell bench press 3×6 at 72.5 kg", id="bench 72.5x6 | two more"),
        pytest.param(
            ("bench 72.5x6", "+5 for 3"), "barbell bench press 6 at 72.5 kg, 3 at 77.5 kg", id="bench 72.5x6 | +5 for 3"
        ),
        pytest.param(
            ("bench 72.5x6", "squat 96x5", "bench again 4"),
            "barbell bench press 6 at 72.5 kg; barbell back squat 5 at 96 kg; barbell bench press 4 at 72.5 kg",
            id="bench 72.5x6 | squat 96x5 | bench again 4",
        ),
        pytest.param(
            ("bench 72.5x6", "squat 96x5", "back to bench, 5"),
            "barbell bench press 6 at 72.5 kg; barbell back squat 5 at 96 kg; barbell bench press 5 at 72.5 kg",
            id="bench 72.5x6 | squat 96x5 | back to bench, 5",
        ),
        pytest.param(
            ("bench 72.5x6", "same weight 4 4"),
            "barbell bench press 6 at 72.5 kg, 2×4 at 72.5 kg",
            id="bench 72.5x6 | same weight 4 4",
        ),
        pytest.param(
            ("bench 72.5x6", "same, 4"), "barbell bench press 6 at 72.5 kg, 4 at 72.5 kg", id="bench 72.5x6 | same, 4"
        ),
        pytest.param(
            ("bench 72.5x6", "how long should i rest?", "5"),
            "barbell bench press 6 at 72.5 kg, 5 at 72.5 kg",
            id="bench 72.5x6 | how long should i rest? | 5",
        ),
        pytest.param(
            ("bench 72.5x6", "my mate did 100x5", "5"),
            "barbell bench press 6 at 72.5 kg, 5 at 72.5 kg",
            id="bench 72.5x6 | my mate did 100x5 | 5",
        ),
        pytest.param(
            ("bench 72.5x6", "knee hurts", "5"),
            "barbell bench press 6 at 72.5 kg, 5 at 72.5 kg",
            id="bench 72.5x6 | knee hurts | 5",
        ),
        pytest.param(
            ("bench 72.5x6", "last set 4"),
            "barbell bench press 6 at 72.5 kg, 4 at 72.5 kg",
            id="bench 72.5x6 | last set 4",
        ),
    ],
)
def test_continuing(messages: tuple[str, ...], standing: str) -> None:
    assert log_after(*messages) == standing
