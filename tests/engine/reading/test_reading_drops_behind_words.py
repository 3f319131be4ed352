"""Drops and sets to failure told behind words, with a load of their own. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
leg extension 50 3x12, drop 30x15 => leg extension 3×12 at 50 kg, 15 at 30 kg drop
leg extension 3x12 50, drop 30x15 20x20 => leg extension 3×12 at 50 kg, 15 at 30 kg drop, 20 at 20 kg drop
leg extension 50 3x12 (last one drop 30x15) => leg extension 3×12 at 50 kg, 15 at 30 kg drop
lat raise 10 3x15, the last with a drop: 6 for 20 => dumbbell lateral raise 3×15 at 10 kg each, 20 at 6 kg each drop
pushdowns 32.5 3x12, last one ran into a drop: 20 for 15 => triceps pushdown 3×12 at 32.5 kg, 15 at 20 kg drop
pushdowns 32.5 3x12, last one turned into a drop set: 20 for 15 => triceps pushdown 3×12 at 32.5 kg, 15 at 20 kg drop
pushdowns 32.5 3x12, last one ran straight into 20 for 15 => triceps pushdown 3×12 at 32.5 kg, 15 at 20 kg drop
pushdowns 32.5 3x12, last set had a drop to 20x15 => triceps pushdown 3×12 at 32.5 kg, 15 at 20 kg drop
trizepsdrücken 32,5 3x12, beim letzten noch ein dropsatz: 20x15 => triceps pushdown 3×12 at 32.5 kg, 15 at 20 kg drop
leg extension 50 3x12, dernière en dégressif : 30x15 => leg extension 3×12 at 50 kg, 15 at 30 kg drop
leg extension 50 3x12, ultima in drop set: 30x15 => leg extension 3×12 at 50 kg, 15 at 30 kg drop
leg extension 50 3x12, laatste met dropset: 30x15 => leg extension 3×12 at 50 kg, 15 at 30 kg drop
leg extension 50 3x12, ostatnia z drop setem: 30x15 => leg extension 3×12 at 50 kg, 15 at 30 kg drop
leg extension 50 3x12, último com drop: 30x15 => leg extension 3×12 at 50 kg, 15 at 30 kg drop
разгибания ног 50 3х12, последний с дропом: 30х15 => leg extension 3×12 at 50 kg, 15 at 30 kg drop
leg extension 50 3x12, sista med dropset: 30x15 => leg extension 3×12 at 50 kg, 15 at 30 kg drop
cable fly 15kg x 12, stripped it to 10 for another 8 => cable fly 12 at 15 kg, 8 at 10 kg drop
cable fly 15kg x 12, then 10 for another 8 => cable fly 12 at 15 kg, 8 at 10 kg
leg ext 65x12, 45x10, 30 to failure: 14 => leg extension 12 at 65 kg, 10 at 45 kg, 14 at 30 kg to failure
dips to failure: 20, 17 => dip 20 to failure, 17 to failure
leg ext 42kg to failure: 20, 17 => leg extension 20 at 42 kg to failure, 17 at 42 kg to failure
leg ext 42 to failure: 20, 32x15 => leg extension 20 at 42 kg to failure, 15 at 32 kg
bench 100x5, 80 amrap got 12 => barbell bench press 5 at 100 kg, 12 at 80 kg
bench 3x5 80, then 60 for max reps, got 15 => barbell bench press 3×5 at 80 kg, 15 at 60 kg
kniebeuge 100x5, dann 80 bis muskelversagen: 12 => barbell back squat 5 at 100 kg, 12 at 80 kg to failure
присед 100х5, потом 80 до отказа: 12 => barbell back squat 5 at 100 kg, 12 at 80 kg to failure
bench 80 to failure: 12 10 => barbell bench press 12 at 80 kg to failure, 10 at 80 kg to failure
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_drop_or_a_set_to_failure_has_its_own_load(text, context, meant) -> None:
    assert said(text, context) == meant
