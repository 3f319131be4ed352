"""Corrections in ten languages."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
kniebeuge 3x5 100 | es waren 4, keine 5 => barbell back squat 3×4 at 100 kg
kniebeuge 3x5 100 | 10 natürlich => barbell back squat 2×5 at 100 kg, 10 at 100 kg
peso muerto 3x5 120 | eran 4 reps, no 5 => conventional deadlift 3×4 at 120 kg
peso muerto 3x5 120 | eran 125, no 120 => conventional deadlift 3×5 at 125 kg
wyciskanie 3x5 80 | było 4 powtórzenia, nie 5 => barbell bench press 3×4 at 80 kg
kniebeuge 3x5 100 | letzter satz war 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
kniebeuge 3x5 100 | zweiter satz war 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
kniebeuge 3x5 100 | der zweite war 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
kniebeuge 3x5 100 | nein, 102,5 => barbell back squat 3×5 at 102.5 kg
kniebeuge 3x5 100 | sorry 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
kniebeuge 3x5 100 | 102,5 nicht 100 => barbell back squat 3×5 at 102.5 kg
kniebeuge 3x5 100 | nur 2 sätze => barbell back squat 2×5 at 100 kg
kniebeuge 3x5 100 | es waren 4 sätze => barbell back squat 4×5 at 100 kg
kniebeuge 3x5 100 | das war gestern => barbell back squat 3×5 at 100 kg on 2025-03-13
kniebeuge 3x5 100 | lösche den letzten satz => barbell back squat 2×5 at 100 kg
kniebeuge 3x5 100 | das war frontkniebeuge => barbell front squat 3×5 at 100 kg
kniebeuge 3x5 100 | letzter satz rpe 9 => barbell back squat 2×5 at 100 kg, 5 at 100 kg RPE 9
kniebeuge 3x5 100 | noch ein satz => barbell back squat 4×5 at 100 kg
kniebeuge 3x5 100 | nochmal => barbell back squat 4×5 at 100 kg
kniebeuge 3x5 100 | ich meinte 105 => barbell back squat 3×5 at 105 kg
kniebeuge 3x5 100 | die ersten zwei waren 90 => barbell back squat 2×5 at 90 kg, 5 at 100 kg
sentadilla 3x5 100 | la última fue 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
sentadilla 3x5 100 | la segunda fue 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
sentadilla 3x5 100 | perdón, 105 => barbell back squat 3×5 at 105 kg
sentadilla 3x5 100 | eran 105 no 100 => barbell back squat 3×5 at 105 kg
sentadilla 3x5 100 | fue ayer => barbell back squat 3×5 at 100 kg on 2025-03-13
sentadilla 3x5 100 | borra la última => barbell back squat 2×5 at 100 kg
sentadilla 3x5 100 | solo hice 2 => barbell back squat 2×5 at 100 kg
sentadilla 3x5 100 | otra más => barbell back squat 4×5 at 100 kg
sentadilla 3x5 100 | quise decir 105 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | la dernière était 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | la deuxième était 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
squat 3x5 100 | pardon, 105 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | 105 pas 100 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | c'était hier => barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | supprime la dernière => barbell back squat 2×5 at 100 kg
squat 3x5 100 | encore une => barbell back squat 4×5 at 100 kg
squat 3x5 100 | l'ultima era 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | la seconda era 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
squat 3x5 100 | scusa, 105 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | 105 non 100 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | era ieri => barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | cancella l'ultima => barbell back squat 2×5 at 100 kg
squat 3x5 100 | de laatste was 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | de tweede was 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
squat 3x5 100 | sorry, 105 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | 105 niet 100 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | dat was gisteren => barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | verwijder de laatste => barbell back squat 2×5 at 100 kg
squat 3x5 100 | nog een keer => barbell back squat 4×5 at 100 kg
squat 3x5 100 | ostatnia była 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | druga była 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
squat 3x5 100 | 105 nie 100 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | to było wczoraj => barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | usuń ostatnią => barbell back squat 2×5 at 100 kg
squat 3x5 100 | a última foi 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | a segunda foi 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
squat 3x5 100 | desculpa, 105 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | 105 não 100 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | foi ontem => barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | apaga a última => barbell back squat 2×5 at 100 kg
squat 3x5 100 | mais uma => barbell back squat 4×5 at 100 kg
присед 3x5 100 | последний был 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
присед 3x5 100 | второй был 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
присед 3x5 100 | извини, 105 => barbell back squat 3×5 at 105 kg
присед 3x5 100 | 105 не 100 => barbell back squat 3×5 at 105 kg
присед 3x5 100 | это было вчера => barbell back squat 3×5 at 100 kg on 2025-03-13
присед 3x5 100 | удали последний => barbell back squat 2×5 at 100 kg
присед 3x5 100 | ещё раз => barbell back squat 4×5 at 100 kg
squat 3x5 100 | sista var 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | andra var 4 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
squat 3x5 100 | förlåt, 105 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | 105 inte 100 => barbell back squat 3×5 at 105 kg
squat 3x5 100 | det var igår => barbell back squat 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | ta bort sista => barbell back squat 2×5 at 100 kg
squat 3x5 100 | en till => barbell back squat 4×5 at 100 kg
squat 3x5 100 | une de trop => barbell back squat 2×5 at 100 kg
squat 3x5 100 | al revés => barbell back squat 5×3 at 100 kg
row 3x10 60 | langhantel => barbell row 3×10 at 60 kg
row 3x10 60 | mit der langhantel => barbell row 3×10 at 60 kg
row 3x10 60 | vergiss es =>
row 3x10 60 | da igual =>
row 3x10 60 | con barra => barbell row 3×10 at 60 kg
row 3x10 60 | laisse tomber =>
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_in_languages(told: str, standing: str) -> None:
    assert standing_after(told) == standing
