"""The warm-up, the drop and the back-off told of behind the sets: they change no work set."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

DIALOGUES = """
squat 85x5 | squat warmup was 60x5 => barbell back squat 5 at 85 kg, 5 at 60 kg warmup
squat 3x5 85 | my warm up was 60x5 => barbell back squat 3×5 at 85 kg, 5 at 60 kg warmup
bench 3x8 60 | the warm-up set was 40x8 => barbell bench press 3×8 at 60 kg, 8 at 40 kg warmup
squat 85x5 | Aufwärmen war 60x5 => barbell back squat 5 at 85 kg, 5 at 60 kg warmup
squat 85x5 | échauffement était 60x5 => barbell back squat 5 at 85 kg, 5 at 60 kg warmup
squat 85x5 | calentamiento fue 60x5 => barbell back squat 5 at 85 kg, 5 at 60 kg warmup
squat 85x5 | rozgrzewka była 60x5 => barbell back squat 5 at 85 kg, 5 at 60 kg warmup
squat 85x5 | the drop set was 60x8 => barbell back squat 5 at 85 kg, 8 at 60 kg drop
squat 85x5 | backoff was 60x8 => barbell back squat 5 at 85 kg, 8 at 60 kg
squat 100x5 80x8 | backoff was 85x8 => barbell back squat 5 at 100 kg, 8 at 85 kg
squat 60x5 warmup, 85x5 | squat warmup was 50x5 => barbell back squat 5 at 50 kg warmup, 5 at 85 kg
squat 60x5 warmup, 85x5 | warmup was 8 reps => barbell back squat 8 at 60 kg warmup, 5 at 85 kg
squat 60x5 warmup, 85x5 | warmup was 55x5 not 60x5 => barbell back squat 5 at 55 kg warmup, 5 at 85 kg
squat 60x5 85x5 | warmup was 60x5 => barbell back squat 5 at 60 kg warmup, 5 at 85 kg
squat 60x5 70x3 85x5 | warmups were 60x5 and 70x3 => barbell back squat 5 at 60 kg warmup, 3 at 70 kg warmup, 5 at 85 kg
squat 60x5 85x5 | warm up was the 60 => barbell back squat 5 at 60 kg warmup, 5 at 85 kg
squat 85x5 | warmup was 60 => barbell back squat 5 at 85 kg
squat 85x5 | my warmup set was only 4 => barbell back squat 5 at 85 kg
squat 85x5 | warmup was easy => barbell back squat 5 at 85 kg
squat 85x5 | the warm-up was 10 min bike => barbell back squat 5 at 85 kg
squat 85x5 | drop set was brutal => barbell back squat 5 at 85 kg
squat 85x5 | that was a warm up => barbell back squat 5 at 85 kg warmup
squat 85x5 | warm up that was => barbell back squat 5 at 85 kg warmup
squat 60x5 85x5 | warmups were 60x5 and 70x3 => barbell back squat 5 at 60 kg, 5 at 85 kg
squat 60x5 w, 70x3 w, 85x5 | warmup was 65x5 => barbell back squat 5 at 60 kg warmup, 3 at 70 kg warmup, 5 at 85 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(DIALOGUES))
def test_what_stands_after_the_warm_up_is_told(told: str, standing: str) -> None:
    assert standing_after(told) == standing
