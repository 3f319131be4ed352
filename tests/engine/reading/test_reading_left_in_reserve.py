"""What was left in reserve, told in words; failure of the last set; labels, twice typed signs, days beside remarks."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    "text",
    [
        "bench 3x6 70 left two in",
        "bench 3x6 70, could have done 2 more",
        "bench 3x6 70 (two left)",
        "Bankdrücken 3x6 70 noch 2 im Tank",
        "Bankdrücken 3x6 70, hatte noch 2 übrig",
        "press de banca 3x6 70, me quedaban 2",
        "press de banca 3x6 70, dejé 2 en reserva",
        "développé couché 3x6 70, il m'en restait 2",
        "panca piana 3x6 70, ne avevo ancora 2",
        "bankdrukken 3x6 70 had er nog 2 over",
        "wyciskanie leżąc 3x6 70, miałem jeszcze 2 w zapasie",
        "supino 3x6 70, sobraram 2",
        "жим лежа 3x6 70, осталось 2 в запасе",
        "bänkpress 3x6 70, hade 2 kvar",
    ],
)
def test_reps_left_in_words_are_an_effort_and_no_set(text):
    assert said(text) == "barbell bench press 3×6 at 70 kg 2 in reserve"


@pytest.mark.parametrize(
    "text",
    [
        "bench 70 6 6 6, one left on the last",
        "bench 3x6 70, last one 1 in the tank",
        "bench sets 3 reps 6 weight 70, last set rir 1",
        "Bankdrücken 3x6 70, beim letzten 1 im Tank",
        "panca piana 70: 6 6 6, l'ultima con 1 di riserva",
        "bankdrukken 3x6 70 laatste met 1 in reserve",
        "жим лежа 3x6 70, в последнем 1 в запасе",
    ],
)
def test_an_effort_of_the_last_set_is_that_sets_alone(text):
    assert said(text) == "barbell bench press 2×6 at 70 kg, 6 at 70 kg 1 in reserve"


@pytest.mark.parametrize(
    "text",
    [
        "press de banca 70 6 6 5, el último al fallo",
        "Bankdrücken 70 6 6 5, letzter bis Versagen",
        "développé couché 70 6 6 5, le dernier à l'échec",
        "panca piana 70 6 6 5, l'ultima a cedimento",
        "bankdrukken 70 6 6 5, laatste set tot falen",
        "wyciskanie leżąc 70 6 6 5, ostatnia seria do upadku",
        "supino 70 6 6 5, a última até a falha",
        "жим лежа 70 6 6 5, последний подход до отказа",
        "bänkpress 70 6 6 5, sista setet till failure",
    ],
)
def test_the_last_set_to_failure_in_other_languages(text):
    assert said(text) == "barbell bench press 2×6 at 70 kg, 5 at 70 kg to failure"


@pytest.mark.parametrize(
    "text",
    [
        "bench 70 3s/6r",
        "bench 3x6@@70",
        "bench = 3x6 = 70",
        "reps 6 sets 3 weight 70 lift bench",
        "bench 70 kgx6x3",
        "bench 70 kilosx6x3",
        "bench 3x6 @ 70 - 90s rest",
        "bench 3x6 70, phone at 5%",
    ],
)
def test_three_sets_of_six_told_otherwise(text):
    assert said(text) == "barbell bench press 3×6 at 70 kg"


def test_failure_of_sets_repeated_by_a_count_is_of_all():
    assert said("squat (60x6)x3, to failure") == "barbell back squat 3×6 at 60 kg to failure"


def test_a_mark_between_the_numbers_and_their_name_holds():
    assert said("3x8 100, rpe 8 squat") == "barbell back squat 3×8 at 100 kg RPE 8"
    assert said("3x8 100, last one to failure, squat") == "barbell back squat 2×8 at 100 kg, 8 at 100 kg to failure"


def test_dumbbells_ahead_of_a_list_are_its_load():
    assert said("db bench with the 18s: 12 11 9") == (
        "dumbbell bench press 12 at 18 kg each, 11 at 18 kg each, 9 at 18 kg each"
    )
    assert said("bench 6s: 60 65 70") == "barbell bench press 6 at 60 kg, 6 at 65 kg, 6 at 70 kg"


@pytest.mark.parametrize("text", ["dips +12,5 8/8/7", "dips bw + 12.5 8 8 7"])
def test_weight_added_behind_a_sign(text):
    assert said(text) == "dip 2×8 at +12.5 kg, 7 at +12.5 kg"


def test_a_share_of_a_maximum_is_asked_about():
    assert said("bench 3x6 at 80%").startswith("ask")


@pytest.mark.parametrize(
    "text",
    [
        "forgot to send this, wed: squat 3x5 100",
        "late again, wednesday squat 3x5 100",
        "1. wednesday: squat 3x5 100",
        "* 12.3. squat 3x5 100",
        "wed's squat 3x5 100",
        "squat 3x5 100 wednesday - felt good",
        "squat 3x5 100 (wed). tired",
        "squat 3x5 100, wednesday; tired",
        "squat 3x5 100 2 days ago",
        "squat 3x5 100, 2 days ago",
        "Kniebeuge 3x5 100 Mittwoch; müde",
    ],
)
def test_the_day_counts_beside_openings_bullets_and_remarks(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg on 2025-03-12"


def test_a_list_parted_by_slashes_is_no_date():
    assert said("thursday 4/2/1/1 pull-ups") == "pull-up 4, 2, 2×1 on 2025-03-13"
