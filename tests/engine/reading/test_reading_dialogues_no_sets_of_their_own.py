"""Words behind standing sets that tell no set of their own: a unit apart, the sets once more with their day, sets "with
dumbbells" where there were none, what somebody is to begin, and sets or reps that could have been.
"""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

NO_MORE_SETS = """
bench 3x8 60 | 7 reps, and in pounds => 3×8 at 60 kg
bench 3x8 60 | 7, in lbs => 3×8 at 60 kg
bench 3x8 60 | in pounds, 7 reps => 3×8 at 60 kg
bench 3x8 60 | 7 wdh, und in pfund => 3×8 at 60 kg
bench 3x8 60 | 7 reps y en libras => 3×8 at 60 kg
bench 3x8 60 | 65x7, in pounds => 3×8 at 60 kg, 7 at 65 lb
squat 3x5 100 | it was 3x5 100 yesterday => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | those were 3x5 at 100 on monday => 3×5 at 100 kg on 2025-03-10
squat 3x5 100 | that was yesterday, 3x5 100 => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | no, 3x5 100 yesterday => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | the 3x5 100 was yesterday => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | it was 3x5 yesterday => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | das war 3x5 100 gestern => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | fue 3x5 100 ayer => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | c'était 3x5 100 hier => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | era 3x5 100 ieri => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | het was 3x5 100 gisteren => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | to było 3x5 100 wczoraj => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | foi 3x5 100 ontem => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | это было 3x5 100 вчера => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | det var 3x5 100 igår => 3×5 at 100 kg on 2025-03-13
squat 3x5 100 | it was 3x5 105 yesterday => 3×5 at 100 kg
squat 3x5 100 | sunday was 3x5 100 => 3×5 at 100 kg
squat 3x5 100 | on sunday it was 3x5 100 => 3×5 at 100 kg
squat 3x5 100 | squat 3x5 100 yesterday => 3×5 at 100 kg; 3×5 at 100 kg on 2025-03-13
bench 3x8 60 | the dumbbell ones were 22 => 3×8 at 60 kg
bench 3x8 60 | the cable ones were 22 => 3×8 at 60 kg
bench 3x8 60 | die kurzhantelsätze waren 22 => 3×8 at 60 kg
bench 3x8 60 | los sets con mancuernas fueron 22 => 3×8 at 60 kg
db bench 24x8 | squat 100x5 | the db ones were 22 => dumbbell bench press 8 at 22 kg each; 5 at 100 kg
bench 3x8 60 | db bench 3x8 24 | the barbell ones were 62.5 => 3×8 at 62.5 kg; dumbbell bench press 3×8 at 24 kg each
bench 3x8 60 | monday i start 5x5 => 3×8 at 60 kg
bench 3x8 60 | i start monday with 5x5 => 3×8 at 60 kg
bench 3x8 60 | starting 5x5 on monday => 3×8 at 60 kg
bench 3x8 60 | we begin 5x5 monday => 3×8 at 60 kg
bench 3x8 60 | montag fange ich mit 5x5 an => 3×8 at 60 kg
bench 3x8 60 | el lunes empiezo con 5x5 => 3×8 at 60 kg
bench 3x8 60 | lundi je commence 5x5 => 3×8 at 60 kg
bench 3x8 60 | lunedì inizio con 5x5 => 3×8 at 60 kg
bench 3x8 60 | maandag begin ik met 5x5 => 3×8 at 60 kg
bench 3x8 60 | w poniedziałek zaczynam 5x5 => 3×8 at 60 kg
bench 3x8 60 | segunda começo 5x5 => 3×8 at 60 kg
bench 3x8 60 | в понедельник начинаю 5x5 => 3×8 at 60 kg
bench 3x8 60 | på måndag börjar jag med 5x5 => 3×8 at 60 kg
bench 3x8 60 | monday i started with 5x5 => 3×8 at 60 kg; 5×5 at 60 kg on 2025-03-10
bench 3x8 60 | 2 sätze noch drin => 3×8 at 60 kg
bench 3x8 60 | 2 more sets in me => 3×8 at 60 kg
bench 3x8 60 | had 2 more sets in me => 3×8 at 60 kg
bench 3x8 60 | could have done 2 more sets => 3×8 at 60 kg
bench 3x8 60 | hade 2 set till i mig => 3×8 at 60 kg
bench 3x8 60 | 2 more sets => 5×8 at 60 kg
bench 3x8 60 | 2 reps in me => 3×8 at 60 kg 2 in reserve
bench 3x8 60 | 2 wdh noch drin => 3×8 at 60 kg 2 in reserve
bench 3x8 60 | 2 répétitions dans le réservoir => 3×8 at 60 kg 2 in reserve
bench 3x8 60 | 2 reps sobrando => 3×8 at 60 kg 2 in reserve
bench 3x8 60 | 2 herhalingen over => 3×8 at 60 kg 2 in reserve
bench 60x5 | reps in reserve 2 => 5 at 60 kg 2 in reserve
bench 60x5 | 60 for 5, reps in reserve 2 => 5 at 60 kg, 5 at 60 kg 2 in reserve
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(NO_MORE_SETS))
def test_what_is_no_set_of_its_own_adds_none(told: str, standing: str) -> None:
    assert unnamed(standing_after(told)) == standing


def unnamed(standing: str) -> str:
    """The sets without the names of the lifts with a barbell."""
    return standing.replace("barbell bench press ", "").replace("barbell back squat ", "")
