"""Sets that go on from the latest one."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
bench 80x5 | and another at 60 => barbell bench press 5 at 80 kg, 5 at 60 kg
bench 80x5 | one more => barbell bench press 2×5 at 80 kg
bench 80x5 | again => barbell bench press 2×5 at 80 kg
bench 80x5 | two more with 50 => barbell bench press 5 at 80 kg, 2×5 at 50 kg
bench 80x5 | two more at 60 => barbell bench press 5 at 80 kg, 2×5 at 60 kg
bench 80x5 | same but 8 => barbell bench press 5 at 80 kg, 8 at 80 kg
bench 80x5 | same but 8 reps => barbell bench press 5 at 80 kg, 8 at 80 kg
bench 80x5 | same but 85 => barbell bench press 5 at 80 kg, 5 at 85 kg
bench 80x5 | same reps at 85 => barbell bench press 5 at 80 kg, 5 at 85 kg
bench 80x5 | same at 85 => barbell bench press 5 at 80 kg, 5 at 85 kg
bench 80x5 | same with 85kg => barbell bench press 5 at 80 kg, 5 at 85 kg
bench 80x5 | next 5 at 100 => barbell bench press 5 at 80 kg, 5 at 100 kg
bench 80x5 | -10, 8 => barbell bench press 5 at 80 kg, 8 at 70 kg
bench 80x5 | -10 for 8 => barbell bench press 5 at 80 kg, 8 at 70 kg
bench 80x5 | -10 x 8 => barbell bench press 5 at 80 kg, 8 at 70 kg
bench 80x5 | minus 10 for 8 => barbell bench press 5 at 80 kg, 8 at 70 kg
bench 80x5 | dropped to 50 for 12 => barbell bench press 5 at 80 kg, 12 at 50 kg
curl 25x8 | ez bar | dropped to 15 for 12 => ez-bar curl 8 at 25 kg, 12 at 15 kg
bench 80x5 | plus 5 for 3 => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | up 5 for 3 => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | added 10, got 3 => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | went up 10 and got 4 => barbell bench press 5 at 80 kg, 4 at 90 kg
bench 80x5 | bumped it 5, got 3 => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | took 10 off, got 8 => barbell bench press 5 at 80 kg, 8 at 70 kg
bench 80x5 | 10 drauf, 3 geschafft => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | subí 10, hice 3 => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | ajouté 10, fait 3 => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | aggiunto 10, fatte 3 => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | 10 erbij, 3 gehaald => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | dodałem 10, zrobiłem 3 => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | adicionei 10, fiz 3 => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | добавил 10, сделал 3 => barbell bench press 5 at 80 kg, 3 at 90 kg
squat 100x5 | 2: 5 | 3: 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5 | 2) 5 | 3) 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5 | 2. 5 | 3. 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5 | second set same third set 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5 | zweiter satz gleich, dritter satz 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 100x5 | 4: 5 => barbell back squat 5 at 100 kg
bench 80x5 | before that warmup 40x10 60x5 => barbell bench press 5 at 80 kg, 10 at 40 kg warmup, 5 at 60 kg warmup
bench 80x5 | 10 more for 3 => barbell bench press 5 at 80 kg, 3 at 90 kg
bench 80x5 | added 5kg, 3 reps => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | squat 100x5 | back to bench, 7 => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 7 at 80 kg
bench 80x5 | squat 100x5 | bench again, 7 => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 7 at 80 kg
bench 80x5 | squat 100x5 | bench 7 => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 7 at 80 kg
bench 80x5 | squat 100x5 | bench same => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg
bench 80x5 | squat 100x5 | another bench set => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg
bench 80x5 | squat 100x5 | one more bench => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg
bench 80x5 | squat 100x5 | bench again => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg
bench 80x5 | squat 100x5 | bench x7 => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 7 at 80 kg
bench 80x5 | another 5 => barbell bench press 2×5 at 80 kg
bench 80x5 | another set of 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | another one, 4 this time => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | x2 more => barbell bench press 3×5 at 80 kg
bench 80x5 | 3 more sets => barbell bench press 4×5 at 80 kg
bench 80x5 | same x3 => barbell bench press 4×5 at 80 kg
bench 80x5 | same again x2 => barbell bench press 3×5 at 80 kg
bench 80x5 | twice more => barbell bench press 3×5 at 80 kg
bench 80x5 | and again => barbell bench press 2×5 at 80 kg
bench 80x5 | ditto => barbell bench press 2×5 at 80 kg
bench 80x5 | did the same again => barbell bench press 2×5 at 80 kg
bench 80x5 | repeat => barbell bench press 2×5 at 80 kg
bench 80x5 | next set same => barbell bench press 2×5 at 80 kg
bench 80x5 | then 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | then 4 then 3 => barbell bench press 5 at 80 kg, 4 at 80 kg, 3 at 80 kg
bench 80x5 | 5, 4, 4 => barbell bench press 2×5 at 80 kg, 2×4 at 80 kg
bench 80x5 | 5 5 4 => barbell bench press 3×5 at 80 kg, 4 at 80 kg
bench 80x5 | then 85 for 3 => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | 85 for 3 => barbell bench press 5 at 80 kg, 3 at 85 kg
bench 80x5 | got 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | only got 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | only 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | just 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | only 4 this time => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | managed 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | 4 this time => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | last set 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | back off 60x10 => barbell bench press 5 at 80 kg, 10 at 60 kg
bench 135lb x 8 | +10 for 5 => barbell bench press 8 at 135 lb, 5 at 145 lb
bench 135lb x 8 | +10 for 5 | another 5 => barbell bench press 8 at 135 lb, 2×5 at 145 lb
bench 135lb x 8 | +10lb for 5 => barbell bench press 8 at 135 lb, 5 at 145 lb
bench 135lb x 8 | 5 => barbell bench press 8 at 135 lb, 5 at 135 lb
bench 135lb x 8 | -20 x 10 => barbell bench press 8 at 135 lb, 10 at 115 lb
dips +10 x8 | +15 x 6 | 6 => dip 8 at +10 kg, 2×6 at +15 kg
pull ups 10 | 9 | another 8 => pull-up 10, 9, 8
plank 60s | another 45 => plank 60 s, 45 s
plank 60s | 45s => plank 60 s, 45 s
plank 60s | same => plank 2×60 s
curl bb 30x10 | same but 8 => barbell curl 10 at 30 kg, 8 at 30 kg
bench 80x5 | drop to 60 for 10 => barbell bench press 5 at 80 kg, 10 at 60 kg
bench 80x5 | then dropped to 60 for 10 => barbell bench press 5 at 80 kg, 10 at 60 kg
bench 80x5 | went down to 60, got 10 => barbell bench press 5 at 80 kg, 10 at 60 kg
bench 80x5 | two more sets of 4 => barbell bench press 5 at 80 kg, 2×4 at 80 kg
bench 80x5 | another two sets of 4 => barbell bench press 5 at 80 kg, 2×4 at 80 kg
bench 60x9 | another 3 => barbell bench press 9 at 60 kg, 3 at 60 kg
bench 3x9 60 | and another 4 => barbell bench press 3×9 at 60 kg, 4 at 60 kg
bench 60x9 | another 3 please => barbell bench press 9 at 60 kg, 3 at 60 kg
bench 60x9 | another set of 3 => barbell bench press 9 at 60 kg, 3 at 60 kg
bench 60x9 | another 3 sets => barbell bench press 4×9 at 60 kg
bench 60x9 | another three => barbell bench press 4×9 at 60 kg
bench 60x9 | another 2 => barbell bench press 3×9 at 60 kg
bench 60x2 | another 2 => barbell bench press 2×2 at 60 kg
bankdrücken 60x9 | noch 3 => barbell bench press 9 at 60 kg, 3 at 60 kg
press banca 60x9 | otra de 3 => barbell bench press 9 at 60 kg, 3 at 60 kg
bench 80x5 | and one more for 3 => barbell bench press 5 at 80 kg, 3 at 80 kg
bench 80x5 | last one for 3 => barbell bench press 5 at 80 kg, 3 at 80 kg
bench 80x5 | for 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | did another => barbell bench press 2×5 at 80 kg
bench 80x5 | next set 4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | rest for 3 => barbell bench press 5 at 80 kg
bench 80x5 | squat 100x5 | bench again, same => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg
bench 80x5 | squat 100x5 | back to bench for 4 => barbell bench press 5 at 80 kg; barbell back squat 5 at 100 kg; barbell bench press 4 at 80 kg
bench 80x5 | x5 => barbell bench press 2×5 at 80 kg
bench 80x5 | x4 => barbell bench press 5 at 80 kg, 4 at 80 kg
bench 80x5 | x2 => barbell bench press 3×5 at 80 kg
bench 80x3 | x2 => barbell bench press 3×3 at 80 kg
bench 80x5 | 5 | last one, got 3 => barbell bench press 2×5 at 80 kg, 3 at 80 kg
pull ups 10 +10kg | 8 => pull-up 10 at +10 kg, 8 at +10 kg
squat 100x5 | drop 80x8 => barbell back squat 5 at 100 kg, 8 at 80 kg drop
squat 100x5 | drop set 80x8 => barbell back squat 5 at 100 kg, 8 at 80 kg drop
squat 100x5 | drop 3x8 => barbell back squat 5 at 100 kg
bench 60x8 | 2kg more => barbell bench press 8 at 60 kg
bench 60x8 | two more at 55 => barbell bench press 8 at 60 kg, 2×8 at 55 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_going_on(told: str, standing: str) -> None:
    assert standing_after(told) == standing
