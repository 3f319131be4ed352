"""Sets of a time that is long past are a story: "before my injury i squatted 150x5"; today's beside it are recorded."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import readings, said

STORIES = """
back at school i benched 90x5
in high school i squatted 150x5
in high school, i squatted 150x5
i squatted 150x5 in high school
in the army: squat 150x5
as a teenager i squatted 150x5
on my 18th birthday i squatted 150x5
before my injury i squatted 150x5
before my injury, squat was 150x5
before surgery my squat was 150x5
early this year i squatted 150x5
last spring i squatted 150x5
in january i squatted 150x5
in january squat 150x5
years back i did 20 chins
when i trained at the army gym i benched 100x5
at my strongest i squatted 150x5
during lockdown i did 50 push ups
best deadlift of my life was 190x1, two summers ago
in der schule habe ich bankdrücken 90x5 gemacht
vor meiner verletzung kniebeuge 150x5
antes de mi lesión sentadilla 150x5
en la mili hice sentadilla 150x5
avant ma blessure squat 150x5
au lycée squat 150x5
prima dell'infortunio squat 150x5
voor mijn blessure squat 150x5
przed kontuzją przysiad 150x5
antes da lesão agachamento 150x5
до травмы присед 150x5
före min skada knäböj 150x5
ten years ago i benched 100x5, now only memories
10 years ago squat 150x5
3 months ago i did bench 3x5 60
in 2015 i squatted 150x5
2015: squat 140x3, bench 100x1
bench 100x5 in 2016
found my notebook from 2009: bench 55x8, squat 80x5. i was so thin
found an old diary from 2012, bench 55x8, squat 80x5
vor zehn Jahren bankdrücken 100x5
im jahr 2012 bankdrücken 100x5 gemacht
hace diez años press banca 100x5
en 2015 hacía sentadilla 120x5
il y a 10 ans je faisais développé couché 100x5
je faisais du squat 120x5
dieci anni fa facevo panca 100x5, adesso solo ricordi
nel 2015 facevo squat 120x5
tien jaar geleden bankdrukken 100x5
supino 100x5 dez anos atrás
há dez anos fazia supino 100x5
för tio år sedan bänkpress 100x5
10 lat temu ławka 100x5
rok temu ławka 100x5
десять лет назад жим лежа 100x5
"""


@pytest.mark.parametrize("text", STORIES.strip().splitlines())
def test_sets_of_long_ago_are_a_story(text: str) -> None:
    assert said(text) == "no sets"


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
squat 100x5 felt like before my injury => barbell back squat 5 at 100 kg
squat 100x5 heaviest since early this year => barbell back squat 5 at 100 kg
squat 3x5 100, strongest since my injury => barbell back squat 3×5 at 100 kg
bench 3x5 80 in the army gym => barbell bench press 3×5 at 80 kg
bench 3x5 80 up from 75 in march => barbell bench press 3×5 at 80 kg
bench 3x5 80 (in january 70) => barbell bench press 3×5 at 80 kg
deadlift 190x1, best of my life => conventional deadlift 1 at 190 kg
in high school, i squatted 150x5, today 3x5 100 => barbell back squat 3×5 at 100 kg
squat 3x5 100, in high school i squatted 150x5 => barbell back squat 3×5 at 100 kg
used to hate these, squat 3x5 100 => barbell back squat 3×5 at 100 kg
squat 3x5 100, 2 years ago i could only do the bar => barbell back squat 3×5 at 100 kg
squat 3x5 60 knee surgery 3 months ago => barbell back squat 3×5 at 60 kg
kniebeuge 3x5 100, wie vor 10 jahren => barbell back squat 3×5 at 100 kg
shoes from 2019, squat 3x5 100 => barbell back squat 3×5 at 100 kg
total volume 2015, squat 3x5 90 => barbell back squat 3×5 at 90 kg
bench 2024-11-20 60x8 => barbell bench press 8 at 60 kg on 2024-11-20
"""),
)
def test_todays_sets_beside_a_story_are_recorded(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
used to bench 100x5, now 80x5 => ask: barbell bench press 5 at 80 kg
5 years ago squat 140x5, now 100x5 => ask: barbell back squat 5 at 100 kg
vroeger squat 120x5, nu 100x5 => ask: barbell back squat 5 at 100 kg
kiedyś przysiad 140x5, teraz 100x5 => ask: barbell back squat 5 at 100 kg
avant squat 120x5, maintenant 100x5 => ask: barbell back squat 5 at 120 kg, 5 at 100 kg
in high school i squatted 150x5, bench 100x5 => ask: barbell bench press 5 at 100 kg
"""),
)
def test_what_is_told_behind_a_story_may_be_of_these_days(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant
