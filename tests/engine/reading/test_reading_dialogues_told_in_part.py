"""Corrections of which a rule would take half, or the wrong half: all of it is taken, or nothing is changed."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, standing_after

STANDS = "barbell bench press 4×5 at 80 kg"
BOTH = "barbell back squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg"

LEFT_OPEN = """
all rpe 8 but set 3 was 9
alle rpe 8 außer satz 3, der war 9
rpe 8 but the last was 10
rpe 7, last one 9
had 3 left, last had 1
rir 2 but the last was 0
rpe 8 aber der letzte war 10
rpe 8 pero la última fue 10
rpe 8 mais la dernière était 10
rpe 8 ma l'ultima era 10
rpe 8 maar de laatste was 10
rpe 8 ale ostatnia była 10
rpe 8 mas a última foi 10
rpe 8, но последний был 10
rpe 8 men sista var 10
one less set and the last was 4
1 set fewer and first was 4
the last was 4, one less set
one more set, last was 3
one more set, last was 3 reps
sets were only 3 and the last 4
sätze waren nur 3 und der letzte 4
ein satz weniger und der letzte war 4
una serie menos y la última fue 4
une série de moins et la dernière était 4
una serie in meno e l'ultima era 4
een set minder en de laatste was 4
jedna seria mniej i ostatnia była 4
uma série a menos e a última foi 4
на один подход меньше и последний был 4
ett set mindre och sista var 4
2 were in pounds
one was in lb
zwei waren in pfund
dos eran en libras
deux étaient en livres
due erano in libbre
twee waren in pond
dwie były w funtach
duas eram em libras
две были в фунтах
två var i pund
the weights are swapped
""".strip().splitlines()


@pytest.mark.parametrize("told", LEFT_OPEN)
def test_what_would_be_taken_by_half_changes_nothing(told: str) -> None:
    assert standing_after(f"bench 4x5 80 | {told}") == STANDS


@pytest.mark.parametrize("told", ["the weights are swapped", "delete squat and add bench 80x4"])
def test_what_would_be_taken_by_half_of_two_lifts_changes_nothing(told: str) -> None:
    assert standing_after(f"squat 3x5 100 | bench 3x5 80 | {told}") == BOTH


TAKEN = """
bench 4x5 80 | all rpe 8 except the last 9 => barbell bench press 3×5 at 80 kg RPE 8, 5 at 80 kg RPE 9
bench 4x5 80 | less rest, last was 4 => barbell bench press 3×5 at 80 kg, 4 at 80 kg
bench 4x5 80 | rpe 8, last one 12 => barbell bench press 3×5 at 80 kg RPE 8, 12 at 80 kg RPE 8
bench 4x5 80 | it was in lb => barbell bench press 4×5 at 80 lb
bench 4x5 80 | delete the second set, not the first => barbell bench press 2×5 at 80 kg
bench 4x5 80 | delete all but the first 2 => barbell bench press 2×5 at 80 kg
bench 4x5 80 | delete all but the last set => barbell bench press 5 at 80 kg
bench 4x5 80 | swapped reps and weight => barbell bench press 5×4 at 80 kg
bench 4x5 80 | swapped weights today, felt heavy => barbell bench press 4×5 at 80 kg
bench 4x5 80 | 82.5 not 80, last 3 => barbell bench press 3×5 at 82.5 kg, 3 at 82.5 kg
bench 4x5 80 | 8 not 5, last 3 => barbell bench press 3×8 at 80 kg, 3 at 80 kg
"""


@pytest.mark.parametrize(("told", "standing"), dialogues(TAKEN))
def test_what_is_told_of_one_thing_is_taken(told: str, standing: str) -> None:
    assert standing_after(told) == standing


COUNTED = """
5 sets not 4, last 3
5 not 4, last 3
5 sätze nicht 4, letzter 3
5 series no 4, última 3
5 séries pas 4, dernière 3
5 serie non 4, ultima 3
5 sets niet 4, laatste 3
5 serii nie 4, ostatnia 3
5 séries não 4, última 3
5 подходов не 4, последний 3
5 set inte 4, sista 3
""".strip().splitlines()


@pytest.mark.parametrize("told", COUNTED)
def test_the_last_beside_a_count_is_the_last_of_so_many(told: str) -> None:
    assert standing_after(f"bench 4x5 80 | {told}") == "barbell bench press 4×5 at 80 kg, 3 at 80 kg"


SPARED_SETS = """
delete bench but not the first set
lösche bank aber nicht den ersten satz
borra press banca pero no la primera serie
supprime développé couché mais pas la première série
cancella panca ma non la prima serie
verwijder bankdrukken maar niet de eerste set
usuń ławkę ale nie pierwszą serię
apaga supino mas não a primeira série
удали жим лежа, но не первый подход
ta bort bänkpress men inte första setet
""".strip().splitlines()


@pytest.mark.parametrize("told", SPARED_SETS)
def test_a_set_that_is_to_stay_is_the_one_that_stays(told: str) -> None:
    left = "barbell bench press 8 at 60 kg"

    assert standing_after(f"bench 60x8 70x6 80x5 | {told}") == left


BESIDE = """
delete squat but not the last set => barbell back squat 5 at 100 kg; barbell bench press 3×5 at 80 kg
move bench to yesterday but not the last set => barbell back squat 3×5 at 100 kg; barbell bench press 5 at 80 kg; barbell bench press 2×5 at 80 kg on 2025-03-13
move everything but the first bench set to yesterday => barbell bench press 5 at 80 kg; barbell back squat 3×5 at 100 kg; barbell bench press 2×5 at 80 kg on 2025-03-13
move squat and bench to yesterday but not the last set => barbell back squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg
keep bench, squat was 4x5 => barbell back squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg; barbell back squat 5 at 100 kg
bench is right, squat was 4x5 => barbell back squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg; barbell back squat 5 at 100 kg
bench was fine, squat was 3x6 => barbell back squat 3×6 at 100 kg; barbell bench press 3×5 at 80 kg
keep bench, squat 4x5 100 => barbell back squat 3×5 at 100 kg; barbell bench press 3×5 at 80 kg; barbell back squat 4×5 at 100 kg
"""  # noqa: E501 — one dialogue a line


@pytest.mark.parametrize(("told", "standing"), dialogues(BESIDE))
def test_of_two_lifts_the_right_one_is_reached(told: str, standing: str) -> None:
    assert standing_after(f"squat 3x5 100 | bench 3x5 80 | {told}") == standing


KEPT = """
behalte bank, kniebeuge war 4x5
deja banca, sentadilla fue 4x5
garde développé couché, squat c'était 4x5
lascia panca, squat era 4x5
bankdrukken klopt, squat was 4x5
zostaw ławkę, przysiad był 4x5
deixa supino, agachamento foi 4x5
жим лежа оставь, присед был 4x5
behåll bänkpress, knäböj var 4x5
""".strip().splitlines()


@pytest.mark.parametrize("told", KEPT)
def test_sets_told_of_one_lift_are_none_of_the_lift_that_stays(told: str) -> None:
    one_more = f"{BOTH}; barbell back squat 5 at 100 kg"

    assert standing_after(f"squat 3x5 100 | bench 3x5 80 | {told}") == one_more
