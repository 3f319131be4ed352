"""Reps that tell a group before them once more, and what others did ahead of one's own. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
ohp 3x8 40, well, 8 8 5 if i'm honest => barbell overhead press 2×8 at 40 kg, 5 at 40 kg
ohp 3x8 40, actually 8 8 5 => barbell overhead press 2×8 at 40 kg, 5 at 40 kg
ohp 3x8 40 or rather 8 8 5 => barbell overhead press 2×8 at 40 kg, 5 at 40 kg
ohp 40 3x8, well, 8 7 6 => barbell overhead press 8 at 40 kg, 7 at 40 kg, 6 at 40 kg
bankdrücken 3x8 40, na ja, 8 8 5 => barbell bench press 2×8 at 40 kg, 5 at 40 kg
panca 3x8 40, insomma 8 8 5 => barbell bench press 2×8 at 40 kg, 5 at 40 kg
press banca 3x8 40, bueno, 8 8 5 => barbell bench press 2×8 at 40 kg, 5 at 40 kg
développé couché 3x8 40, enfin 8 8 5 => barbell bench press 2×8 at 40 kg, 5 at 40 kg
жим лежа 3х8 40, ну, 8 8 5 => barbell bench press 2×8 at 40 kg, 5 at 40 kg
ohp 3x8 40, really 9 8 7 => ask: barbell overhead press 3×8 at 40 kg
squat 100x5, i did 5 reps easy => barbell back squat 5 at 100 kg
squat 100x5 did all 5 reps, bench 80x5 => barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg
kniebeuge 100x5, hab 5 wdh gemacht => barbell back squat 5 at 100 kg
squat 100x5, did 4 => ask: barbell back squat 5 at 100 kg, 4 at 100 kg
squat 100x5, then did 5 reps => barbell back squat 2×5 at 100 kg
bench 80x5 but only 4 => ask: barbell bench press 4 at 80 kg | barbell bench press 5 at 80 kg, 4 at 80 kg
bank 80x5, aber nur 4 geschafft => barbell bench press 4 at 80 kg
жим лежа 80х5 но только 4 => ask: barbell bench press 4 at 80 kg | barbell bench press 5 at 80 kg, 4 at 80 kg
squat 100x5 (pr war 120x5) => barbell back squat 5 at 100 kg
squat 100x5, mon pr était 120x5 => barbell back squat 5 at 100 kg
squat 100x5, mi pr es 120x1 => barbell back squat 5 at 100 kg
squat 120x5 pr war leicht => barbell back squat 5 at 120 kg
squat 120x3, video at 100x1 => ask: barbell back squat 3 at 120 kg, 1 at 100 kg
set 3 bench 80x4 => barbell bench press 4 at 80 kg
face puls 4x18 20kg => face pull 4×18 at 20 kg
riscaldato con 60x8 sulla panca => barbell bench press 8 at 60 kg warmup
mein kumpel hat 130 gedrückt, bei mir bankdrücken 90 kg, 4 wdh => barbell bench press 4 at 90 kg
mon pote a fait 130x5, moi développé couché 90x4 => barbell bench press 4 at 90 kg
il mio amico ha fatto 130x5, io panca piana 90x4 => barbell bench press 4 at 90 kg
meu amigo fez 130x5, eu supino 90x4 => barbell bench press 4 at 90 kg
друг сделал 130х5, у меня жим лежа 90х4 => barbell bench press 4 at 90 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_reps_that_tell_a_group_once_more_are_its_results(text, context, meant) -> None:
    assert said(text, context) == meant
