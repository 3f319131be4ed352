"""What it was not ahead of what it was, efforts denied, and sets pointed at by a load, a mark or a place in a unit."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        sentadilla 100x8 | no 8 sino 7 => barbell back squat 7 at 100 kg
        sentadilla 100x8 | no fueron 8 sino 7 => barbell back squat 7 at 100 kg
        squat 80x8 | pas 80 mais 82.5 => barbell back squat 8 at 82.5 kg
        squat 100x8 | non 8 ma 7 => barbell back squat 7 at 100 kg
        przysiad 100x8 | nie 8 tylko 7 => barbell back squat 7 at 100 kg
        squat 3x5 100 @8 | rpe 9 not 8 => barbell back squat 3×5 at 100 kg RPE 9
        squat 3x5 100 | la última fue de 4 => barbell back squat 2×5 at 100 kg, 4 at 100 kg
        squat 3x5 225 | set 3 was in lbs => barbell back squat 2×5 at 225 kg, 5 at 225 lb
        dip 8 | the 8s were yesterday => dip 8
        leg extension 3x12 50 | delete sets 1-2 => leg extension 12 at 50 kg
        curl 12x12 dumbbell, drop 8x10 | remove the drops => dumbbell curl 12 at 12 kg each
        squat 100x5, 110x1 miss | delete the miss => barbell back squat 5 at 100 kg
    """),
)
def test_what_is_denied_or_pointed_at_is_put_right(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
        pull ups 8 7 6 | had 5kg on => pull-up 8 at +5 kg, 7 at +5 kg, 6 at +5 kg
        dips 8 8 | had 10 on the belt => dip 2×8 at +10 kg
        squat 100x5 | another 5kg => barbell back squat 5 at 100 kg
        bankdrücken 80x5 | noch 2,5 => barbell bench press 5 at 80 kg
        squat 60x5 | 80x5 | esas dos fueron calentamiento => barbell back squat 5 at 60 kg warmup, 5 at 80 kg warmup
        squat 60x5 | 80x5 | 100x5 | those two were warm ups => barbell back squat 5 at 60 kg, 5 at 80 kg, 5 at 100 kg
        squat 100x5 | drop the weight => barbell back squat 5 at 100 kg
    """),
)
def test_what_was_hung_on_or_is_put_on_is_no_set(told: str, standing: str) -> None:
    assert standing_after(told) == standing
