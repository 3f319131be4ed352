"""Sets taken away by "them" and "those", or as somebody else's; a load missed, told behind its word."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

NONE_LEFT = """
    delete them | remove those | remove them all | please remove them | delete all of them
    wait no delete them all please
    oh no those were my brother's, delete them | those were my brother's, delete those please | lösch diese
    those were my brothers delete them | somebody else's, delete them | those are not mine, remove them
    wrong, that was someone else's log, delete | wrong, that was someone else's log, delete it
    that was my friend's log, remove please
"""

ALL_LEFT = """
    don't delete them | did you delete them? | my coach said delete them | i would delete them
    drop them | forget those
    the last two were wrong, delete them | my brother's squats were heavy, forget them | drop those to 75
    my curls were my brother's, delete | delete them from my plan
"""

REACHED = """
bench 3x5 80 // barbell row 3x8 60 | those were my mate's, scrap them =>
bench 3x5 80 | barbell row 3x8 60 | delete those => barbell bench press 3×5 at 80 kg
bench 80x5 | 80x5 | remove them =>
squat 3x5 95 | row 3x8 60 | delete them => barbell back squat 3×5 at 95 kg
"""

MISSED = """
bench 160x1 | failed 170 => barbell bench press 1 at 160 kg, 0 at 170 kg missed
bench 160x1 | missed 170 kg => barbell bench press 1 at 160 kg, 0 at 170 kg missed
bench 160x1 | failed 5 => barbell bench press 1 at 160 kg
bench 3x5 80 | failed 8 => barbell bench press 3×5 at 80 kg
"""


def each(table: str) -> list[str]:
    return [one.strip() for line in table.strip().splitlines() for one in line.split(" | ")]


@pytest.mark.parametrize("words", each(NONE_LEFT))
def test_the_latest_sets_are_taken_away(words: str) -> None:
    assert standing_after(f"squat 3x5 95 | {words}") == ""


@pytest.mark.parametrize("words", each(ALL_LEFT))
def test_nothing_is_taken_away(words: str) -> None:
    assert standing_after(f"squat 3x5 95 | {words}") == "barbell back squat 3×5 at 95 kg"


@pytest.mark.parametrize(("told", "standing"), dialogues(REACHED))
def test_the_latest_message_is_meant(told: str, standing: str) -> None:
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(MISSED))
def test_a_load_missed_behind_its_word(told: str, standing: str) -> None:
    assert standing_after(told) == standing
