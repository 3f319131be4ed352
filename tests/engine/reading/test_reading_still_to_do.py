"""What is still to be done is a plan; how many sets are to come says nothing of those told. Common practice."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
deadlift 3x5 130 done, bench 3x8 65 still to go => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130 done, bench 3x8 65 remaining => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130 done, bench 3x8 65 is next => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130 done, bench 3x8 65 and row 3x10 50 still to go => conventional deadlift 3×5 at 130 kg
done: deadlift 3x5 130, to go: bench 3x8 65 => conventional deadlift 3×5 at 130 kg
kreuzheben 3x5 130 fertig, bankdrücken 3x8 65 kommt noch => conventional deadlift 3×5 at 130 kg
kreuzheben 3x5 130 fertig, bankdrücken 3x8 65 noch offen => conventional deadlift 3×5 at 130 kg
sentadilla 3x5 130 hecho, press banca 3x8 65 por hacer => barbell back squat 3×5 at 130 kg
squat 3x5 130 fait, développé couché 3x8 65 reste à faire => barbell back squat 3×5 at 130 kg
squat 3x5 130 fatto, panca piana 3x8 65 ancora da fare => barbell back squat 3×5 at 130 kg
squat 3x5 130 klaar, bankdrukken 3x8 65 nog te doen => barbell back squat 3×5 at 130 kg
przysiad 3x5 130 zrobione, wyciskanie leżąc 3x8 65 do zrobienia => barbell back squat 3×5 at 130 kg
agachamento 3x5 130 feito, supino 3x8 65 falta fazer => barbell back squat 3×5 at 130 kg
присед 3x5 130 сделал, жим лежа 3x8 65 ещё впереди => barbell back squat 3×5 at 130 kg
knäböj 3x5 130 klart, bänkpress 3x8 65 kvar att göra => barbell back squat 3×5 at 130 kg
bench 3x8 65 to go => no sets
deadlift 3x5 130, 2 to go => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130 2 to go => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130, 2 sets still to go => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130, 2 more exercises to go => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130, 3 weeks to go => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130, bench to go => conventional deadlift 3×5 at 130 kg
deadlift 3x5 130, still some energy remaining => conventional deadlift 3×5 at 130 kg
kreuzheben 3x5 130, noch 2 sätze offen => conventional deadlift 3×5 at 130 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_is_still_to_do_is_no_set(text, context, meant) -> None:
    assert said(text, context) == meant
