"""A day to begin on is of a plan; a place that was closed leaves it open whether the sets were done."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
bench from monday 4x5 => ask: barbell bench press 4×5
bench, from monday 4x5 => ask: barbell bench press 4×5
squat from monday: 4x5 100 => ask: barbell back squat 4×5 at 100 kg
bench from monday on 3x5 => no sets
squat 3x5 100, from monday on 4x5 => barbell back squat 3×5 at 100 kg
bench from monday 3x5 80 => barbell bench press 3×5 at 80 kg on 2025-03-10
squat 4x5 100 from monday => barbell back squat 4×5 at 100 kg on 2025-03-10
squat 3x5 100, deload starting monday => barbell back squat 3×5 at 100 kg
kniebeuge 3x5 100, ab montag 4x5 => barbell back squat 3×5 at 100 kg
kniebeuge ab montag 4x5 100 => no sets
squat à partir de lundi 4x5 100 => no sets
sentadilla a partir del lunes 4x5 100 => no sets
squat da lunedì in poi 4x5 => no sets
squat 3x5 100 vanaf maandag 4x5 => barbell back squat 3×5 at 100 kg
przysiad od poniedziałku 4x5 => ask: barbell back squat 4×5
agachamento a partir de segunda 4x5 => no sets
присед с понедельника 4x5 => ask: barbell back squat 4×5
knäböj från måndag 4x5 => ask: barbell back squat 4×5
knäböj från måndag 4x5 100 => barbell back squat 4×5 at 100 kg on 2025-03-10
knäböj från och med måndag 4x5 => no sets
kniebeuge 3x5 100 aber studio war zu => ask: barbell back squat 3×5 at 100 kg
kniebeuge 3x5 100 aber das gym war zu => ask: barbell back squat 3×5 at 100 kg
had a squat pb 140x1 but gym closed after => barbell back squat 1 at 140 kg
squat 3x5 100 but the gym closed early => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_begins_on_a_day_is_no_set_of_its_past(text, context, meant) -> None:
    assert said(text, context) == meant
