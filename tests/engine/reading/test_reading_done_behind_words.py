"""Sets done behind a wish or behind somebody's rule are read or asked about, and never passed over as talk."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

BEHIND_A_WISH = """\
wanted 100 on squat, got 95 for 3 => barbell back squat 3 at 95 kg
wanted 100kg on squat, got 95kg for 3 => barbell back squat 3 at 95 kg
wanted 100 on squat but got 95x3 => barbell back squat 3 at 95 kg
wanted 100x3 on squat, got 95 for 3 => barbell back squat 3 at 95 kg
wanted 100 on squat, only 95 for 3 => barbell back squat 3 at 95 kg
wanted 100 on squat, got 3 => no sets
wanted 200 squat, got 4 hours of sleep => no sets
wanted 62.5 on ohp, no chance. 55 it was, 5 5 4 => ask: barbell overhead press 2×5 at 55 kg, 4 at 55 kg
wanted 62.5 on ohp. 55x5 => ask: barbell overhead press 5 at 55 kg
want 140 squat by june. bench 80x5 => barbell bench press 5 at 80 kg
tomorrow squat 5x5 100. 2 weeks to go => no sets
"""
BEHIND_A_RULE = """\
coach says stay under 8: bench 3x4 87.5 @7.5 => ask: barbell bench press 3×4 at 87.5 kg RPE 7.5
coach says 3x5: bench 3x5 80 => ask: barbell bench press 3×5 at 80 kg
my coach says 3x8 so i did rdl 3x8 90 => romanian deadlift 3×8 at 90 kg
my coach says 3x8 so he did rdl 3x8 90 => no sets
coach says: bench 3x5 80 => no sets
coach says tomorrow 3x5: bench 3x5 80 => no sets
"""
ONE_OF_TWO = """\
{doing: barbell bench press} 70 for 8 or 9, lost count => ask: barbell bench press 8 at 70 kg | barbell bench press 9 at 70 kg
bench 70x8 or 9, lost count => ask: barbell bench press 8 at 70 kg | barbell bench press 9 at 70 kg
bankdrücken 80x5 oder 6, verzählt => ask: barbell bench press 5 at 80 kg | barbell bench press 6 at 80 kg
bench 3x5, either 77.5 or 80, can't remember => ask: barbell bench press 3×5 at 77.5 kg | barbell bench press 3×5 at 80 kg
bench either 80x5 or 82.5x5 => ask: barbell bench press 5 at 80 kg | barbell bench press 5 at 82.5 kg
bench 80x5, lost count => ask: barbell bench press 5 at 80 kg
"""  # noqa: E501


@pytest.mark.parametrize(("text", "context", "expected"), readings(BEHIND_A_WISH))
def test_what_came_of_a_wish_is_read_with_its_lift(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected


@pytest.mark.parametrize(("text", "context", "expected"), readings(BEHIND_A_RULE))
def test_what_was_done_by_somebodys_rule_is_hers(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected


@pytest.mark.parametrize(("text", "context", "expected"), readings(ONE_OF_TWO))
def test_one_of_two_that_nobody_remembers_is_asked(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected


AT_ONCE = """
no warm up today, straight into squat 100 3x5 => barbell back squat 3×5 at 100 kg
after work straight into squats 100x5 100x5 => barbell back squat 2×5 at 100 kg
without warming up, right into deadlift 140 3x3 => conventional deadlift 3×3 at 140 kg
squat 3x5 100 straight into leg press 150x10 => barbell back squat 3×5 at 100 kg; leg press 10 at 150 kg
bench 80x5, straight into 60x12 => barbell bench press 5 at 80 kg, 12 at 60 kg drop
ohne aufwärmen direkt kniebeuge 100 3x5 => barbell back squat 3×5 at 100 kg
pas d'échauffement, direct squat 100 3x5 => barbell back squat 3×5 at 100 kg
sem aquecimento, direto pro agachamento 100 3x5 => barbell back squat 3×5 at 100 kg
без разминки, сразу присед 100 3х5 => barbell back squat 3×5 at 100 kg
skipped the warm up, right into 100 3x5 squats => barbell back squat 3×5 at 100 kg
done with pull ups 8 8 7 => pull-up 2×8, 7
"""
BEHIND_A_PLAN = """
thinking of 3x15 face pulls at 20 after this, just finished lat pulldown 60 3x10 => lat pulldown 3×10 at 60 kg
gonna do rows next, just finished bench 80 3x8 => barbell bench press 3×8 at 80 kg
ich überlege danach 3x15 face pulls 20 zu machen, gerade latzug 60 3x10 fertig => lat pulldown 3×10 at 60 kg
pienso hacer 3x15 face pulls con 20 después, acabo de terminar jalón 60 3x10 => lat pulldown 3×10 at 60 kg
je pense faire 3x15 face pulls à 20 après, je viens de finir tirage vertical 60 3x10 => lat pulldown 3×10 at 60 kg
penso di fare 3x15 face pull a 20 dopo, ho appena finito lat machine 60 3x10 => lat pulldown 3×10 at 60 kg
ik denk aan 3x15 face pulls op 20 hierna, net klaar met lat pulldown 60 3x10 => lat pulldown 3×10 at 60 kg
myślę o 3x15 face pull 20 potem, właśnie skończyłem ściąganie drążka 60 3x10 => lat pulldown 3×10 at 60 kg
penso em fazer 3x15 face pull com 20 depois, acabei de terminar puxada 60 3x10 => lat pulldown 3×10 at 60 kg
tänker göra 3x15 face pulls på 20 sen, blev just klar med latsdrag 60 3x10 => lat pulldown 3×10 at 60 kg
tomorrow squat 5x5 100, when done bench 3x5 80 => no sets
завтра присед 5х5 100, только жим лежа 3х5 80 => no sets
"""
CUT_SHORT = """
leg ext was meant to be 4x10 with 55, stopped after 3 sets => leg extension 3×10 at 55 kg
squat should have been 5x5 100, quit after 4 sets => barbell back squat 4×5 at 100 kg
was gonna do 5x5 at 100 on squat but stopped after 2 sets => barbell back squat 2×5 at 100 kg
beinstrecker sollte 4x10 mit 55 werden, nach 3 sätzen aufgehört => leg extension 3×10 at 55 kg
sentadilla iba a ser 5x5 con 100, paré tras 3 series => barbell back squat 3×5 at 100 kg
squat devait être 5x5 à 100, arrêté après 3 séries => barbell back squat 3×5 at 100 kg
squat doveva essere 5x5 con 100, mi sono fermato dopo 3 serie => barbell back squat 3×5 at 100 kg
squat zou 5x5 met 100 zijn, gestopt na 3 sets => barbell back squat 3×5 at 100 kg
przysiad miał być 5x5 100, skończyłem po 3 seriach => barbell back squat 3×5 at 100 kg
agachamento era para ser 5x5 com 100, parei depois de 3 séries => barbell back squat 3×5 at 100 kg
присед должен был быть 5х5 100, остановился после 3 подходов => barbell back squat 3×5 at 100 kg
knäböj skulle vara 5x5 100, slutade efter 3 set => barbell back squat 3×5 at 100 kg
"""


@pytest.mark.parametrize(
    ("text", "context", "meant"), readings(AT_ONCE) + readings(BEHIND_A_PLAN) + readings(CUT_SHORT)
)
def test_what_was_done_behind_words_for_at_once_a_plan_or_a_stop(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
