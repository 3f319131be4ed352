"""Which of a name's lifts an answer means: by its equipment, or by a name that several go by in turn."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
row 60x8 | seated, machine => machine row 8 at 60 kg
row 60x8 | machine seated => machine row 8 at 60 kg
row 60x8 | t bar => t-bar row 8 at 60 kg
row 60x8 | seated => seated cable row 8 at 60 kg
press 40x8 | shoulder, barbell | overhead => barbell overhead press 8 at 40 kg
press 40x8 | barbell shoulder => barbell overhead press 8 at 40 kg
press 40x8 | db shoulder => dumbbell shoulder press 8 at 40 kg each
press 40x8 | shoulder =>
press 40x8 | shoulder | machine => machine shoulder press 8 at 40 kg
"""),
)
def test_equipment_that_was_said_is_the_one_recorded(told, standing):
    assert standing_after(told) == standing
