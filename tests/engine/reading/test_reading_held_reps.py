"""A few seconds that each rep was held or lowered are no load, and reps one had in oneself are no set."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
pull ups 3x6, 2 s hold => pull-up 3×6
pull ups 3x6 with a 2 s hold => pull-up 3×6
dips 3x8, 3 s hold => dip 3×8
bench 3x8 60, 2 s hold => barbell bench press 3×8 at 60 kg
bench 3x8 60, 3 s down, 1 s up => barbell bench press 3×8 at 60 kg
rdl 3x8 85, 3 sec on the way down => romanian deadlift 3×8 at 85 kg
lat raise 3x12 8 (2s hold) => dumbbell lateral raise 3×12 at 8 kg each
klimmzüge 3x6, 2 s halten => pull-up 3×6
kreuzheben 3x8 85, 3 sek nach unten => conventional deadlift 3×8 at 85 kg
dominadas 3x6, 2 s isometría => pull-up 3×6
squat 3x8 85, 3 s à la descente => barbell back squat 3×8 at 85 kg
trazioni 3x6, 2 s tenuta => pull-up 3×6
optrekken 3x6, 2 s vasthouden => pull-up 3×6
podciąganie 3x6, 2 s trzymania => pull-up 3×6
agachamento 3x8 85, 3 s na descida => barbell back squat 3×8 at 85 kg
подтягивания 3x6, 2 с удержание => pull-up 3×6
räckhäv 3x6, 2 s håll => pull-up 3×6
pull ups 3x6, 20 s hold => ask: pull-up 3×6
plank 3x30 s hold => plank 3×30 s
dead hang 3x10 s hold => dead hang 3×10 s
l-sit 5x10s hold => l-sit 5×10 s
push ups 3x10, 30s plank hold => push-up 3×10; plank 30 s
bench 60x5 on the way up 100x1, 80x5 on the way down => barbell bench press 5 at 60 kg, 1 at 100 kg, 5 at 80 kg
bench 80x5, had 8 in me => barbell bench press 5 at 80 kg
bench 80x5, had room for 8 => barbell bench press 5 at 80 kg
bankdrücken 80x5, hatte 8 drin => barbell bench press 5 at 80 kg
press banca 80x5, tenía 8 dentro => barbell bench press 5 at 80 kg
panca piana 80x5, ne avevo ancora 8 => barbell bench press 5 at 80 kg
bankdrukken 80x5, had 8 gekund => barbell bench press 5 at 80 kg
wyciskanie leżąc 80x5, było 8 w zapasie => barbell bench press 5 at 80 kg
жим лежа 80x5, было 8 в запасе => barbell bench press 5 at 80 kg
bänkpress 80x5, hade 8 i mig => barbell bench press 5 at 80 kg
bänkpress 80x5, hade 3 i mig => barbell bench press 5 at 80 kg 3 in reserve
bankdrücken 80x5 hatte 3 drin => barbell bench press 5 at 80 kg 3 in reserve
bench 80x5, room for 2 => barbell bench press 5 at 80 kg 2 in reserve
kreuzheben 100x5, gurt drin => conventional deadlift 5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_how_long_a_rep_was_held_and_what_was_left_is_no_set(text, context, meant) -> None:
    assert said(text, context) == meant
