"""What is told of "it" or "that" behind one set put right is of that set; a day is of what was logged together."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

OF_THE_SET_BEFORE = """
bench 3x8 60 | last was 3, and it was 77.5 => 2×8 at 60 kg, 3 at 77.5 kg
bench 3x8 60 | last was 3. it was 77.5 => 2×8 at 60 kg, 3 at 77.5 kg
bench 3x8 60 | last one was 3 and that was rpe 9 => 2×8 at 60 kg, 3 at 60 kg RPE 9
bench 3x8 60 | set 2 was 7 and it was 62.5 => 8 at 60 kg, 7 at 62.5 kg, 8 at 60 kg
bench 3x8 60 | set 2 was 62.5 and it was 7 reps => 8 at 60 kg, 7 at 62.5 kg, 8 at 60 kg
bench 3x8 60 | set 2 was 7 not 8 and it was 62.5 not 60 => 8 at 60 kg, 7 at 62.5 kg, 8 at 60 kg
bench 3x8 60 | the first was 55, that was a warmup => 8 at 55 kg warmup, 2×8 at 60 kg
bench 3x8 60 | last two were 6 and they were 62.5 => 8 at 60 kg, 2×6 at 62.5 kg
bench 3x8 60 | last was 3 and they were 77.5 => 2×8 at 77.5 kg, 3 at 77.5 kg
bench 3x8 60 | last was 3 and all were 77.5 => 2×8 at 77.5 kg, 3 at 77.5 kg
bench 3x8 60 | first was 10 and it was 55, last was 6 and it was 65 => 10 at 55 kg, 8 at 60 kg, 6 at 65 kg
bench 3x8 60 | last was 3, it was 77.5, rpe 9 => 2×8 at 60 kg, 3 at 77.5 kg RPE 9
bench 3x8 60 | no 4, and that was rpe 9 => 2×8 at 60 kg, 4 at 60 kg RPE 9
bench 3x8 60 | sorry, 4 and it was 62.5 => 2×8 at 60 kg, 4 at 62.5 kg
bench 60x8, 65x6, 70x4 | 67.5 not 65 and it was 5 reps => 8 at 60 kg, 5 at 67.5 kg, 4 at 70 kg
bench 60x8, 65x6, 70x4 | the 65 was 67.5 and it was rpe 9 => 8 at 60 kg, 6 at 67.5 kg RPE 9, 4 at 70 kg
bench 60x8, 65x6, 70x4 | make the last 72.5, and it was rpe 9 => 8 at 60 kg, 6 at 65 kg, 4 at 72.5 kg RPE 9
bench 60x8 | 60x8 | 60x8 | set 2 was 7, and it was 62.5 => 8 at 60 kg, 7 at 62.5 kg, 8 at 60 kg
bench 3x8 60 | squat 3x5 100 | last bench set was 7, and it was 62.5 => 2×8 at 60 kg, 7 at 62.5 kg; squat 3×5 at 100 kg
bench 3x8 60 | last was 4, rpe 9, and that was yesterday => 2×8 at 60 kg, 4 at 60 kg RPE 9 on 2025-03-13
bench 2x8 60 | squat 5 100 | set 2 of bench was 7 and that was rpe 9 => 8 at 60 kg, 7 at 60 kg RPE 9; squat 5 at 100 kg
bench 2x8 60 | squat 5 100 | bench was 62.5 and that was yesterday => squat 5 at 100 kg; 2×8 at 62.5 kg on 2025-03-13
bench 3x8 60 | last set was 4 reps, at 95, and it was yesterday => 2×8 at 60 kg, 4 at 95 kg on 2025-03-13
bench 3x8 60 | laatste set was 4 reps, met 95, en dat was gisteren => 2×8 at 60 kg, 4 at 95 kg on 2025-03-13
bench 3x8 60 | a última foi 4 reps, com 95, e foi ontem => 2×8 at 60 kg, 4 at 95 kg on 2025-03-13
bänk 3x8 60 | sista var 4 reps, på 95, och det var igår => 2×8 at 60 kg, 4 at 95 kg on 2025-03-13
bankdrücken 3x8 60 | der letzte war 3, und das war mit 77,5 => 2×8 at 60 kg, 3 at 77.5 kg
bankdrücken 3x8 60 | nein 4, und das war rpe 9 => 2×8 at 60 kg, 4 at 60 kg RPE 9
press banca 3x8 60 | la última fue 3, y fue con 77,5 => 2×8 at 60 kg, 3 at 77.5 kg
press banca 3x8 60 | la última fue 4, y esa fue rpe 9 => 2×8 at 60 kg, 4 at 60 kg RPE 9
développé couché 3x8 60 | la dernière était 3, et c'était à 77,5 => 2×8 at 60 kg, 3 at 77.5 kg
développé couché 3x8 60 | la dernière était 4, et celle-là était rpe 9 => 2×8 at 60 kg, 4 at 60 kg RPE 9
panca 3x8 60 | l'ultima era 3, ed era con 77,5 => 2×8 at 60 kg, 3 at 77.5 kg
panca 3x8 60 | l'ultima era 4, e quella era rpe 9 => 2×8 at 60 kg, 4 at 60 kg RPE 9
bankdrukken 3x8 60 | de laatste was 3, en het was 77,5 => 2×8 at 60 kg, 3 at 77.5 kg
supino 3x8 60 | a última foi 4, e essa foi rpe 9 => 2×8 at 60 kg, 4 at 60 kg RPE 9
supino 3x8 60 | a última foi 3, e foi com 77,5 => 2×8 at 60 kg, 3 at 77.5 kg
wyciskanie 3x8 60 | ostatnia była 4, i ta była rpe 9 => 2×8 at 60 kg, 4 at 60 kg RPE 9
жим лежа 3x8 60 | последний был 3, и это было 77,5 => 2×8 at 60 kg, 3 at 77.5 kg
жим лежа 3x8 60 | последний был 4, и этот был rpe 9 => 2×8 at 60 kg, 4 at 60 kg RPE 9
bänk 3x8 60 | sista var 3 och den var på 77,5 => 2×8 at 60 kg, 3 at 77.5 kg
bench 3x8 60 | rpe 8, last set 5 reps => 2×8 at 60 kg RPE 8, 5 at 60 kg RPE 8
bench 3x8 60 | rpe 8, last one 62.5 => 2×8 at 60 kg RPE 8, 8 at 62.5 kg RPE 8
bench 3x8 60 | rpe 8 and last set 5 reps => 2×8 at 60 kg RPE 8, 5 at 60 kg RPE 8
bench 3x8 60 | era mi última serie => 3×8 at 60 kg
bench 60x8 | rpe 8, last set 5 reps => 8 at 60 kg
bench 3x8 60 | rpe 8, then last set 5 reps => 3×8 at 60 kg
bench 3x8 60 | last was 4, yesterday => 3×8 at 60 kg
bench 3x8 60 | der letzte war 4, gestern => 3×8 at 60 kg
bench 3x8 60 | bench was 7 and it was 62.5 => 3×8 at 60 kg
bench 3x8 60 | no 62.5, and it was 7 reps => 3×8 at 60 kg
bench 3x8 60 | last two were 62.5 and it was 7 reps => 3×8 at 60 kg
"""


def short(standing: str) -> str:
    """The sets without the name of the bench press, which most of them are of."""
    return standing.replace("barbell bench press ", "").replace("barbell back squat", "squat")


@pytest.mark.parametrize(("told", "standing"), dialogues(OF_THE_SET_BEFORE))
def test_what_points_back_is_of_the_sets_told_of_before(told: str, standing: str) -> None:
    assert short(standing_after(told)) == standing
