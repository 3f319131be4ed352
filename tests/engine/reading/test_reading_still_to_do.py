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


OPEN = """
next bench 3x8 65 => ask: barbell bench press 3×8 at 65 kg
noch bankdrücken 3x8 65 => ask: barbell bench press 3×8 at 65 kg
noch 3 sätze bankdrücken 65x8 => ask: barbell bench press 3×8 at 65 kg
bankdrücken 65x8, noch zwei sätze => ask: barbell bench press 3×8 at 65 kg
bankdrücken 3x8 65 noch => ask: barbell bench press 4×8 at 65 kg
nächster: bankdrücken 3x8 65 => ask: barbell bench press 3×8 at 65 kg
luego press banca 3x8 65 => ask: barbell bench press 3×8 at 65 kg
encore développé couché 3x8 65 => ask: barbell bench press 3×8 at 65 kg
développé couché 65x8, encore deux séries => ask: barbell bench press 3×8 at 65 kg
ancora panca piana 3x8 65 => ask: barbell bench press 3×8 at 65 kg
panca piana 65x8 ancora due serie => ask: barbell bench press 3×8 at 65 kg
nog bankdrukken 3x8 65 => ask: barbell bench press 3×8 at 65 kg
bankdrukken 65x8, nog twee sets => ask: barbell bench press 3×8 at 65 kg
jeszcze wyciskanie leżąc 3x8 65 => ask: barbell bench press 3×8 at 65 kg
wyciskanie leżąc 65x8, jeszcze dwie serie => ask: barbell bench press 3×8 at 65 kg
ещё жим лежа 3x8 65 => ask: barbell bench press 3×8 at 65 kg
жим лежа 65x8, ещё два подхода => ask: barbell bench press 3×8 at 65 kg
depois supino 3x8 65 => ask: barbell bench press 3×8 at 65 kg
sen bänkpress 3x8 65 => ask: barbell bench press 3×8 at 65 kg
dann bankdrücken 3x8 65 => barbell bench press 3×8 at 65 kg
squat 3x5 100, ancora panca piana 3x8 65 => barbell back squat 3×5 at 100 kg; barbell bench press 3×8 at 65 kg
bench 65x8, 2 more sets => barbell bench press 3×8 at 65 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(OPEN))
def test_what_may_be_still_to_do_is_asked(text, context, meant) -> None:
    """ "Still" and "more" are one word in these languages, and "later" is "then"."""
    assert said(text, context) == meant
