"""Lists that a line heads as a plan, and passwords spelt as sets: none, or asked about. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
coach sent me this for the week: // 1) rdl 3x8 90 // 2) leg press 3x12 160 // 3) plank 3x60s // too much? => no sets
my trainer wrote this for next week: // row 3x12 55 // squat 3x5 100 => no sets
trainer schickte mir das für die woche: // kniebeuge 3x5 100 => no sets
le coach m'a envoyé ça pour la semaine : // squat 3x5 100 => no sets
mijn coach stuurde dit: // squat 3x5 100 // te veel? => no sets
тренер прислал это: // присед 3x5 100 // много? => no sets
my coach sent this: // squat 3x5 100 => ask: barbell back squat 3×5 at 100 kg
mi entrenador me mandó esto: // sentadilla 3x5 100 => ask: barbell back squat 3×5 at 100 kg
coach wants me to do this: // squat 3x5 100, plank 60s => ask: barbell back squat 3×5 at 100 kg; plank 60 s
this week's plan: // bench 3x5 80 => ask: barbell bench press 3×5 at 80 kg
plan de la semana: // sentadilla 3x5 100 => ask: barbell back squat 3×5 at 100 kg
found this routine online: // squat 3x5 100 => ask: barbell back squat 3×5 at 100 kg
coach sent me this for the week: // squat 3x5 100 // did it all => ask: barbell back squat 3×5 at 100 kg
coach gave me this and i did it: // squat 3x5 100 => barbell back squat 3×5 at 100 kg
did my program today: // bench 3x5 80 => barbell bench press 3×5 at 80 kg
plan: squat 5x5 100 // done: squat 5x4 100 => barbell back squat 5×4 at 100 kg
coach's workout: // bench 3x5 80 => barbell bench press 3×5 at 80 kg
for coach: // bench 3x5 80 => barbell bench press 3×5 at 80 kg
the wifi password here is bench5x5 haha => no sets
wifi password squat3x8 => no sets
their wifi is called row4x12 => no sets
das wlan passwort ist bench5x5 => no sets
la contraseña del wifi es bench5x5 => no sets
hasło do wifi to bench5x5 => no sets
пароль от вайфая bench5x5 => no sets
squat 3x5 100, wifi password is bench5x5 => barbell back squat 3×5 at 100 kg
no wifi here, bench 5x5 100 => barbell bench press 5×5 at 100 kg
wifi is down, bench5x5 100 => barbell bench press 5×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_list_headed_as_a_plan_and_a_password_are_not_recorded(text, context, meant) -> None:
    assert said(text, context) == meant
