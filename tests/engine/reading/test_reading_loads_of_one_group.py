"""Weight added to the body behind the last of several groups of sets: of that group, or asked."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

OF_THE_LAST_GROUP = """
pull ups 3x8, 2x5 +10 => pull-up 3×8, 2×5 at +10 kg
pull ups 3x8, 2x5 with 10kg => pull-up 3×8, 2×5 at +10 kg
pull ups 3x8; 2x5 +10 => pull-up 3×8, 2×5 at +10 kg
pull ups 3x8 and 2x5 +10 => pull-up 3×8, 2×5 at +10 kg
pull ups 3x8 // 2x5 +10 => pull-up 3×8, 2×5 at +10 kg
pull ups 3x8, 2x5 +10, 1x3 +20 => pull-up 3×8, 2×5 at +10 kg, 3 at +20 kg
dips 3x10, 3x5 @ 20kg => dip 3×10, 3×5 at +20 kg
pull ups 3x8, 3x5 -20 => pull-up 3×8, 3×5 at −20 kg
plank 3x60s, 2x30s with 10kg => plank 3×60 s, 2×30 s at +10 kg
{last: pull-up 5} pull ups 3x8, 2x5 with 10kg => pull-up 3×8, 2×5 at +10 kg
klimmzüge 3x8, 2x5 mit 10 kg => pull-up 3×8, 2×5 at +10 kg
tractions 3x8, 2x5 avec 10 kg => pull-up 3×8, 2×5 at +10 kg
подтягивания 3x8, 2x5 +10 => pull-up 3×8, 2×5 at +10 kg
pull ups 8 +10, 6 +15 => pull-up 8 at +10 kg, 6 at +15 kg
dips 10 bw, 8 +10, 6 +20 => dip 10, 8 at +10 kg, 6 at +20 kg
"""
OF_ALL = """
pull ups 3x8, 2x5, all +10 => pull-up 3×8 at +10 kg, 2×5 at +10 kg
pull ups 3x8, 2x5 both +10 => pull-up 3×8 at +10 kg, 2×5 at +10 kg
dips 8 8 8 all +10 => dip 3×8 at +10 kg
pull ups 8, 8, 5 with 10 kg => pull-up 2×8 at +10 kg, 5 at +10 kg
bench 3x8, 2x5 @60 => barbell bench press 3×8 at 60 kg, 2×5 at 60 kg
"""
OF_ALL_OR_THE_LAST = """
pull ups 8, 8, 5 +10 => ask: pull-up 2×8 at +10 kg, 5 at +10 kg | pull-up 2×8, 5 at +10 kg
pull ups 8 8 8, 5 5 with 10kg => ask: pull-up 3×8 at +10 kg, 2×5 at +10 kg | pull-up 3×8, 2×5 at +10 kg
pull ups 8 8 8, 5 5 10kg => ask: pull-up 3×8 at +10 kg, 2×5 at +10 kg | pull-up 3×8, 2×5 at +10 kg
pull ups 3x8 2x5 +10 => ask: pull-up 3×8 at +10 kg, 2×5 at +10 kg | pull-up 3×8, 2×5 at +10 kg
dips 10, 8 with 5 kg, 6 with 7 kg => ask: dip 10 at +5 kg, 8 at +5 kg, 6 at +7 kg | dip 10, 8 at +5 kg, 6 at +7 kg
"""


@pytest.mark.parametrize(
    ("text", "known", "meant"),
    [row for table in (OF_THE_LAST_GROUP, OF_ALL, OF_ALL_OR_THE_LAST) for row in readings(table)],
)
def test_a_load_is_of_the_group_that_it_stands_behind(text: str, known: Context, meant: str) -> None:
    assert said(text, known) == meant


@pytest.mark.parametrize("text", ["pull ups 5 +10, 8", "weighted pull ups 3x8, 2x5 +10", "pull ups 3x8, 2x5 +10 1x3"])
def test_a_load_whose_sets_nobody_can_tell_is_asked_about(text: str) -> None:
    assert said(text).startswith("ask: ")
