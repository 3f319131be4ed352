"""Three numbers of which none says what it counts, in columns: two sets, or so many of so many reps. Common practice,
no source.
"""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

EITHER = "ask: barbell bench press 3 at 80 kg, 8 at 80 kg | barbell bench press 3×8 at 80 kg"
COLUMNS = """
bench | 80 | 3 | 8
bench | 3 | 8 | 80
| bench | 80 | 3 | 8 |
bench - 80kg - 3 - 8
bench – 80 – 3 – 8
bench - 3 - 8 - 80kg
bench; 80; 3; 8
bench 80kg 3 8
bench 80 · 3 · 8
"""


@pytest.mark.parametrize("text", COLUMNS.strip().splitlines())
def test_two_counts_beside_a_load_are_asked_about(text) -> None:
    assert said(text) == EITHER


TOLD = """
bench | 80 | 5 | 5 => ask: barbell bench press 2×5 at 80 kg | barbell bench press 5×5 at 80 kg
bench | 80 | 8 | 3 => ask: barbell bench press 3×8 at 80 kg | barbell bench press 8 at 80 kg, 3 at 80 kg
pull ups | 3 | 8 => ask: pull-up 3, 8 | pull-up 3×8
pull ups 3 8 => ask: pull-up 3, 8 | pull-up 3×8
bench | 80 | 8 | 7 => barbell bench press 8 at 80 kg, 7 at 80 kg
bench - 80 - 8 - 8 - 7 => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 5 5 => barbell bench press 2×5 at 80 kg
bench 80, 3, 8 => barbell bench press 3 at 80 kg, 8 at 80 kg
bench 80, 8, 3 => barbell bench press 8 at 80 kg, 3 at 80 kg
bench 80x3 80x8 => barbell bench press 3 at 80 kg, 8 at 80 kg
bench 60 3, 60 8 => barbell bench press 3 at 60 kg, 8 at 60 kg
bench | 80 | 3 sets | 8 reps => barbell bench press 3×8 at 80 kg
pull ups 8 3 => pull-up 8, 3
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_falls_or_says_what_it_counts_is_read(text, context, meant) -> None:
    assert said(text, context) == meant
