"""What was planned, told beside what was done of it: only what was done counts. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
bench: planned 85 3x5, got 85x5 85x5 85x3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
squat planned 3x5 100, did 5 5 3 => barbell back squat 2×5 at 100 kg, 3 at 100 kg
planned row 3x12 55 on barbell, got 12 12 9 => barbell row 2×12 at 55 kg, 9 at 55 kg
rdl planned 100 3x8, ended up 90 3x8 => romanian deadlift 3×8 at 90 kg
bench 3x5 85 planned, got 85x5 85x5 85x3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
squat 100 for 5 planned, got 4 => barbell back squat 4 at 100 kg
bench: got 85x5 85x5 85x3, planned 85 3x5 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
bench 85x5 85x5 85x3 (planned 3x5) => barbell bench press 2×5 at 85 kg, 3 at 85 kg
kniebeuge: geplant 5x5 100, geschafft 100x5 100x4 => barbell back squat 5 at 100 kg, 4 at 100 kg
bankdrücken geplant 3x5 85, gemacht 5 5 3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
press banca: planeado 3x5 85, hice 85x5 85x5 85x3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
squat prévu 5x5 100, réalisé 5x4 100 => barbell back squat 5×4 at 100 kg
panca: previsto 3x5 85, fatto 85x5 85x5 85x3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
bankdrukken: gepland 3x5 85, gedaan 85x5 85x5 85x3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
wyciskanie: planowane 3x5 85, zrobione 85x5 85x5 85x3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
supino: planeado 3x5 85, feito 85x5 85x5 85x3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
жим лежа: план 85 3х5, получилось 85х5 85х5 85х3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
bänkpress: planerat 3x5 85, gjorde 85x5 85x5 85x3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
{doing: barbell bench press} planned 3x5 85, got 5 5 3 => barbell bench press 2×5 at 85 kg, 3 at 85 kg
squat 3x5 100, planned bench but got ohp 3x5 40 => barbell back squat 3×5 at 100 kg; barbell overhead press 3×5 at 40 kg
legs planned but got bench 3x5 80 => barbell bench press 3×5 at 80 kg
bench planned 3x5 85 and did it => ask: barbell bench press 3×5 at 85 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_of_what_was_planned_and_done_what_was_done_counts(text, context, meant) -> None:
    assert said(text, context) == meant
