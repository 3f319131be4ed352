"""A way or a load told of the last or the first sets of a group, which is that of those sets alone."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

OF_SO_MANY = """
bench 4x8 60, last two close grip => barbell bench press 2×8 at 60 kg; close-grip bench press 2×8 at 60 kg
bench 3x8 60 close grip on the last => barbell bench press 2×8 at 60 kg; close-grip bench press 8 at 60 kg
bench 4x8 60 close grip on the last 2 => barbell bench press 2×8 at 60 kg; close-grip bench press 2×8 at 60 kg
bench 3x8 60 narrow grip on the first => close-grip bench press 8 at 60 kg; barbell bench press 2×8 at 60 kg
bench 60 8 8 7 close grip on the last => ask: barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 4x8 60, last set close grip => barbell bench press 3×8 at 60 kg; close-grip bench press 8 at 60 kg
bench 4x8 60, first two close grip => close-grip bench press 2×8 at 60 kg; barbell bench press 2×8 at 60 kg
bench 4x8 60 last two were close grip => barbell bench press 2×8 at 60 kg; close-grip bench press 2×8 at 60 kg
bench 60 4x8, last two smith => barbell bench press 2×8 at 60 kg; smith machine bench press 2×8 at 60 kg
bench 4x8 @60, last two on the smith => barbell bench press 2×8 at 60 kg; smith machine bench press 2×8 at 60 kg
squat 4x5 100 (last set front) => barbell back squat 3×5 at 100 kg; barbell front squat 5 at 100 kg
squat 4x5 100, last two sets front => barbell back squat 2×5 at 100 kg; barbell front squat 2×5 at 100 kg
pull ups 4x8, last two neutral grip => pull-up 2×8; neutral-grip pull-up 2×8
db curl 4x10 12, last two hammer => dumbbell curl 2×10 at 12 kg each; hammer curl 2×10 at 12 kg each
bench 4x8 60, last two paused => barbell bench press 4×8 at 60 kg
dips 3x10, last set +10 => dip 2×10, 10 at +10 kg
dips 3x10, last set with 10kg => dip 2×10, 10 at +10 kg
pull ups 4x6, last two with 5kg => pull-up 2×6, 2×6 at +5 kg
pull ups 4x6, first set +5 => pull-up 6 at +5 kg, 3×6
squat bar x 10, 60x5, 100x5 => barbell back squat 10 at 20 kg warmup, 5 at 60 kg, 5 at 100 kg
"""
ASKED = (
    "bench 60 8 8 7 6, last two close grip",
    "bench 80x5, 80x5, last one close grip",
    "bench 4x8, last set 70kg",
    "dips 3x10, last set 6 +10",
)


@pytest.mark.parametrize(("text", "known", "meant"), readings(OF_SO_MANY))
def test_a_way_or_a_load_of_some_sets_is_theirs_alone(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize("text", ASKED)
def test_where_the_sets_cannot_be_told_apart_it_is_asked(text: str) -> None:
    assert said(text).startswith("ask: ")
