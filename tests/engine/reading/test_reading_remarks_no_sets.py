"""Remarks with the words of sets in them change none: the bar, a plate, a spotter, a limb, what was done in between."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said, situation


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
ohp 45 7 7 6 // bar moved really well => barbell overhead press 2×7 at 45 kg, 6 at 45 kg
squat 100 5 5 5, bar kept rolling => barbell back squat 3×5 at 100 kg
squat 90 8 8 bar position low => barbell back squat 2×8 at 90 kg
bench 70 8 8, 7 // bar was uneven => barbell bench press 2×8 at 70 kg, 7 at 70 kg
deadlift 120 5 5 // the bar was slippery => conventional deadlift 2×5 at 120 kg
deadlift 120x5 bar was slippery => conventional deadlift 5 at 120 kg
squat 100 5 5 5 wrong bar => barbell back squat 3×5 at 100 kg
kniebeugen 100 5 5, die stange war glatt => barbell back squat 2×5 at 100 kg
squat 100 5 5 5, gryf był krzywy => barbell back squat 3×5 at 100 kg
squat 100 5 5, bar => ask: barbell back squat 5 at 100 kg, 5 at 20 kg warmup
squat 10 bar, 60x5 => barbell back squat 10 at 20 kg warmup, 5 at 60 kg
squat 10 with the bar, felt light, 60x5 => barbell back squat 10 at 20 kg warmup, 5 at 60 kg
bench 60 8 8 then 15 with the bar => barbell bench press 2×8 at 60 kg, 15 at 20 kg warmup
bench 60 8 8 8 plates rattled => barbell bench press 3×8 at 60 kg
bench 60 5 5 5 plate fell off => barbell bench press 3×5 at 60 kg
deadlift 2x5 120, 1 plate wobbled => conventional deadlift 2×5 at 120 kg
deadlift 2x5 120 (1 plate was loose) => conventional deadlift 2×5 at 120 kg
squat 3x5 100, one plate kept sliding => barbell back squat 3×5 at 100 kg
leg press 3x10 120, 1 plate stuck => leg press 3×10 at 120 kg
squat 60 5 5 5 with the bar on my back => barbell back squat 3×5 at 60 kg
bench 60 8 8 then 15 with the bar felt easy => barbell bench press 2×8 at 60 kg, 15 at 20 kg warmup
pull ups 8 8 7 bar was slippery => pull-up 2×8, 7
pull ups 8 8 7 on the bar => pull-up 2×8, 7
squat 5 5 5 at 100, bar slid twice => ask: barbell back squat 3×5 at 100 kg
deadlift 60x5, 2 plates 5 reps => conventional deadlift 5 at 60 kg, 5 at 100 kg
"""),
)
def test_what_is_said_of_bar_and_plates_is_no_load(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
bench 3x5 75 with a spotter => barbell bench press 3×5 at 75 kg
squat 3x5 75kg with a spotter => barbell back squat 3×5 at 75 kg
bench 3x5 75 spotted => barbell bench press 3×5 at 75 kg
bench 3x5 75 with a bit of help => barbell bench press 3×5 at 75 kg
bench 70 8 8 6 with a spotter => barbell bench press 2×8 at 70 kg, 6 at 70 kg
bench 70x8, 6 with a spotter => ask: barbell bench press 8 at 70 kg, 6 at 70 kg
bench 70x8 + 2 with a spotter => barbell bench press 8 at 70 kg
bench 70x8, 4 partials => barbell bench press 8 at 70 kg
"""),
)
def test_a_spotter_takes_no_load_away(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
leg ext 3x12 45 left leg a bit weaker => leg extension 3×12 at 45 kg
bss 3x8 20kg left side wobbly => bulgarian split squat 3×8 at 20 kg each
db row 3x10 30kg left arm felt weak => dumbbell row 3×10 at 30 kg each
bss 20kg 3x8 right leg felt shaky => bulgarian split squat 3×8 at 20 kg each
seated leg curl 3x12 40 left leg did most of the work => seated leg curl 3×12 at 40 kg
db row 3x10 30kg left arm felt weak, right arm fine => dumbbell row 3×10 at 30 kg each
kurzhantelrudern 3x10 30kg linker Arm war schwach => dumbbell row 3×10 at 30 kg each
extensión de piernas 3x12 45 pierna izquierda más débil => leg extension 3×12 at 45 kg
cadeira extensora 3x12 45 perna esquerda mais fraca => leg extension 3×12 at 45 kg
db row 3x10 30kg left arm => dumbbell row 3×10 at 30 kg each left
side plank 30s left shaky, 30s right ok => side plank 30 s left, 30 s right
suitcase carry 24kg 40m left hand slipped => suitcase carry 40 m at 24 kg
db row 3x10 30kg left arm only => dumbbell row 3×10 at 30 kg each left
db row 30kg left arm 10 right arm 9 felt good => \
dumbbell row 10 at 30 kg each left, 9 at 30 kg each right
"""),
)
def test_a_limb_that_a_remark_is_about_is_no_side(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
push ups 30, 25, 20 in between => push-up 30, 25, 20
chins 8, 7, 6 between => chin-up 8, 7, 6
chins 8, 7, 6 in between bench sets => chin-up 8, 7, 6
dips 12, 10, 8 resting between => dip 12, 10, 8
{doing: push-up} 30, 25, 20 in between => push-up 30, 25, 20
klimmzüge 8, 7, 6 dazwischen => pull-up 8, 7, 6
dominadas 8, 7, 6 entre series => pull-up 8, 7, 6
push ups 60, 60, 60 rest => ask: push-up 3×60
pull ups 5, 5, 5 between => ask: pull-up 3×5
bench 60 8, 8, 7, 2 between => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60 8, 8, 7, 90 rest => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 3x5 80, 90 between => barbell bench press 3×5 at 80 kg
bench 3x5, 3 between => barbell bench press 3×5
"""),
)
def test_the_last_of_a_list_is_no_rest(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("text", ["the first two were easy", "last two felt heavy", "first 3 were easy"])
def test_what_several_sets_were_like_is_no_set(text: str) -> None:
    standing = situation(doing="barbell back squat", last={"barbell back squat": "60"})

    assert said(text, standing) == "no sets"
