"""Reps taken off sets that stand, how far off a load was, and what sets that stand were like."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

REPS_OFF = """
squat 3x5 100 | remove a rep from the last => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | take a rep off the last one => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | knock one rep off the last => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | take 2 reps off set 1 => barbell back squat 3 at 100 kg, 2×5 at 100 kg
squat 3x5 100 | scratch the last rep of set 2 => barbell back squat 5 at 100 kg, 4 at 100 kg, 5 at 100 kg
squat 3x5 100 | delete the last rep => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | the last rep didnt count => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | last rep was a cheat, dont count it => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | take a rep off each => barbell back squat 3×4 at 100 kg
squat 100x5 | minus one rep => barbell back squat 4 at 100 kg
squat 100x5 | remove 1 rep => barbell back squat 4 at 100 kg
bench 80x8 | squat 100x5 | take 2 reps off the bench => barbell bench press 6 at 80 kg; barbell back squat 5 at 100 kg
squat 3x5 100 | add one rep to set 2 => barbell back squat 5 at 100 kg, 6 at 100 kg, 5 at 100 kg
squat 3x5 100 | no wait the last set was one rep short => barbell back squat 2×5 at 100 kg, 4 at 100 kg
squat 3x5 100 | the last two were a rep short => barbell back squat 5 at 100 kg, 2×4 at 100 kg
"""

SETS_GONE = """
squat 3x5 100 | delete the last set, last rep was bad => barbell back squat 2×5 at 100 kg
squat 100 5 5 4 | delete the 4 rep set => barbell back squat 2×5 at 100 kg
squat 100 5 5 4 | remove the set of 4 => barbell back squat 2×5 at 100 kg
squat 3x5 100 | last one didnt count => barbell back squat 2×5 at 100 kg
"""

UNCHANGED = """
    squat was 5kg too much | that was 5kg too heavy | all of it was 5kg over | set 3 was 2.5kg off | remove a rep
    actually 2 was fine | actually set 2 was fine | set 2 was good after all | put set 2 back | set 3 was hard
    the last one was ok after all
"""

VALUES = """
squat 3x5 100 | set 2 was 97.5kg, too heavy => barbell back squat 5 at 100 kg, 5 at 97.5 kg, 5 at 100 kg
squat 3x5 100 | last one was 2.5kg lighter => barbell back squat 2×5 at 100 kg, 5 at 97.5 kg
squat 3x5 100 | make the last one 6 | no 5 was right => barbell back squat 3×5 at 100 kg
squat 3x5 100 | make the last one 2 | actually 5 was fine => barbell back squat 3×5 at 100 kg
"""


def each(table: str) -> list[str]:
    return [text.strip() for line in table.strip().splitlines() for text in line.split("|")]


@pytest.mark.parametrize(("told", "standing"), dialogues(REPS_OFF))
def test_reps_go_from_the_sets_that_are_meant(told, standing):
    assert standing_after(told).replace("; ", ", ") == standing.replace("; ", ", ")


@pytest.mark.parametrize(("told", "standing"), dialogues(SETS_GONE))
def test_a_whole_set_goes_where_it_is_named(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize("told", each(UNCHANGED))
def test_what_a_set_was_like_is_no_new_number(told):
    assert standing_after(f"squat 3x5 100 | {told}") == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(("told", "standing"), dialogues(VALUES))
def test_a_number_for_a_set_is_still_taken(told, standing):
    assert standing_after(told) == standing


AS_MANY_LEFT = """
hack squat 4x12 80 | take the last one away, did only three => hack squat 3×12 at 80 kg
hack squat 4x12 80 | take the last one out, i only did 3 => hack squat 3×12 at 80 kg
hack squat 4x12 80 | remove the last one, only 3 done => hack squat 3×12 at 80 kg
hack squat 4x12 80 | delete the last set, only three happened => hack squat 3×12 at 80 kg
hack squat 4x12 80 | remove the last one, only 5 => hack squat 4×12 at 80 kg
hack squat 4x12 80 | nimm das letzte raus => hack squat 3×12 at 80 kg
hack squat 4x12 80 | schmeiß den letzten satz raus => hack squat 3×12 at 80 kg
hack squat 4x12 80 | haal de laatste weg => hack squat 3×12 at 80 kg
hack squat 4x12 80 | lass gut sein => hack squat 4×12 at 80 kg
hack squat 4x12 80 | getting rid of the last one pls => hack squat 3×12 at 80 kg
hack squat 4x12 80 | do away with the last set => hack squat 3×12 at 80 kg
barbell curl 3x10 30 | rope pushdown 3x12 20 | remove the pushdowns => barbell curl 3×10 at 30 kg
rope pushdown 3x12 20 | straight bar pushdown 3x12 20 | remove the pushdowns pls => rope pushdown 3×12 at 20 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(AS_MANY_LEFT))
def test_a_set_goes_where_the_rest_is_counted_beside_it(told, standing):
    assert standing_after(told) == standing
