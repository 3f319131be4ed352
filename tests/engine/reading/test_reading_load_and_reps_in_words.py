"""A load and its reps told apart, once or several times, in figures or words. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
militärpress 45 kg, fem reps, två gånger => barbell overhead press 2×5 at 45 kg
ohp 45 kg, five reps, twice => barbell overhead press 2×5 at 45 kg
bankdrücken 45 kg, fünf wdh, zweimal => barbell bench press 2×5 at 45 kg
press banca 45 kg, cinco repeticiones, dos veces => barbell bench press 2×5 at 45 kg
développé couché 45 kg, cinq reps, deux fois => barbell bench press 2×5 at 45 kg
panca piana 45 kg, cinque ripetizioni, due volte => barbell bench press 2×5 at 45 kg
bankdrukken 45 kg, vijf herhalingen, twee keer => barbell bench press 2×5 at 45 kg
wyciskanie leżąc 45 kg, pięć powtórzeń, dwa razy => barbell bench press 2×5 at 45 kg
supino 45 kg, cinco repetições, duas vezes => barbell bench press 2×5 at 45 kg
жим лежа 45 кг, пять повторов, два раза => barbell bench press 2×5 at 45 kg
bench 100 kg, 5 reps, 90 kg, 6 reps, twice => ask: barbell bench press 5 at 100 kg, 2×6 at 90 kg
leg press one eighty, twelve reps, did that three times => leg press 3×12 at 180 kg
squat two twenty five, five reps => barbell back squat 5 at 225 kg
squat one forty 5 reps => barbell back squat 5 at 140 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_load_and_its_reps_are_one_set_told_so_often(text, context, meant) -> None:
    assert said(text, context) == meant
