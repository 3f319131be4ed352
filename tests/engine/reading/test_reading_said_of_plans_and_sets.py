"""What is said of a plan, of some of the sets, and of what stands: opinions, "3 or 4 sets", "first two easy"."""

from __future__ import annotations

import pytest

from engine.reading.values import Context
from tests.engine.reading.saying import dialogues, readings, said, standing_after


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
the 3x10 at 60 you gave me looks light => no sets
the 3x8 bench you gave me is too heavy => no sets
{doing: barbell bench press; last: barbell bench press 50} that 4x8 at 50 is too easy for me => no sets
{doing: barbell bench press; last: barbell bench press 50} those 4x8 at 50 are too heavy => no sets
die 3x10 mit 60 sehen leicht aus => no sets
los 3x10 con 60 son muy fáciles => no sets
les 3x10 à 60 sont trop lourds => no sets
bench 3x10 at 60 looks light => ask: barbell bench press 3×10 at 60 kg
{doing: barbell bench press; last: barbell bench press 50} that 4x8 at 50 was too easy => \
barbell bench press 4×8 at 50 kg
bench 60x8, looks easy on video => barbell bench press 8 at 60 kg
"""),
)
def test_an_opinion_about_a_plan_is_no_set(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
bench 3 or 4 sets of 8 at 70 => ask: barbell bench press 3×8 at 70 kg | barbell bench press 4×8 at 70 kg
squat 4 or 5x5 at 100 => ask: barbell back squat 4×5 at 100 kg | barbell back squat 5×5 at 100 kg
bench 3 oder 4 Sätze mit 8 bei 70 => ask: barbell bench press 3×8 at 70 kg | barbell bench press 4×8 at 70 kg
bench 3x8 or 9 reps at 70 => ask: barbell bench press 3×8 at 70 kg | barbell bench press 3×9 at 70 kg
"""),
)
def test_two_counts_of_sets_are_asked(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("text", "context", "meant"),
    readings("""
bench 3x6 82.5, first two easy, last one a fight => barbell bench press 3×6 at 82.5 kg
bench 82.5 6 6 6, the first two moved well => barbell bench press 3×6 at 82.5 kg
squat 3x6 82.5, last two sets were a grind => barbell back squat 3×6 at 82.5 kg
bankdrücken 3x6 82,5, die ersten zwei leicht, der letzte ein kampf => barbell bench press 3×6 at 82.5 kg
bench 3x8 at 65, could have done 2 more each time => barbell bench press 3×8 at 65 kg 2 in reserve
bench 65 8 8 7, 2 in the tank every time => \
barbell bench press 2×8 at 65 kg 2 in reserve, 7 at 65 kg 2 in reserve
bench 77.5x5 beat my old 75x5 => barbell bench press 5 at 77.5 kg
bench 77.5x5 beating my 75x5 => barbell bench press 5 at 77.5 kg
bench 77.5x5 (old best 75x5) => barbell bench press 5 at 77.5 kg
"""),
)
def test_words_of_some_of_the_sets_are_remarks(text: str, context: Context, meant: str) -> None:
    assert said(text, context) == meant


@pytest.mark.parametrize(
    ("told", "standing"),
    dialogues("""
bench 60x8 | squat 100x5 | whoops, take that last one back => barbell bench press 8 at 60 kg
dips 3x8 | with 10kg added => dip 3×8 at +10 kg
pull ups 8 7 6 | with 5 kg on the belt => pull-up 8 at +5 kg, 7 at +5 kg, 6 at +5 kg
dips 3x8 | mit 10 kg zusatz => dip 3×8 at +10 kg
squat 100x5 | with 10kg added => barbell back squat 5 at 100 kg
squat 100x5 | 5 | missed the 5th on that => barbell back squat 5 at 100 kg, 4 at 100 kg missed
squat 3x5 100 | missed the 5th on the last => barbell back squat 2×5 at 100 kg, 4 at 100 kg missed
squat 3x5 100 | missed the 5th on that => barbell back squat 3×5 at 100 kg
chins 8 | bench 60x8 | delete everything for chins => barbell bench press 8 at 60 kg
chins 8 | bench 60x8 | delete all sets of chins => barbell bench press 8 at 60 kg
chins 8 | bench 60x8 | delete the chins => barbell bench press 8 at 60 kg
chins 8 | bench 60x8 | 8 | scrap everything i logged for chins => barbell bench press 2×8 at 60 kg
klimmzüge 8 | bench 60x8 | alles für klimmzüge löschen => barbell bench press 8 at 60 kg
"""),
)
def test_what_stands_is_changed_as_told(told: str, standing: str) -> None:
    assert standing_after(told) == standing
