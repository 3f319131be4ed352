"""Where a lift is done from, or how its grip was moved, is another lift or a remark. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
bench 3x8 60 from the floor => ask: barbell bench press 3×8 at 60 kg | floor press 3×8 at 60 kg
bench 60x8, from the floor => ask: barbell bench press 8 at 60 kg | floor press 8 at 60 kg
bench 3x8 60 on the floor => floor press 3×8 at 60 kg
deadlift 3x5 100 from the floor => conventional deadlift 3×5 at 100 kg
deadlift 3x5 100 from a deficit => deficit deadlift 3×5 at 100 kg
bench 3x8 60 narrower grip => barbell bench press 3×8 at 60 kg
bench 3x8 60 slightly narrower grip => barbell bench press 3×8 at 60 kg
bench 3x8 60 narrow grip => close-grip bench press 3×8 at 60 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_where_and_how_are_remarks_or_asked(text, context, meant) -> None:
    assert said(text, context) == meant
