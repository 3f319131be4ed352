"""Sets told beside those that were done in their place are no sets of today, and what sets come to is none either."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
squat 3x5 100 instead of front squat 3x5 80 => barbell back squat 3×5 at 100 kg
squat 3x5 100 rather than front squat 3x5 80, belt => barbell back squat 3×5 at 100 kg
instead of front squat 3x5 80 squat 3x5 100 => barbell back squat 3×5 at 100 kg
instead of front squat 3x5 80, squat 3x5 100 => barbell back squat 3×5 at 100 kg
bench 3x8 80 instead of 85 => barbell bench press 3×8 at 80 kg
Kniebeuge 3x5 100 statt Frontkniebeuge 3x5 80 => barbell back squat 3×5 at 100 kg
statt Frontkniebeuge 3x5 80 Kniebeuge 3x5 100 => barbell back squat 3×5 at 100 kg
sentadilla 3x5 100 en vez de sentadilla frontal 3x5 80 => barbell back squat 3×5 at 100 kg
squat 3x5 100 au lieu de front squat 3x5 80 => barbell back squat 3×5 at 100 kg
squat 3x5 100 invece di front squat 3x5 80 => barbell back squat 3×5 at 100 kg
agachamento 3x5 100 em vez de supino 3x5 80 => barbell back squat 3×5 at 100 kg
squat 3x5 100 in plaats van front squat 3x5 80 => barbell back squat 3×5 at 100 kg
knäböj 3x5 100 istället för frontböj 3x5 80 => barbell back squat 3×5 at 100 kg
przysiad 3x5 100 zamiast wyciskanie 3x5 80 => barbell back squat 3×5 at 100 kg
присед 3x5 100 вместо жим лежа 3x5 80 => barbell back squat 3×5 at 100 kg
bench 80x8 = 640 total => barbell bench press 8 at 80 kg
squat 100x5 = 500 total => barbell back squat 5 at 100 kg
bench 3x8 80 = 1920 kg total => barbell bench press 3×8 at 80 kg
bench 80x8 = 640 => barbell bench press 8 at 80 kg
bankdrücken 80x8 = 640 insgesamt => barbell bench press 8 at 80 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_what_was_not_done_and_what_sets_come_to_are_no_sets(text, context, meant) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    "text",
    [
        "squat 3x5 100 instead of front squat 3x5 80 and bench 3x5 60",
        "squat 3x5 100 instead of 3x5 110",
        "bench 80x8 = 600 total",
    ],
)
def test_where_it_is_open_which_sets_were_done_it_is_asked(text) -> None:
    assert said(text).startswith("ask:")
