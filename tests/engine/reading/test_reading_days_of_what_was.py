"""The day of something without numbers is none of the sets of another day that are told behind it."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
legs were on monday, today just bench 3x8 65 => barbell bench press 3×8 at 65 kg
did legs on monday, today just bench 3x8 65 => barbell bench press 3×8 at 65 kg
sore from monday, today bench 3x8 65 => barbell bench press 3×8 at 65 kg
monday legs, tuesday bench 3x8 65 => barbell bench press 3×8 at 65 kg on 2025-03-11
beine waren am montag, heute nur bankdrücken 3x8 65 => barbell bench press 3×8 at 65 kg
piernas fueron el lunes, hoy solo press banca 3x8 65 => barbell bench press 3×8 at 65 kg
gambe lunedì, oggi panca piana 3x8 65 => barbell bench press 3×8 at 65 kg
pernas foram ontem, hoje supino 3x8 65 => barbell bench press 3×8 at 65 kg
legs on monday, bench 3x8 65 => ask: barbell bench press 3×8 at 65 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_the_day_of_something_else_is_none_of_the_sets(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize("text", ["legs monday, today 3x8 65", "monday, tuesday bench 3x8 65"])
def test_two_days_of_the_same_sets_are_asked_about(text) -> None:
    assert said(text).startswith("ask")
