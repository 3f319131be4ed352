"""Sets that were weighted from a word on, behind others of the body alone. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
dips 10 10, then weighted 10 6 => ask: dip 2×10, 6 at +10 kg | dip 3×10, 6
dips 10 10, weighted 10 6 => ask: dip 2×10, 6 at +10 kg | dip 3×10, 6
pull ups 8 8 then weighted 20 5 => ask: pull-up 2×8, 20, 5 | pull-up 2×8, 5 at +20 kg
dips 10 10 then weighted 10x6 => ask: dip 2×10, 10×6 | dip 2×10, 6 at +10 kg
pull ups 8 8 then weighted 5 5 => ask: pull-up 2×8, 2×5
fondos 10 10, luego con lastre 10 6 => ask: dip 2×10, 6 at +10 kg | dip 3×10, 6
dips 3x10, then weighted 10 3x6 => dip 3×10, 3×6 at +10 kg
dips 10 10, then weighted 10kg 6 => dip 2×10, 6 at +10 kg
dips 10 10 weighted 10 => dip 2×10 at +10 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_weight_is_not_lost_behind_a_word(text, context, meant) -> None:
    assert said(text, context) == meant
