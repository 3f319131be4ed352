"""What came of a wish: the result counts, at the load of the wish unless it tells its own; in doubt it is asked.

Common practice, no source.
"""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said
from tests.engine.reading.test_reading_requests_worded import BENCHING

RESULTS = (
    ("wanted bench 95x5, got 95x4", "barbell bench press 4 at 95 kg"),
    ("wanted bench 95x5, got 4", "barbell bench press 4 at 95 kg"),
    ("aimed for 95x5, managed 4", "barbell bench press 4 at 95 kg"),
    ("goal was 95x5, got 4", "barbell bench press 4 at 95 kg"),
    ("wanted 95x5 but only 4", "barbell bench press 4 at 95 kg"),
    ("was going for 95x6, got 5", "barbell bench press 5 at 95 kg"),
    ("should have been 95x6, got 5", "barbell bench press 5 at 95 kg"),
    ("hoped for 5 but 95x4", "barbell bench press 4 at 95 kg"),
    ("wollte 95x5, habe 4 geschafft", "barbell bench press 4 at 95 kg"),
    ("quería 95x5, hice 4", "barbell bench press 4 at 95 kg"),
    ("aimed for 8 got 6 at 80", "barbell bench press 6 at 80 kg"),
)


@pytest.mark.parametrize(("text", "meant"), [pytest.param(*row, id=row[0]) for row in RESULTS])
def test_the_result_of_a_wish_is_the_set(text: str, meant: str) -> None:
    assert said(text, BENCHING) == meant


IN_DOUBT = (
    "wanted 95x5, 5",
    "hoped for 95x5, 4",
    "coach wanted 5x5 at 85, did 4x5",
    "wanted 5x5 at 85 but only got 4x5",
    "plan was 5x5 at 85, did 4x5",
    "coach happy: squat 3x5 90",
    "my kid counted my reps: bench 80x8",
)


@pytest.mark.parametrize("text", IN_DOUBT)
def test_what_may_be_another_load_or_somebody_elses_is_asked(text: str) -> None:
    assert said(text, BENCHING).startswith("ask: ")
