"""What stands ahead of a lift and is no set: a change against the last time, a heading of numbers; and help that only
some sets had.

Common practice, no source.
"""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

CHANGES = """
{last: barbell overhead press 40} 2.5 up on last week. ohp 3x5 => barbell overhead press 3×5 at 42.5 kg
{last: barbell bench press 80} -2.5 vs last time, bench 3x8 => barbell bench press 3×8 at 77.5 kg
{last: barbell bench press 80} today 5 less than last week - bench 5 5 4 => barbell bench press 2×5 at 75 kg, 4 at 75 kg
{unit: lb; last: barbell back squat 225} +5 over last week, squat 3x5 => barbell back squat 3×5 at 230 lb
{last: barbell back squat 100} +2,5 kg als letztes Mal, Kniebeuge 3x5 => barbell back squat 3×5 at 102.5 kg
{last: barbell bench press 80} +2,5 kg que la semana pasada, press banca 3x5 => barbell bench press 3×5 at 82.5 kg
{last: barbell back squat 80} +5 par rapport à la fois dernière, squat 3x5 => barbell back squat 3×5 at 85 kg
{last: barbell bench press 80} +5 rispetto alla settimana scorsa, panca piana 3x5 => barbell bench press 3×5 at 85 kg
{last: barbell back squat 100} +5 jämfört med förra veckan, knäböj 3x5 => barbell back squat 3×5 at 105 kg
{last: barbell bench press 80} +2.5 on last week, bench 82.5 3x5 => barbell bench press 3×5 at 82.5 kg
{last: barbell back squat 100} +5 on last week // squat 3x5 => barbell back squat 3×5 at 105 kg
"""

HEADED = """
5/5/5 day. squat 100x5, 110x5 => barbell back squat 5 at 100 kg, 5 at 110 kg
3/3/3 day - squat 100x3, 110x3 => barbell back squat 3 at 100 kg, 3 at 110 kg
5/4/3 week: bench 70x5, 80x4 => barbell bench press 5 at 70 kg, 4 at 80 kg
8/6/4: deadlift 120x8, 140x6 => conventional deadlift 8 at 120 kg, 6 at 140 kg
8/6/4 week 3, bench 70x8, 80x6 => barbell bench press 8 at 70 kg, 6 at 80 kg
5x5 day, squat 5x5 100 => barbell back squat 5×5 at 100 kg
3x5 day: squat 100 5 5 5 => barbell back squat 3×5 at 100 kg
5s day. ohp 40x5 45x5 => barbell overhead press 5 at 40 kg, 5 at 45 kg
6/4/2 day // ohp 37.5x6 // 42.5x4 => barbell overhead press 6 at 37.5 kg, 4 at 42.5 kg
6/4/2 Tag. Kniebeuge 100x6, 110x4 => barbell back squat 6 at 100 kg, 4 at 110 kg
día 5x5: sentadilla 5x5 100 => barbell back squat 5×5 at 100 kg
semana 3x3 - sentadilla 120x3 125x3 => barbell back squat 3 at 120 kg, 3 at 125 kg
5x5: squat 100 => barbell back squat 5×5 at 100 kg
3x8 day. bench => barbell bench press 3×8
"""

HELPED = """
dips 20kg assist 10, 9 then 3 unassisted => dip 10 at −20 kg, 9 at −20 kg, 3
pull-ups -10kg 8 8 then 2 without help => pull-up 2×8 at −10 kg, 2
chins with 10kg assist 9, 8, then 1 clean one at bw => chin-up 9 at −10 kg, 8 at −10 kg, 1
dips with 15kg help 10, 9 then 2 clean reps unassisted => dip 10 at −15 kg, 9 at −15 kg, 2
pull ups +10 5 5 then 8 bw => pull-up 2×5 at +10 kg, 8
Klimmzüge mit 10 kg Hilfe 9, 8, dann 1 ohne => pull-up 9 at −10 kg, 8 at −10 kg, 1
Klimmzüge mit 15 kg Hilfe 8 7 dann 3 ohne Hilfe => pull-up 8 at −15 kg, 7 at −15 kg, 3
dominadas con 10 kg de ayuda 9, 8, luego 1 sin ayuda => pull-up 9 at −10 kg, 8 at −10 kg, 1
tractions avec 10 kg d'aide 9, 8 puis 2 sans aide => pull-up 9 at −10 kg, 8 at −10 kg, 2
pull-ups +10kg: 5, 5, 8 bw => ask: pull-up 2×5 at +10 kg, 8 at +10 kg
dips 10 9 8 unassisted => dip 10, 9, 8
"""


@pytest.mark.parametrize(("text", "known", "meant"), readings(CHANGES))
def test_a_change_at_the_head_is_that_of_the_only_lift(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(("text", "known", "meant"), readings(HEADED))
def test_the_numbers_that_a_day_is_called_by_count_no_sets(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(("text", "known", "meant"), readings(HELPED))
def test_a_set_without_help_stands_at_the_weight_of_the_body(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    readings("""
bench dips 14, 11, 11 and then 22, 22, 19 sit ups => bench dip 14, 2×11; sit-up 2×22, 19
dips 14, 11, 11, then 22, 22 and 19 sit ups => dip 14, 2×11; sit-up 2×22, 19
squat 95 4 4 4 then 19, 17, 14 push ups => barbell back squat 3×4 at 95 kg; push-up 19, 17, 14
squat 3x4 95, then 55x9, 55x8 on bench => barbell back squat 3×4 at 95 kg; barbell bench press 9 at 55 kg, 8 at 55 kg
19, 17 push ups then 14, 14 sit ups => push-up 19, 17; sit-up 2×14
pull ups 9, 8, 7. 11, 11, 9 dips => pull-up 9, 8, 7; dip 2×11, 9
cable rows 55 9 9 then 11, 11 hammer curls at 14 => seated cable row 2×9 at 55 kg; hammer curl 2×11 at 14 kg each
Klimmzüge 9, 8, 7 und dann 11, 11, 9 Dips => pull-up 9, 8, 7; dip 2×11, 9
squat 95x4 then 105x3, 110x2, 9 dips => barbell back squat 4 at 95 kg, 3 at 105 kg, 2 at 110 kg; dip 9
squat 95x4, then 75x9, 75x9, then 9 dips => barbell back squat 4 at 95 kg, 2×9 at 75 kg; dip 9
dips 14, 11 and 10, 19 sit ups => dip 14, 11, 10; sit-up 19
dips 14, 11, 11 and 22, 22, 19 sit ups => ask: dip 14, 2×11, 2×22; sit-up 19
"""),
)
def test_a_list_told_alike_behind_then_or_a_full_stop_is_of_the_name_at_its_end(text, known, meant) -> None:
    assert said(text, known) == meant
