"""The reps of each side, told behind the set; and a set that goes while another comes. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

ROW = "dumbbell row 10 at 30 kg each"

SIDES = f"""
dumbbell row 30x10 | left was 8 => {ROW}
dumbbell row 30x10 | links waren es 8 => {ROW}
dumbbell row 30x10 | right side was 8 => {ROW}
dumbbell row 30x10 | 10 left 8 right => {ROW}
dumbbell row 30x10 | links 10 rechts 8 => {ROW}
dumbbell row 30x10 | that was 2 left => {ROW}
dumbbell row 30x10 | that was 10 left 8 right => {ROW} left, 8 at 30 kg each right
dumbbell row 30x10 | das waren links 10 rechts 8 => {ROW} left, 8 at 30 kg each right
dumbbell row 30x10 left 8 right | left was 9 => dumbbell row 9 at 30 kg each left, 8 at 30 kg each right
"""

AWAY_AND_MORE = [
    "delete that and add 85x6", "delete that, add 85x6", "delete that and 85x6", "scratch that and add 85x6",
    "borra eso y añade 85x6", "supprime ça et ajoute 85x6", "apaga isso e adiciona 85x6",
    "cancella quella e aggiungi 85x6", "удали это и добавь 85x6", "ta bort det och lägg till 85x6",
    "lösch das und füge 85x6 hinzu", "verwijder dat en voeg 85x6 toe", "usuń to i dodaj 85x6",
    "count as warmup and 7 reps", "count it as warmup, 7 reps", "mark as warmup and 7 reps",
    "zähl als aufwärmen und 7 wdh", "cuenta como calentamiento y 7 reps",
]  # fmt: skip

NEARBY = """
bench 80x8 | delete that, 85x6 => barbell bench press 6 at 85 kg
bench 80x8 | lose the belt and 80x8 => barbell bench press 2×8 at 80 kg
bench 80x8 | drop set 60x8 and 50x8 => barbell bench press 8 at 80 kg, 8 at 60 kg, 8 at 50 kg drop
bench 80x8 | that was a warmup and 7 reps => barbell bench press 7 at 80 kg warmup
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(SIDES))
def test_a_side_is_never_lost_and_no_set_added_for_it(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize("told", AWAY_AND_MORE)
def test_what_takes_away_and_adds_in_one_does_no_half_of_it(told):
    assert standing_after(f"bench 80x8 | {told}") == "barbell bench press 8 at 80 kg"


@pytest.mark.parametrize(("told", "standing"), dialogues(NEARBY))
def test_what_was_read_before_still_is(told, standing):
    assert standing_after(told) == standing
