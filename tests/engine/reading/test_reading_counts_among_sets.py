"""Counts, brackets and remarks among sets: what they count adds no set and loses none, or it is asked."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

PLACES_OF_SESSIONS = """
squat 100 5 5 5 week 3 of 8                  => barbell back squat 3×5 at 100 kg
squat 100x5 5 4 day 2 of 4                   => barbell back squat 2×5 at 100 kg, 4 at 100 kg
Kniebeuge 100 5 5 5 Woche 3 von 8            => barbell back squat 3×5 at 100 kg
bänkpress 80 8 8 7 vecka 3 av 8              => barbell bench press 2×8 at 80 kg, 7 at 80 kg
bench 80 8 8 7 5 weeks out                   => barbell bench press 2×8 at 80 kg, 7 at 80 kg
"""

ANNOUNCED = """
squat 100x5 two warm up ones: 60x5, 80x5      => barbell back squat 5 at 100 kg, 5 at 60 kg warmup, 5 at 80 kg warmup
squat 100x5 3 light ones: 60x5, 60x5, 60x5         => barbell back squat 5 at 100 kg, 3×5 at 60 kg
squat 100x5 two back offs: 80x5, 80x5              => barbell back squat 5 at 100 kg, 2×5 at 80 kg
squat 100x5 3 lighter sets: 80x5, 80x5, 80x5       => barbell back squat 5 at 100 kg, 3×5 at 80 kg
squat 100x5 two attempts: 120x1, 125x1             => barbell back squat 5 at 100 kg, 1 at 120 kg, 1 at 125 kg
squat 100x5, two drops: 80x5, 60x5                 => barbell back squat 5 at 100 kg, 5 at 80 kg drop, 5 at 60 kg drop
squat 100x5 2 drop sets 80x5 60x5                  => barbell back squat 5 at 100 kg, 5 at 80 kg drop, 5 at 60 kg drop
squat 100x5 two more: 80x5, 80x4                   => barbell back squat 5 at 100 kg, 5 at 80 kg, 4 at 80 kg
squat 100x5 + 2 back offs 80x5 80x5                => barbell back squat 5 at 100 kg, 2×5 at 80 kg
squat 100x5 + 2 back offs 80x5                     => barbell back squat 5 at 100 kg, 2×5 at 80 kg
bench 3x5 100, 2 back offs 80x8, 80x8              => barbell bench press 3×5 at 100 kg, 2×8 at 80 kg
squat 100x5, 1 back off 80x8                       => barbell back squat 5 at 100 kg, 8 at 80 kg
squat 100x5 1 back off set: 80x8                   => barbell back squat 5 at 100 kg, 8 at 80 kg
Kniebeuge 100x5 zwei Backoff Sätze: 80x5, 80x5     => barbell back squat 5 at 100 kg, 2×5 at 80 kg
squat 100x5 2 backoffs 80x5                        => ask: barbell back squat 5 at 100 kg, 5 at 80 kg
squat 100x5 3 light ones: 60x5, 60x5               => ask: barbell back squat 5 at 100 kg, 2×5 at 60 kg
bench 80x8, 3 more: 80x8, 80x7                     => ask: barbell bench press 2×8 at 80 kg, 7 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(PLACES_OF_SESSIONS))
def test_which_session_it_was_takes_no_set_in_front_of_it(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(("text", "context", "meant"), readings(ANNOUNCED))
def test_a_count_ahead_of_its_list_is_no_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
