"""Corrections of several things are taken in full, or not at all."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

IN_FULL = """
bench 3x8 60 | 4 sets not 3 and last was 4 => barbell bench press 3×8 at 60 kg, 4 at 60 kg
bench 3x8 60 | 4 sets not 3, the fourth was 4 => barbell bench press 3×8 at 60 kg, 4 at 60 kg
bench 3x8 60 | 2 sets not 3 and last was 4 => barbell bench press 8 at 60 kg, 4 at 60 kg
bench 3x8 60 | last was 4 and only 2 sets => barbell bench press 8 at 60 kg, 4 at 60 kg
bench 3x8 60 | last didn't count and the first was 4 => barbell bench press 4 at 60 kg, 8 at 60 kg
bench 3x8 60 | last didn't count and last was 4 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | skipped the last one and the first was 4 => barbell bench press 4 at 60 kg, 8 at 60 kg
bench 3x8 60 | delete the first and the second was 4 => barbell bench press 4 at 60 kg, 8 at 60 kg
bench 3x8 60 | delete the last one and all were 75 => barbell bench press 2×8 at 75 kg
bench 3x8 60 | delete the last one and the rest were 75 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | last was a miss and the rest were 75 => barbell bench press 2×8 at 75 kg, 8 at 60 kg missed
bench 3x8 60 | scrap the last one, it was 7 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | squat 3x5 100 | delete the bench and squat was 105 => barbell back squat 3×5 at 105 kg
bench 3x8 60 | squat 3x5 100 | bench didn't happen and squat was 105 => barbell back squat 3×5 at 105 kg
bench 3x8 60 | last one was 50, drop set => barbell bench press 2×8 at 60 kg, 8 at 50 kg drop
kniebeuge 3x5 100 | es waren 4 sätze nicht 3 und der letzte war 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
sentadilla 3x5 100 | eran 4 series no 3 y la última fue 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | c'était 4 séries pas 3 et la dernière était 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | erano 4 serie non 3 e l'ultima era 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | het waren 4 sets niet 3 en de laatste was 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
przysiad 3x5 100 | były 4 serie nie 3 i ostatnia była 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
agachamento 3x5 100 | foram 4 séries não 3 e a última foi 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
присед 3x5 100 | было 4 подхода не 3 и последний был 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
knäböj 3x5 100 | det var 4 set inte 3 och sista var 4 => barbell back squat 3×5 at 100 kg, 4 at 100 kg
"""

TAKEN_BACK = """
bench 3x8 60 | last was 4, no, first was 4 => barbell bench press 4 at 60 kg, 2×8 at 60 kg
bench 3x8 60 | last was 4, no first was 4 => barbell bench press 4 at 60 kg, 2×8 at 60 kg
bench 3x8 60 | last was 4, i mean first was 4 => barbell bench press 4 at 60 kg, 2×8 at 60 kg
bench 3x8 60 | last was 4, sorry, first was 4 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | last was 4, sorry => barbell bench press 2×8 at 60 kg, 4 at 60 kg
bench 3x8 60 | last was 4, no drop set => barbell bench press 2×8 at 60 kg, 4 at 60 kg
bench 3x8 60 | i missed a set and the reps were 4 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | i missed a set => barbell bench press 3×8 at 60 kg
bench 3x8 60 | forgot one set, and the weight was 95 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | i forgot a set, it was 4 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | forgot one, 4 => barbell bench press 3×8 at 60 kg, 4 at 60 kg
bench 3x8 60 | no third set and it was 95 => barbell bench press 3×8 at 60 kg
bench 3x8 60 | no third was 95 => barbell bench press 2×8 at 60 kg, 8 at 95 kg
sentadilla 3x6 82.5 | eran 77,5 y no 80 => barbell back squat 3×6 at 82.5 kg
kniebeuge 3x8 60 | letzter war 4, nein, erster war 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
sentadilla 3x8 60 | la última fue 4, no, la primera fue 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
squat 3x8 60 | la dernière était 4, non, la première était 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
squat 3x8 60 | l'ultima era 4, no, la prima era 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
squat 3x8 60 | laatste was 4, nee, eerste was 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
przysiad 3x8 60 | ostatnia była 4, nie, pierwsza była 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
agachamento 3x8 60 | a última foi 4, não, a primeira foi 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
присед 3x8 60 | последний был 4, нет, первый был 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
knäböj 3x8 60 | sista var 4, nej, första var 4 => barbell back squat 4 at 60 kg, 2×8 at 60 kg
kniebeuge 3x5 100 | einen satz vergessen und das gewicht war 95 => barbell back squat 3×5 at 100 kg
sentadilla 3x5 100 | olvidé una serie y fueron 4 => barbell back squat 3×5 at 100 kg
присед 3x5 100 | забыл подход и было 4 => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(IN_FULL))
def test_all_of_it_or_nothing(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(TAKEN_BACK))
def test_what_is_told_instead_or_of_a_set_more_is_not_taken_for_both(told: str, standing: str) -> None:
    assert standing_after(told) == standing


