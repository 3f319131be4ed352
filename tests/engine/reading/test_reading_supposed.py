"""Sets of a sentence that only supposes them are none, or asked about. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
if bench 3x5 80 feels ok next week i'll go 82.5 => no sets
if squat 3x5 100 goes well i'll try 105 => no sets
wenn kniebeuge 3x5 100 klappt, gehe ich nächste woche auf 105 => no sets
si squat 3x5 100 passe bien je tenterai 105 la semaine prochaine => no sets
si sentadilla 3x5 100 sale bien la próxima semana subo a 105 => no sets
se panca 3x5 80 va bene la prossima settimana provo 82,5 => no sets
als squat 3x5 100 goed gaat doe ik volgende week 105 => no sets
jeśli przysiad 3x5 100 pójdzie dobrze, w przyszłym tygodniu 105 => no sets
se agachamento 3x5 100 for bem, semana que vem 105 => no sets
если присед 3х5 100 пойдёт, на следующей неделе 105 => no sets
om knäböj 3x5 100 går bra kör jag 105 nästa vecka => no sets
falls bankdrücken 3x5 80 gut geht, mache ich 82,5 => ask: barbell bench press 3×5 at 80 kg
if anyone asks, bench 3x5 80 => barbell bench press 3×5 at 80 kg
als laatste squat 3x5 100 => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_sets_that_are_only_supposed_are_not_recorded(text, context, meant) -> None:
    assert said(text, context) == meant
