"""More sets told with the reps of each: "two more sets of 8", "2 more x 8", "3 more triples"; in ten languages."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import dialogues, readings, said, standing_after

IN_HAND = "doing: barbell bench press; last: barbell bench press 60"

MORE = """
two more sets of 8 => barbell bench press 2×8 at 60 kg
3 more sets of 5 => barbell bench press 3×5 at 60 kg
two more x 8 => barbell bench press 2×8 at 60 kg
2 more x8 => barbell bench press 2×8 at 60 kg
1 more x 8 => barbell bench press 8 at 60 kg
1 more set of 8 => barbell bench press 8 at 60 kg
2 more of 10 => barbell bench press 2×10 at 60 kg
four more of 6 => barbell bench press 4×6 at 60 kg
8 more sets of 3 => barbell bench press 8×3 at 60 kg
2 more sets x 8 => barbell bench press 2×8 at 60 kg
2 more sets for 8 => barbell bench press 2×8 at 60 kg
and 2 more sets with 8 reps => barbell bench press 2×8 at 60 kg
2 more sets of 8 at 62.5 => barbell bench press 2×8 at 62.5 kg
2 more of 8 @ 62.5kg => barbell bench press 2×8 at 62.5 kg
2 more sets of 8 on bench => barbell bench press 2×8 at 60 kg
3 more triples => barbell bench press 3×3 at 60 kg
two more fives at 65 => barbell bench press 2×5 at 65 kg
noch zwei Sätze mit 8 => barbell bench press 2×8 at 60 kg
noch ein Satz mit 8 => barbell bench press 8 at 60 kg
zwei weitere Sätze mit 8 => barbell bench press 2×8 at 60 kg
dos series más de 8 => barbell bench press 2×8 at 60 kg
dos más de 8 => barbell bench press 2×8 at 60 kg
deux séries de plus de 8 => barbell bench press 2×8 at 60 kg
due serie in più da 8 => barbell bench press 2×8 at 60 kg
twee sets meer van 8 => barbell bench press 2×8 at 60 kg
dwie serie więcej po 8 => barbell bench press 2×8 at 60 kg
duas séries a mais de 8 => barbell bench press 2×8 at 60 kg
ещё два подхода по 8 => barbell bench press 2×8 at 60 kg
två set till med 8 => barbell bench press 2×8 at 60 kg
två set till på 8 => barbell bench press 2×8 at 60 kg
2 more sets 8 => barbell bench press 2×8 at 60 kg
2 more 55x8 => barbell bench press 2×8 at 55 kg
2 more at 55 for 8 => barbell bench press 2×8 at 55 kg
another triple => barbell bench press 3 at 60 kg
one more double at 70 => barbell bench press 2 at 70 kg
una serie más de 8 => barbell bench press 8 at 60 kg
a few more sets of 8 => ask: barbell bench press 8 at 60 kg
2 more for 8 => ask: barbell bench press 2 at 60 kg, 8 at 60 kg
"""

BEHIND_OTHERS = """
bench 60x8, then two more sets of 8 => barbell bench press 3×8 at 60 kg
bench 60x8, 2 more of 10 => barbell bench press 8 at 60 kg, 2×10 at 60 kg
squat 100x5 // 2 more sets of 6 => barbell back squat 5 at 100 kg, 2×6 at 100 kg
bench 60x8, 2 more sets of 6 at 55 => barbell bench press 8 at 60 kg, 2×6 at 55 kg
{doing: pull-up} 2 more of 8 => pull-up 2×8
{doing: plank} 2 more sets of 45 sec => plank 2×45 s
"""

IN_A_DIALOGUE = """
bench 60x8 | two more sets of 8 at 62.5 => barbell bench press 8 at 60 kg, 2×8 at 62.5 kg
bench 60x8 | 4 more sets of 6 => barbell bench press 8 at 60 kg, 4×6 at 60 kg
dips 12 | 2 more x 10 => dip 12, 2×10
squat 100x5 | 1 more x 4 => barbell back squat 5 at 100 kg, 4 at 100 kg
squat 100x5 | 2 more at 90 for 5 => barbell back squat 5 at 100 kg, 2×5 at 90 kg
squat 100x5 | 2.5 more x 5 => barbell back squat 5 at 100 kg, 5 at 102.5 kg
squat 100x3 | another triple => barbell back squat 2×3 at 100 kg
bench 60x8 | noch zwei Sätze mit 6 => barbell bench press 8 at 60 kg, 2×6 at 60 kg
bench 60x8 | dos más de 6 => barbell bench press 8 at 60 kg, 2×6 at 60 kg
"""


WITH_BENCH_IN_HAND = "\n".join(f"{{{IN_HAND}}} {row}" for row in MORE.strip().splitlines())


@pytest.mark.parametrize(("text", "context", "meant"), readings(WITH_BENCH_IN_HAND))
def test_more_sets_are_so_many_of_these_reps(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(BEHIND_OTHERS))
def test_more_sets_stand_behind_others(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("told", "standing"), dialogues(IN_A_DIALOGUE))
def test_more_sets_go_on_from_the_latest(told: str, standing: str) -> None:
    assert standing_after(told) == standing