OF_THOSE = """
bench 3x8 60 | those were 62.5 and 7 and yesterday => barbell bench press 3×8 at 60 kg
bench 3x8 60 | those were 62.5 and yesterday => barbell bench press 3×8 at 62.5 kg on 2025-03-13
bench 3x8 60 | that was yesterday and 75kg => barbell bench press 3×8 at 75 kg on 2025-03-13
bench 3x8 60 | it was 4 at 95 yesterday => barbell bench press 3×8 at 60 kg
bench 3x8 60 | yesterday i did 4 at 95 => barbell bench press 3×8 at 60 kg; barbell bench press 4 at 95 kg on 2025-03-13
bench 3x8 60 | since monday my knee hurts, last was 4 => barbell bench press 2×8 at 60 kg, 4 at 60 kg
bench 3x8 60 | 5 up from monday => barbell bench press 3×8 at 60 kg
bench 3x8 60 | up 5 from monday => barbell bench press 3×8 at 60 kg
bench 3x8 60 | 5 from monday => barbell bench press 3×8 at 60 kg; barbell bench press 5 at 60 kg on 2025-03-10
bench 3x8 60 | no drop set, 4 reps => barbell bench press 3×8 at 60 kg
bench 3x8 60 | no warm up, 4 reps => barbell bench press 3×8 at 60 kg
bench 3x8 60 | no belt, 4 reps => barbell bench press 3×8 at 60 kg, 4 at 60 kg
sentadilla 3x8 60 | la última fue 4 reps, a 95, y fue ayer => barbell back squat 3×8 at 60 kg
squat 3x8 60 | la dernière était 4 reps, à 95, et c'était hier => barbell back squat 3×8 at 60 kg
squat 3x8 60 | l'ultima era 4 reps, a 95, ed era ieri => barbell back squat 3×8 at 60 kg
przysiad 3x8 60 | ostatnia była 4 powt, 95, i to było wczoraj => barbell back squat 3×8 at 60 kg
присед 3x8 60 | последний был 4 повтора, на 95, и это было вчера => barbell back squat 3×8 at 60 kg
kniebeuge 3x8 60 | kein dropsatz, 4 wdh => barbell back squat 3×8 at 60 kg
sentadilla 3x8 60 | sin serie descendente, 4 reps => barbell back squat 3×8 at 60 kg
присед 3x8 60 | не разминка, 4 повтора => barbell back squat 3×8 at 60 kg
kniebeuge 3x8 60 | seit montag tut mein knie weh, letzter war 4 => barbell back squat 2×8 at 60 kg, 4 at 60 kg
squat 3x8 60 | depuis lundi mon genou fait mal, la dernière était 4 => barbell back squat 2×8 at 60 kg, 4 at 60 kg
sentadilla 3x8 60 | desde el lunes me duele la rodilla, la última fue 4 => barbell back squat 2×8 at 60 kg, 4 at 60 kg
bench 3x8 60 | last was 4, in pounds => barbell bench press 3×8 at 60 kg
bench 3x8 60 | last was 95, in pounds => barbell bench press 2×8 at 60 kg, 8 at 95 lb
bench 3x8 60 | last was 95 in pounds => barbell bench press 2×8 at 60 kg, 8 at 95 lb
bench 3x8 60 | it was in lbs and 7 reps => barbell bench press 3×8 at 60 kg
bench 3x8 60 | those were in pounds, and yesterday => barbell bench press 3×8 at 60 lb on 2025-03-13
bench 3x8 60 | it was in lbs, 7 reps not 8 => barbell bench press 3×7 at 60 lb
kniebeuge 3x8 60 | letzter war 95, in pfund => barbell back squat 2×8 at 60 kg, 8 at 95 lb
sentadilla 3x8 60 | la última fue 95, en libras => barbell back squat 2×8 at 60 kg, 8 at 95 lb
squat 3x8 60 | la dernière était 95, en livres => barbell back squat 2×8 at 60 kg, 8 at 95 lb
squat 3x8 60 | l'ultima era 95, in libbre => barbell back squat 2×8 at 60 kg, 8 at 95 lb
squat 3x8 60 | laatste was 95, in pond => barbell back squat 2×8 at 60 kg, 8 at 95 lb
przysiad 3x8 60 | ostatnia była 95, w funtach => barbell back squat 2×8 at 60 kg, 8 at 95 lb
agachamento 3x8 60 | a última foi 95, em libras => barbell back squat 2×8 at 60 kg, 8 at 95 lb
присед 3x8 60 | последний был 95, в фунтах => barbell back squat 2×8 at 60 kg, 8 at 95 lb
knäböj 3x8 60 | sista var 95, i pund => barbell back squat 2×8 at 60 kg, 8 at 95 lb
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(OF_THOSE))
def test_what_is_told_of_sets_that_stand_adds_none(told: str, standing: str) -> None:
    assert standing_after(told) == standing


ALL_BUT_ONE = """
deadlift 3x5 140 | last one 142.5x4 => conventional deadlift 3×5 at 140 kg
deadlift 3x5 140 | first one 142.5x4 => conventional deadlift 3×5 at 140 kg
deadlift 3x5 140 | last one was 142.5x4 => conventional deadlift 2×5 at 140 kg, 4 at 142.5 kg
deadlift 140x5 | deadlift 140x5 | last one 142.5x4 => conventional deadlift 2×5 at 140 kg, 4 at 142.5 kg
bench 3x8 60 | all rpe 8 except the last 9 => barbell bench press 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
bench 3x8 60 | all rpe 8 except the last rpe 9 => barbell bench press 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
bench 3x8 60 | all rpe 8 but the last was 9 => barbell bench press 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
bench 3x8 60 | all rpe 8 but the first was rpe 7 => barbell bench press 8 at 60 kg RPE 7, 2×8 at 60 kg RPE 8
bench 3x8 60 | all rpe 8, last 9 => barbell bench press 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
bench 3x8 60 | all were 75 except the last 80 => barbell bench press 2×8 at 75 kg, 8 at 80 kg
bench 3x8 60 | all rpe 8 except the last => barbell bench press 2×8 at 60 kg RPE 8, 8 at 60 kg
bench 3x8 60 | all 8 reps, last 7 => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 3x8 60 | all 8 reps but the last was 7 => barbell bench press 3×8 at 60 kg
kniebeuge 3x8 60 | alle rpe 8 außer der letzte 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
sentadilla 3x8 60 | todas rpe 8 menos la última 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
squat 3x8 60 | toutes rpe 8 sauf la dernière 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
squat 3x8 60 | tutte rpe 8 tranne l'ultima 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
squat 3x8 60 | alle rpe 8 behalve de laatste 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
przysiad 3x8 60 | wszystkie rpe 8 oprócz ostatnia 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
agachamento 3x8 60 | todas rpe 8 menos a última 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
присед 3x8 60 | все rpe 8 кроме последний 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
knäböj 3x8 60 | alla rpe 8 utom sista 9 => barbell back squat 2×8 at 60 kg RPE 8, 8 at 60 kg RPE 9
kreuzheben 3x5 140 | letzter satz 142,5x4 => conventional deadlift 3×5 at 140 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(ALL_BUT_ONE))
def test_one_of_several_has_what_is_told_of_it(told: str, standing: str) -> None:
    assert standing_after(told) == standing
