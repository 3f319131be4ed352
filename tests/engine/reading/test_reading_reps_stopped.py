"""A rep or a load that was not made, told by how it ended: it died, got stuck, buried me."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
deadlift 180x3, fourth died at the knee => conventional deadlift 3 at 180 kg missed
deadlift 180x3, 4th one just stalled => conventional deadlift 3 at 180 kg missed
deadlift 180x3, the fourth rep got stuck => conventional deadlift 3 at 180 kg missed
bench 90x5, sixth came crashing down => barbell bench press 5 at 90 kg missed
bench 90x5 (6th wouldn't move), 80x8 => barbell bench press 5 at 90 kg missed, 8 at 80 kg
bench 90x5, fifth failed => barbell bench press 4 at 90 kg missed
bench 90x5, pinned on the sixth => barbell bench press 5 at 90 kg missed
squatted 120 for 4, got buried on the fifth => barbell back squat 4 at 120 kg missed
bench 80 5 5 4, fifth failed => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
bank 80 kg 5, 5, 4, den fünften im letzten Satz nicht geschafft => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
bankdrücken 80 5 5 4, die fünfte ging nicht mehr => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
bank 3x5 80, letzte Wiederholung im letzten Satz nicht geschafft => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
bankdrukken 80 5 5 4, vijfde in de laatste set gemist => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
przysiad 80 5 5 4, piąte w ostatniej serii nie weszło => barbell back squat 2×5 at 80 kg, 4 at 80 kg missed
жим лежа 80 5 5 4, пятый в последнем подходе не пошел => barbell bench press 2×5 at 80 kg, 4 at 80 kg missed
squat 120x4, stuck on 5 => barbell back squat 4 at 120 kg missed
squat 120x4, folded on rep 5 => barbell back squat 4 at 120 kg missed
squat 3x4 120, last rep died halfway => barbell back squat 2×4 at 120 kg, 3 at 120 kg missed
squat 120x4, 125x2, 130 buried me => barbell back squat 4 at 120 kg, 2 at 125 kg, 0 at 130 kg missed
deadlift 200x1, 210 wouldn't leave the floor => conventional deadlift 1 at 200 kg, 0 at 210 kg missed
deadlift 190x2, second died at the knee => conventional deadlift 1 at 190 kg missed
deadlift 200x1, second died => ask: conventional deadlift 1 at 200 kg
squat 3x5 100, third died => ask:
squat 120x4, 5 got stuck => ask: barbell back squat 4 at 120 kg, 5 at 120 kg missed
bench 90x5, failed at rep 3 => ask: barbell bench press 2 at 90 kg missed
squat 120x4, fifth stalled but got it => ask: barbell back squat 4 at 120 kg
squat 5x5 100, legs died on the 3rd set => barbell back squat 5×5 at 100 kg
bench 3x8 60, phone died on the last set => barbell bench press 3×8 at 60 kg
bench 3x8 60, stuck in traffic before => barbell bench press 3×8 at 60 kg
"""),
)
def test_a_rep_that_ended_on_the_way_is_missed_or_asked_about(text: str, known: Context, meant: str) -> None:
    assert said(text, known).rstrip() == meant
