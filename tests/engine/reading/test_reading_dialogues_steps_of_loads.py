"""How much more or less the sets before were, and two numbers of them put right at once. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import standing_after

BENCH = "barbell bench press"

HEAVIER = [
    "add 2.5 to all", "all +2.5", "all +2.5kg", "+2.5 on all", "2.5 more on all", "all 2.5 heavier", "alle +2,5",
    "alle 2,5 schwerer", "todas +2,5", "toutes +2,5", "tutte +2,5", "todas mais 2,5", "alle +2,5 kg", "alla +2,5",
    "wszystkie +2,5", "все +2,5", "все на 2,5 тяжелее", "toutes 2,5 plus lourdes", "tutte 2,5 più pesanti",
    "todas 2,5 más pesadas", "todas 2,5 mais pesadas",
]  # fmt: skip

OPEN = ["add 1 to all", "+1 on all", "all +5", "add 5 to all", "5 more on all", "alle 5 schwerer"]

TWO_NUMBERS = [
    "7 not 8 and 85 kg", "7 not 8, 85 kg", "7 not 8 at 85", "85 not 80 and 7 reps", "7 reps and 85 not 80",
    "7 statt 8 und 85 kg", "85 statt 80 und 7 wdh", "7 en vez de 8 y 85 kg", "7 au lieu de 8 et 85 kg",
    "7 invece di 8 e 85 kg", "7 em vez de 8 e 85 kg", "7 in plaats van 8 en 85 kg", "7 zamiast 8 i 85 kg",
    "7 вместо 8 и 85 кг", "7 istället för 8 och 85 kg",
]  # fmt: skip


@pytest.mark.parametrize("told", HEAVIER)
def test_a_step_told_of_all_sets_is_on_each_load(told):
    assert standing_after(f"bench 3x8 80 | {told}") == f"{BENCH} 3×8 at 82.5 kg"


@pytest.mark.parametrize("told", OPEN)
def test_a_step_that_may_be_of_reps_changes_nothing_and_adds_none(told):
    assert standing_after(f"bench 3x8 80 | {told}") == f"{BENCH} 3×8 at 80 kg"


@pytest.mark.parametrize("told", ["both +5kg", "+5kg on both"])
def test_a_step_told_of_both_is_on_both_lifts(told):
    standing = f"{BENCH} 8 at 85 kg; barbell back squat 5 at 105 kg"

    assert standing_after(f"bench 80x8 // squat 100x5 | {told}").replace(", barbell back", "; barbell back") == standing


@pytest.mark.parametrize("told", TWO_NUMBERS)
def test_an_old_number_and_another_one_are_put_right_together(told):
    assert standing_after(f"bench 80x8 | {told}") == f"{BENCH} 7 at 85 kg"
    assert standing_after(f"bench 3x8 80 | {told}") == f"{BENCH} 3×7 at 85 kg"


@pytest.mark.parametrize("told", ["85 not 80, 7", "7 not 8 and 6"])
def test_a_number_that_may_be_of_more_sets_changes_nothing(told):
    assert standing_after(f"bench 80x8 | {told}") == f"{BENCH} 8 at 80 kg"


LIGHTER = [
    "all -2.5", "all 2.5kg lighter", "todas 2,5 más ligeras", "todas 2,5 mais leves", "toutes 2,5 plus légères",
    "tutte 2,5 più leggere",
]  # fmt: skip


@pytest.mark.parametrize("told", LIGHTER)
def test_a_step_down_told_of_all_sets_is_off_each_load(told):
    assert standing_after(f"bench 3x8 80 | {told}") == f"{BENCH} 3×8 at 77.5 kg"
