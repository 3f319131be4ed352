"""Answers to an open question that tell more of the sets: all of it is taken, or it is asked again."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

ANSWERED = """
row 3x12 22.5 | barbell, and from yesterday => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | barbell yesterday => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | barbell from yesterday => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | barbell, that was yesterday => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | barbell, and 25 not 22.5 => barbell row 3×12 at 25 kg
row 3x12 22.5 | barbell, last was 10 => barbell row 2×12 at 22.5 kg, 10 at 22.5 kg
row 3x12 22.5 | barbell, rpe 8 => barbell row 3×12 at 22.5 kg RPE 8
row 3x12 22.5 | barbell rpe 8 => barbell row 3×12 at 22.5 kg RPE 8
row 3x12 22.5 | barbell, last to failure => barbell row 2×12 at 22.5 kg, 12 at 22.5 kg to failure
row 3x12 22.5 | barbell, in lbs => barbell row 3×12 at 22.5 lb
row 3x12 22.5 | 1, from yesterday => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | the first, but yesterday => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | sorry, barbell, yesterday => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5, bench 3x8 60 | barbell, and yesterday => barbell row 3×12 at 22.5 kg; barbell bench press 3×8 at 60 kg on 2025-03-13
row 3x12 22.5 | barbell, felt better than yesterday => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | barbell like yesterday => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | the barbell one, not from yesterday => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | barbell, today was hard => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | barbell, not to failure => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | barbell, kg => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | barbell, thanks => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | barbell and 22.5 => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | barbell, not dumbbell => barbell row 3×12 at 22.5 kg
row 3x12 22.5 | barbell and it was 25 =>
row 3x12 22.5 | langhantel, und von gestern => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | barra, y de ayer => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | barre, et d'hier => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | bilanciere, e di ieri => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | barbell, en van gisteren => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | sztanga, i z wczoraj => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | barra, e de ontem => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | штанга, и вчера => barbell row 3×12 at 22.5 kg on 2025-03-13
row 3x12 22.5 | skivstång, och från igår => barbell row 3×12 at 22.5 kg on 2025-03-13
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(ANSWERED))
def test_what_stands_beside_an_answer_is_not_lost(told: str, standing: str) -> None:
    assert standing_after(told) == standing


NUMBERS_IN_DOUBT = """
curl dumbbell 14x12 | 60x8 =>
curl dumbbell 14x12 | 12 reps at 14 => dumbbell curl 12 at 14 kg each
curl dumbbell 14x12 | bench 60x8 => barbell bench press 8 at 60 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(NUMBERS_IN_DOUBT))
def test_a_set_that_shares_no_number_is_none_told_again(told: str, standing: str) -> None:
    assert standing_after(told) == standing
