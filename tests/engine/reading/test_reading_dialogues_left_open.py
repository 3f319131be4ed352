"""What begins as a correction and does not say what is to be put right, and a number that may be reps or a load."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

NOTHING_CHANGED = """
bench 205x5 | 205x4 | those two are => barbell bench press 5 at 205 kg, 4 at 205 kg
bench 205x5 | 205x4 | those two => barbell bench press 5 at 205 kg, 4 at 205 kg
bench 205x5 | 205x4 | but those two were => barbell bench press 5 at 205 kg, 4 at 205 kg
bench 205x5 | 205x4 | these 2 done => barbell bench press 5 at 205 kg, 4 at 205 kg
bench 205x5 | 205x4 | those two felt heavy => barbell bench press 5 at 205 kg, 4 at 205 kg
bench 205x5 | the last two => barbell bench press 5 at 205 kg
bench 60x8 8 7 | delete that, 8 was wrong => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60x8 8 7 | 8 was wrong => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60x8 | 60kg was wrong => barbell bench press 8 at 60 kg
bench 60x8 8 7 | lösch das, 8 war falsch => barbell bench press 2×8 at 60 kg, 7 at 60 kg
close grip bench 65x9 | had 20 on the bar => close-grip bench press 9 at 65 kg
bench 65x9 | i had 25 on the bar => barbell bench press 9 at 65 kg
bench 65x9 | hatte 20 auf der Stange => barbell bench press 9 at 65 kg
lateral raise 10 kg 15 14 12 | first was 9 => dumbbell lateral raise 15 at 10 kg each, 14 at 10 kg each, 12 at 10 kg each
leg press 25kg 20 18 16 | last was 24 => leg press 20 at 25 kg, 18 at 25 kg, 16 at 25 kg
bench 60x8 | add one rep => barbell bench press 8 at 60 kg
bench 60x8 | plus 1 rep => barbell bench press 8 at 60 kg
bench 60x8 | double that => barbell bench press 8 at 60 kg
squat 100x5 | that was a warm-up, now 120x5 => barbell back squat 5 at 100 kg
squat 100x5 | that was the warm up, working sets 120 5 5 5 => barbell back squat 5 at 100 kg
squat 100x5 | that was rpe 8, now 120x5 => barbell back squat 5 at 100 kg
squat 100x5 | das war aufwärmen, dann 120x5 => barbell back squat 5 at 100 kg
bench 60x8 | leg press 100x10 | 60x8 => barbell bench press 8 at 60 kg; leg press 10 at 100 kg
bench 60x8 | squat 100x5 | bench 65x8 | 100x5 => barbell bench press 8 at 60 kg; barbell back squat 5 at 100 kg; barbell bench press 8 at 65 kg
row 3x12 50ish | barbell =>
bench 60x8 8 7 | swap sets 1 and 3 => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60x8 | squat 100x5 | the other one was 62.5 => barbell bench press 8 at 60 kg; barbell back squat 5 at 100 kg
bench 60x8 | next is 62.5 => barbell bench press 8 at 60 kg
squat 100x5 | 5 | last with 4 => barbell back squat 2×5 at 100 kg
"""  # noqa: E501 — one dialogue a line

CHANGED = """
bench 60x8 | 8 was wrong, 7 => barbell bench press 7 at 60 kg
bench 60x8 | that 8 was wrong, it was 7 => barbell bench press 7 at 60 kg
bench 60x8 8 7 | set 2 was wrong, 7 => barbell bench press 8 at 60 kg, 2×7 at 60 kg
bench 205x5 | 205x4 | those two were 200 => barbell bench press 5 at 200 kg, 4 at 200 kg
bench 205x5 | 205x4 | 205x3 | those two at 200 => barbell bench press 5 at 205 kg, 4 at 200 kg, 3 at 200 kg
bench 205x5 | 205x4 | those two were warm ups => barbell bench press 5 at 205 kg warmup, 4 at 205 kg warmup
bench 205x5 | 205x4 | 205x3 | delete those two => barbell bench press 5 at 205 kg
squat 100x5 | 5 | last 4 => barbell back squat 5 at 100 kg, 4 at 100 kg
squat 100x5 | 5 | last: 4 => barbell back squat 5 at 100 kg, 4 at 100 kg
squat 100x5 | 5 | letzte 4 => barbell back squat 5 at 100 kg, 4 at 100 kg
squat 100x5 | 5 | la última 4 => barbell back squat 5 at 100 kg, 4 at 100 kg
squat 100x5 | 5 | последний 4 => barbell back squat 5 at 100 kg, 4 at 100 kg
squat 100x5 | 5 | last set 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5 | 5 | letzter satz 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5 | last 4 => barbell back squat 5 at 100 kg, 4 at 100 kg
squat 100x5 | 5 | last with 95 => barbell back squat 5 at 100 kg, 5 at 95 kg
bench 60x8 8 7 | delete sets 2 and 3 => barbell bench press 8 at 60 kg
bench 60x8 8 7 | delete sets 1 to 2 => barbell bench press 7 at 60 kg
bench 60x8 8 7 | borra las series 2 y 3 => barbell bench press 8 at 60 kg
bench 60x8 8 7 | удали подходы 2 и 3 => barbell bench press 8 at 60 kg
bench 60x8 8 7 | delete 2 sets => barbell bench press 8 at 60 kg
bench 60x8 8 7 | delete sets 2 and 5 => barbell bench press 2×8 at 60 kg, 7 at 60 kg
leg press 3x10 | used the 24 => leg press 3×10 at 24 kg
db bench 3x10 | took the 24s => dumbbell bench press 3×10 at 24 kg each
squat 3x5 | usé 80 => barbell back squat 3×5 at 80 kg
leg press 3x10 80 | used the 24 minute timer => leg press 3×10 at 80 kg
db bench 24s 10 10 | those were 26s | first was 24 => dumbbell bench press 10 at 24 kg each, 10 at 26 kg each
goblet squat 24kg 10 10 | last was 20 => goblet squat 10 at 24 kg, 10 at 20 kg
db row 30kg 10 10 10 | second was 28, third 26 => dumbbell row 10 at 30 kg each, 10 at 28 kg each, 10 at 26 kg each
db curl 12s 12 11 | first was 14 => dumbbell curl 14 at 12 kg each, 11 at 12 kg each
bench 60 12 10 | first was 15 => barbell bench press 15 at 60 kg, 10 at 60 kg
bench 20x5 | sorry, 7 => barbell bench press 7 at 20 kg
squat 100x5 | there were 3 of them => barbell back squat 3×5 at 100 kg
squat 100x5 | 100x5 | there are 3 of them => barbell back squat 3×5 at 100 kg
squat 100x5 | es waren 3 davon => barbell back squat 3×5 at 100 kg
bench 60x8 | add a rep to the last set => barbell bench press 9 at 60 kg
squat 100x5 | that was rpe 8, 4 reps => barbell back squat 4 at 100 kg RPE 8
squat 100x5 | that was easy, 105x5 => barbell back squat 5 at 100 kg, 5 at 105 kg
bench 60x8 | leg press 100x10 | 60x8 | bench => barbell bench press 8 at 60 kg; leg press 10 at 100 kg; barbell bench press 8 at 60 kg
bench 60x8 | leg press 100x10 | 105x8 => barbell bench press 8 at 60 kg; leg press 10 at 100 kg, 8 at 105 kg
bench 60x8 | leg press 100x10 | 60x15 => barbell bench press 8 at 60 kg; leg press 10 at 100 kg, 15 at 60 kg
row 3x12 50ish | barbell | 52.5 => barbell row 3×12 at 52.5 kg
row 3x12 50ish | barbell | 1 => barbell row 3×12 at 50 kg
row 3x12 50ish | barbell, 52.5 => barbell row 3×12 at 52.5 kg
bench 60x8 | the last one was 62.5 => barbell bench press 8 at 62.5 kg
bench 60x8 | swap 60 with 65 => barbell bench press 8 at 65 kg
bench 60x8 | eigentlich nur 7 => barbell bench press 7 at 60 kg
bench 60x8 | in realtà 7 => barbell bench press 7 at 60 kg
bench 60x8 | właściwie 7 => barbell bench press 7 at 60 kg
bench 60x8 | na verdade 7 => barbell bench press 7 at 60 kg
bench 60x8 | точнее 7 => barbell bench press 7 at 60 kg
bench 60x8 | egentligen 7 => barbell bench press 7 at 60 kg
bench 60x8 | eigenlijk 62,5 => barbell bench press 8 at 62.5 kg
plank 60s | 30s side | side plank => plank 60 s; side plank 30 s
plank 60s | 30s each side => plank 60 s, 30 s
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(NOTHING_CHANGED))
def test_what_is_left_open_changes_nothing(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(CHANGED))
def test_what_is_told_in_full_is_put_right(told: str, standing: str) -> None:
    assert standing_after(told) == standing
