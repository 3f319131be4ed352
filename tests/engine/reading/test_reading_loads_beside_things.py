"""A number right behind sets and reps that a word behind it counts as something else may be their load: asked. Common
practice, no source.
"""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import readings, said

TOLD = """
squat 3x5 100 dollars => ask: barbell back squat 3×5 | barbell back squat 3×5 at 100 kg
squat 3x5 100 km from home => ask: barbell back squat 3×5 | barbell back squat 3×5 at 100 kg
squat 3x5 100 kcal => ask: barbell back squat 3×5 | barbell back squat 3×5 at 100 kg
sentadilla 3x5 100 km de casa => ask: barbell back squat 3×5 | barbell back squat 3×5 at 100 kg
kniebeuge 3x5 100 euro => ask: barbell back squat 3×5 | barbell back squat 3×5 at 100 kg
squat 3x5 100 degrees => ask: barbell back squat 3×5 at 100 kg
bench 3x8 lots of breaks => ask: barbell bench press 3×8 | barbell bench press 8×3
squat 3x5 100 100 kcal => barbell back squat 3×5 at 100 kg
squat 3x5, 100 kcal => barbell back squat 3×5
squat 100x5 100 kcal => barbell back squat 5 at 100 kg
push ups 3x10 100 kcal => push-up 3×10
bench 3x8 90 sec rest => barbell bench press 3×8
incline bench 3x8 30 degrees => incline barbell bench press 3×8
squat 3x5 8 km run => barbell back squat 3×5
bench 3x8 60 lots of breaks => barbell bench press 3×8 at 60 kg
bench 3 lots of eight at 60 => barbell bench press 3×8 at 60 kg
"""


@pytest.mark.parametrize(("text", "context", "meant"), readings(TOLD))
def test_a_load_is_not_lost_to_the_word_behind_it(text, context, meant) -> None:
    assert said(text, context) == meant
