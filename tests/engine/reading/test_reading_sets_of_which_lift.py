"""Sets, names of reps and ways of lifting between which nobody can tell whose they are, are asked about."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
squat 140x1, then 142.5x3 deadlift => barbell back squat 1 at 140 kg; conventional deadlift 3 at 142.5 kg
dips 15, 12, then 25, 20 sit ups => dip 15, 12; sit-up 25, 20
90x5 squat, then 60x8, 70x8 bench => barbell back squat 5 at 90 kg; barbell bench press 8 at 60 kg, 8 at 70 kg
squat 3x5 100. 60x8, 70x8 bench => barbell back squat 3×5 at 100 kg; barbell bench press 8 at 60 kg, 8 at 70 kg
squat 100x5, single leg 20x8 => ask: barbell back squat 5 at 100 kg, 8 at 20 kg
squat 100x5, single leg 3x8 => barbell back squat 5 at 100 kg; pistol squat 3×8
bench 3x5 80 x2 double 90 => ask: barbell bench press 3×5 at 90 kg, 2 at 80 kg
squat 100x5 single 90s rest => ask: barbell back squat 5 at 100 kg
squat 120x5 double at 100 => barbell back squat 5 at 120 kg, 2 at 100 kg
squat 100x5 double 110x2 => barbell back squat 5 at 100 kg, 2 at 110 kg
bench 60x5 80x3 single 100 => barbell bench press 5 at 60 kg, 3 at 80 kg, 1 at 100 kg
squat 3x5 100 triple 120 => barbell back squat 3×5 at 100 kg, 3 at 120 kg
pull ups 8 neutral, 6 wide, 5 => ask: neutral-grip pull-up 8; pull-up 6, 5
pull ups 8 neutral, 6, 5 wide => ask: neutral-grip pull-up 8; pull-up 6, 5
pull ups 8 8 neutral, 6 6 wide => neutral-grip pull-up 2×8; pull-up 2×6
pull ups 8 wide, 6, 5 => pull-up 8, 6, 5
klimmzüge 8, 6, 5 neutral => ask: neutral-grip pull-up 8, 6, 5
kreuzheben 3x5 100, sumo => sumo deadlift 3×5 at 100 kg
marklyft 3x5 100, sumo => sumo deadlift 3×5 at 100 kg
klimmzüge 8 neutral, 6 5 => neutral-grip pull-up 8, 6, 5
liegestütze 20, neutral => push-up 20
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_may_be_of_either_is_asked(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text",
    [
        "squat 5x5 100 double 60kg belt",
        "squat 5x5 100, double 60",
        "squat 90x1, then 70x4, hit 95 for a triple on deadlift",
        "kniebeuge 90x1, dann 70x4, 95x3 kreuzheben",
    ],
)
def test_sets_that_can_hardly_be_what_they_seem_are_asked_about(text) -> None:
    assert said(text).startswith("ask")
