"""Places of sets with what is told of each: the rest are the others, and a place is no count of sets."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

EACH_FOR_ITSELF = """
bench 3x8 60 | set 1 was just a warmup => 8 at 60 kg warmup, 2×8 at 60 kg
bench 3x8 60 | set 2 was only warmup => 8 at 60 kg, 8 at 60 kg warmup, 8 at 60 kg
bench 3x8 60 | satz 1 war nur aufwärmen => 8 at 60 kg warmup, 2×8 at 60 kg
bench 3x8 60 | set 1 was just the bar => 3×8 at 60 kg
bench 3x8 60 | set 2 only half reps => 3×8 at 60 kg
bench 3x8 60 | last was a drop set, 40x10 => 2×8 at 60 kg, 10 at 40 kg drop
bench 3x8 60 | last was a warmup, 40x10 => 2×8 at 60 kg, 10 at 40 kg warmup
bench 3x8 60 | missed the last rep of set 2 => 8 at 60 kg, 7 at 60 kg missed, 8 at 60 kg
bench 3x8 60 | missed the last rep on the first set => 7 at 60 kg missed, 2×8 at 60 kg
bench 3x8 60 | failed the last rep of the second set => 8 at 60 kg, 7 at 60 kg missed, 8 at 60 kg
bench 3x8 60 | failed the last of set 2 => 8 at 60 kg, 7 at 60 kg missed, 8 at 60 kg
bench 3x8 60 | first two rpe 7, last 9 => 3×8 at 60 kg
bench 3x8 60 | first rpe 7, second 8, last 9 => 3×8 at 60 kg
bench 3x8 60 | first two 2 rir, last 0 => 3×8 at 60 kg
bench 3x8 60 | set 2 rpe 8, set 3 9 => 3×8 at 60 kg
bench 3x8 60 | set 2 rpe 8, set 3 7 reps => 8 at 60 kg, 8 at 60 kg RPE 8, 7 at 60 kg
bench 3x8 60 | first was a warmup and the rest were rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | first was a warmup, the rest rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | last was to failure, the rest were rpe 8 => 2×8 at 60 kg RPE 8, 8 at 60 kg to failure
bench 3x8 60 | first was 10 reps, the rest were 62.5 => 10 at 60 kg, 2×8 at 62.5 kg
bench 3x8 60 | first was 55, last was 65, the rest were 62.5 => 8 at 55 kg, 8 at 62.5 kg, 8 at 65 kg
bench 3x8 60 | last was rpe 9, the rest were 8 => 3×8 at 60 kg
bench 3x8 60 | der erste war aufwärmen, der rest war rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | la primera fue calentamiento, el resto fue rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | la première était échauffement, les autres étaient rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | la prima era riscaldamento, le altre erano rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | de eerste was warming-up, de rest was rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | pierwsza była rozgrzewka, reszta była rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | a primeira foi aquecimento, o resto foi rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | första var uppvärmning, resten var rpe 8 => 8 at 60 kg warmup, 2×8 at 60 kg RPE 8
bench 3x8 60 | did 4 sets, last one 6 => 3×8 at 60 kg, 6 at 60 kg
bench 3x8 60 | it was 4x8, last one 6 => 3×8 at 60 kg, 6 at 60 kg
bench 3x8 60 | sorry 4x8, last one 6 => 3×8 at 60 kg, 6 at 60 kg
bench 3x8 60 | habe 4 sätze gemacht, letzter 6 => 3×8 at 60 kg, 6 at 60 kg
bench 3x8 60 | 4x8, last was 6 => 3×8 at 60 kg
bench 3x8 60 | 4 sets of 8 at 50, last one 6 => 3×8 at 60 kg, 3×8 at 50 kg, 6 at 50 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(EACH_FOR_ITSELF))
def test_what_is_told_of_a_place_is_of_that_set_alone(told: str, standing: str) -> None:
    assert standing_after(told) == f"barbell bench press {standing}"
