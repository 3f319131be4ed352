"""A load and a count of a lift that stands, told in one line: all of its sets, or so many of them."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
squat 3x5 100 | the squat was 97.5 and 4 reps => barbell back squat 3×4 at 97.5 kg
squat 3x5 100 | squat was 97.5 for 4 => barbell back squat 3×4 at 97.5 kg
squat 3x5 100 // leg ext 3x10 40 | the squat was 90 and 8 reps => barbell back squat 3×8 at 90 kg; leg extension 3×10 at 40 kg
squat 3x5 100 // leg ext 3x10 40 | the leg ext was 50, and only 2 sets => barbell back squat 3×5 at 100 kg; leg extension 2×10 at 50 kg
squat 3x5 100 // leg ext 3x10 40 | leg ext was 50kg, only 2 sets => barbell back squat 3×5 at 100 kg; leg extension 2×10 at 50 kg
squat 3x5 100 | it was 90, 2 sets => barbell back squat 2×5 at 90 kg
squat 3x5 100 | it was 90, 4 sets => barbell back squat 4×5 at 90 kg
squat 3x5 100 | it was 4 reps, 2 sets => barbell back squat 3×5 at 100 kg
squat 3x5 100 | shld be 105 and 4 sets => barbell back squat 4×5 at 105 kg
squat 3x5 100 | should be 4 sets at 105 => barbell back squat 4×5 at 105 kg
squat 3x5 100 | 4 sets and 105 sorry => barbell back squat 4×5 at 105 kg
squat 3x5 100 | waren 105 und 4 sätze => barbell back squat 4×5 at 105 kg
squat 3x5 100 | eran 105 y 4 series => barbell back squat 4×5 at 105 kg
squat 100 5 5 4 | should be 105 and 4 sets => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | should be 105 and 40 sets => barbell back squat 3×5 at 100 kg
squat 100x5 | 100x5 | the squat was 97.5 and 4 reps => barbell back squat 5 at 100 kg, 4 at 97.5 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_a_load_and_a_count_in_one_line(told: str, standing: str) -> None:
    assert standing_after(told) == standing
