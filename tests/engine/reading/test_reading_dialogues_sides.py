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

LEFT = [
    "9 on the left", "9 on my left", "9 with the left", "9 left", "left 9", "left only 9", "only 9 on the left",
    "last set 9 on the left", "9 not 10, left", "9 not 10 on the left", "that was 9 on the left", "that was 9, left",
    "last was 9 left", "set 1 was 9 on the left", "9 mit links", "9 nicht 10, links", "9 à gauche", "9 pas 10 à gauche",
    "9 con la izquierda", "9 no 10, izquierda", "9 à esquerda", "9 a sinistra", "9 non 10, sinistra", "9 met links",
    "9 na lewą", "9 nie 10, lewa", "9 слева", "9 не 10, слева", "9 på vänster", "9 inte 10, vänster",
]  # fmt: skip

OF_SIDES = f"""
dumbbell row 30x10 left 8 right | 9 not 10, left => dumbbell row 9 at 30 kg each left, 8 at 30 kg each right
dumbbell row 30x10 left 8 right | 9 not 11, left => dumbbell row 10 at 30 kg each left, 8 at 30 kg each right
dumbbell row 30x10 on the left, 30x8 on the right => dumbbell row 10 at 30 kg each left, 8 at 30 kg each right
dumbbell row 30 kg, 10 on the right, 8 on the left => dumbbell row 10 at 30 kg each right, 8 at 30 kg each left
dumbbell row 30x10 on the left | right 8 => dumbbell row 10 at 30 kg each left, 8 at 30 kg each right
dumbbell row 30x10 | 32x9 on the right => {ROW}, 9 at 32 kg each right
dumbbell row 30x10 with the left first => {ROW}
bench 80x8 with left shoulder sore => barbell bench press 8 at 80 kg
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


@pytest.mark.parametrize("told", LEFT)
def test_a_side_alone_behind_sets_of_both_changes_no_set_and_adds_none(told):
    assert standing_after(f"dumbbell row 30x10 | {told}") == ROW


@pytest.mark.parametrize(("told", "standing"), dialogues(OF_SIDES))
def test_a_side_told_with_a_little_word_is_that_of_its_set(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize("told", AWAY_AND_MORE)
def test_what_takes_away_and_adds_in_one_does_no_half_of_it(told):
    assert standing_after(f"bench 80x8 | {told}") == "barbell bench press 8 at 80 kg"


@pytest.mark.parametrize(("told", "standing"), dialogues(NEARBY))
def test_what_was_read_before_still_is(told, standing):
    assert standing_after(told) == standing
