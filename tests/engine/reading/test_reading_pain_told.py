"""Pain is noted where it is told: not for words that look like it, nor where it is denied beside a tight joint."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

LOOKING_LIKE_PAIN = """\
quads sore from squats => no sets
squat 3x6 75, quads still sore from tuesday's class => barbell back squat 3×6 at 75 kg
squat 3x6 75, legs still aching from monday => barbell back squat 3×6 at 75 kg
ring dips 6 5 5 4, rings were swinging all over => ring dip 6, 2×5, 4
squat 100x5, back went up too early => barbell back squat 5 at 100 kg
the pain in my lower back is gone => no sets
went out last night => no sets
bench 80x5, bar was swinging => barbell bench press 5 at 80 kg
squat 100x5, hips swinging => barbell back squat 5 at 100 kg
squat 3x5 100, broke my knee sleeve => barbell back squat 3×5 at 100 kg
"""
DENIED = """\
squat 100x5, knee tight, no pain though => barbell back squat 5 at 100 kg
ohp 40x5, shoulder tight but no pain => barbell overhead press 5 at 40 kg
squat 100x5 no pain, just tight knees => barbell back squat 5 at 100 kg
squat 100x5, knee stiff but not painful => barbell back squat 5 at 100 kg
kniebeuge 100x5, knie steif, keine schmerzen => barbell back squat 5 at 100 kg
my shoulder isn't bothering me anymore => no sets
"""
TOLD = """\
squat 100x5, knee tight => barbell back squat 5 at 100 kg, pain
squat 100x5, knee sore after it => barbell back squat 5 at 100 kg, pain
after squats my knee is sore => no sets, pain
my wrist is sore after the bench => no sets, pain
squat 100x5, knee swelling => barbell back squat 5 at 100 kg, pain
squat 100x5, no pain. knee tight => barbell back squat 5 at 100 kg, pain
squat 100x5, shoulder tight, no pain in the knee => barbell back squat 5 at 100 kg, pain
squat 100x5, knee tight and hurting => barbell back squat 5 at 100 kg, pain
squat 100x5, no pain, bench 80x5 shoulder tight => barbell back squat 5 at 100 kg; barbell bench press 5 at 80 kg, pain
squat 100x5, my lower back went => barbell back squat 5 at 100 kg, pain
my back is out today => no sets, pain
threw my back out => no sets, pain
twisted my knee yesterday => no sets, pain
hab mir den rücken verrissen => no sets, pain
se me fue la espalda => no sets, pain
je me suis bloqué le dos => no sets, pain
travei as costas => no sets, pain
schiena bloccata => no sets, pain
спину прихватило => no sets, pain
door mijn rug gegaan => no sets, pain
ryggen låste sig => no sets, pain
plecy mi wysiadły => no sets, pain
"""


@pytest.mark.parametrize(("text", "context", "expected"), readings(LOOKING_LIKE_PAIN))
def test_words_a_slip_away_from_pain_tell_of_none(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected


@pytest.mark.parametrize(("text", "context", "expected"), readings(DENIED))
def test_a_tight_joint_without_pain_is_a_remark(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected


@pytest.mark.parametrize(("text", "context", "expected"), readings(TOLD))
def test_pain_that_is_told_is_noted(text: str, context: Context, expected: str) -> None:
    assert said(text, context) == expected
