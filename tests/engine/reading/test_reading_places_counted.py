"""Which of the sets one was adds none: "60x8 3rd of 3", "100x5 3/5", and neither do the first of several at a load."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

REMARKS = """
bench 60x8 first of 3                 => barbell bench press 8 at 60 kg
bench 60x8 3rd of 3                   => barbell bench press 8 at 60 kg
bench 60x8 (last of three)            => barbell bench press 8 at 60 kg
bench 60x8 third set of 3             => barbell bench press 8 at 60 kg
bench 60x8, the 2nd of 3 was ugly     => barbell bench press 8 at 60 kg
bench 60x8, 2nd of 3, 60x7            => barbell bench press 8 at 60 kg, 7 at 60 kg
bench 60x8 60x8, last of 3 60x7       => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60x8 2nd out of 3               => barbell bench press 8 at 60 kg
squat 100x5 3rd of 5 sets             => barbell back squat 5 at 100 kg
squat 100x5 3rd of 3, bench 60x8 1st of 3 => barbell back squat 5 at 100 kg; barbell bench press 8 at 60 kg
kniebeuge 60x8 letzter von 3          => barbell back squat 8 at 60 kg
bankdrücken 60x8 2. von 3             => barbell bench press 8 at 60 kg
sentadilla 100x5 primera de 3         => barbell back squat 5 at 100 kg
sentadilla 100x5 3a de 5              => barbell back squat 5 at 100 kg
squat 100x5 3ème de 5                 => barbell back squat 5 at 100 kg
"""
REPS_BEHIND = """
bench 60x8 8/7                        => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60x8/7                          => barbell bench press 8 at 60 kg, 7 at 60 kg
bench 60 8/8/7                        => barbell bench press 2×8 at 60 kg, 7 at 60 kg
bench 60x8, first 3x5 at 50           => barbell bench press 8 at 60 kg, 3×5 at 50 kg
squat 5x5 100, first 2 easy           => barbell back squat 5×5 at 100 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), [*readings(REMARKS), *readings(REPS_BEHIND)])
def test_a_place_among_the_sets_is_no_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text",
    [
        "squat 100x5 3/5",
        "squat 100x5 (4/5)",
        "bench 60x8 2/3",
        "bench 60x8 3 of 3",
        "bench 3x8 60, 3rd of 3 at 55",
        "bench 60x8, 8, last of 3 6",
        "squat 5x5 100, first 2 at 90",
        "squat 5x5 100 (first 2 90)",
        "bench 5x5 80, first 3 @ 75",
        "squat 100 5 5 5 5 5, first 2 at 90",
        "kniebeuge 5x5 100, die ersten 2 mit 90",
        "bänkpress 5x5 80, första 2 på 75",
        "bench 5x5 80, eerste 2 met 75",
    ],
)
def test_what_may_be_of_sets_that_were_told_is_asked_about(text: str) -> None:
    assert said(text).startswith("ask:")
