"""What sets were not, told ahead of what they were: equipment, units and days."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

THINGS = """
bench 2x8 60 | not barbell, smith machine => smith machine bench press 2×8 at 60 kg
bench 2x8 30 | no barbell, dumbbells => dumbbell bench press 2×8 at 30 kg each
bench 2x8 30 | not dumbbells => barbell bench press 2×8 at 30 kg
barbell curl 2x10 30 | not bb but ez => ez-bar curl 2×10 at 30 kg
barbell curl 2x10 30 | wasn't a barbell, it was the ez bar => ez-bar curl 2×10 at 30 kg
bench 2x8 60 | no belt, straps => barbell bench press 2×8 at 60 kg
bench 2x8 60 | not kilos, pounds => barbell bench press 2×8 at 60 lb
bench 2x8 60 | no kilos, pounds => barbell bench press 2×8 at 60 lb
bench 2x8 60 | not kg but lb => barbell bench press 2×8 at 60 lb
bench 2x8 60 | keine kilos, pfund => barbell bench press 2×8 at 60 lb
bench 2x8 60 | sind pfund, keine kilos => barbell bench press 2×8 at 60 lb
bench 2x8 60 | no eran kilos, eran libras => barbell bench press 2×8 at 60 lb
bench 2x8 60 | libras, no kilos => barbell bench press 2×8 at 60 lb
bench 2x8 60 | son libras => barbell bench press 2×8 at 60 lb
bench 2x8 60 | ce sont des livres, pas des kilos => barbell bench press 2×8 at 60 lb
bench 2x8 60 | sono libbre, non chili => barbell bench press 2×8 at 60 lb
bench 2x8 60 | são libras, não quilos => barbell bench press 2×8 at 60 lb
bench 2x8 60 | zijn ponden, geen kilo's => barbell bench press 2×8 at 60 lb
bench 2x8 60 | to funty, nie kilogramy => barbell bench press 2×8 at 60 lb
bench 2x8 60 | это фунты, а не кило => barbell bench press 2×8 at 60 lb
bench 2x8 60 | det är pund, inte kilo => barbell bench press 2×8 at 60 lb
bench 2x8 60 | my son was there => barbell bench press 2×8 at 60 kg
bench 2x8 60 | not today, yesterday => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | not today but yesterday => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | nicht heute, gestern => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | no hoy, ayer => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | non oggi, ieri => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | não hoje, ontem => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | niet vandaag, gisteren => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | nie dzisiaj, wczoraj => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | inte idag, igår => barbell bench press 2×8 at 60 kg on 2025-03-13
bench 2x8 60 | not today, monday then => barbell bench press 2×8 at 60 kg
bench 2x8 60 | not today, maybe tomorrow => barbell bench press 2×8 at 60 kg
bench 2x8 60 | no training today, monday then => barbell bench press 2×8 at 60 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(THINGS))
def test_what_it_was_stands_behind_what_it_was_not(told, standing):
    assert standing_after(told) == standing
