"""What was left in reserve, told in words; failure of the last set; labels, twice typed signs, days beside remarks."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said, situation


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


@pytest.mark.parametrize(
    "text",
    [
        "incline bench 60 9 8 7, 1 rir",
        "incline bench 60: 9 1rir, 8 1rir, 7 1rir",
    ],
)
def test_an_effort_set_apart_behind_a_list_is_of_all_and_one_behind_each_is_its_own(text):
    assert said(text) == (
        "incline barbell bench press 9 at 60 kg 1 in reserve, 8 at 60 kg 1 in reserve, 7 at 60 kg 1 in reserve"
    )


def test_each_of_a_list_with_its_own_effort():
    assert said("bench 80kg 8 rir3, 8 rir2, 7 rir1") == (
        "barbell bench press 8 at 80 kg 3 in reserve, 8 at 80 kg 2 in reserve, 7 at 80 kg 1 in reserve"
    )


def test_a_unit_as_a_label():
    assert said("bench sets=3 reps=6 kg=70") == "barbell bench press 3×6 at 70 kg"


def test_more_reps_at_a_load_are_a_set_of_the_lift_in_hand():
    assert said("8 more at 45", situation(doing="leg press")) == "leg press 8 at 45 kg"


def test_a_load_carried_on_settles_a_light_pair():
    assert said("face pulls 20x15, x12") == "face pull 15 at 20 kg, 12 at 20 kg"


def test_a_run_against_the_clock_is_no_set():
    assert said("10k in 52:40, legs dead") == "no sets"


@pytest.mark.parametrize("text", ["squat 3x5 100 (gym closes at 9)", "squat 3x5 100 - 2 guys waiting for the rack"])
def test_a_remark_that_counts_other_things_leaves_the_sets(text):
    assert said(text) == "barbell back squat 3×5 at 100 kg"


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("dips 3x8. bar speed ok", "dip 3×8"),
        ("plank 40s x 3; bar slipped", "plank 3×40 s"),
        ("pull ups 11/11/10/10 - felt easy", "pull-up 2×11, 2×10"),
        ("squats 45x10 45x9 45x7, tempo 3-1-0", "barbell back squat 10 at 45 kg, 9 at 45 kg, 7 at 45 kg"),
        ("100: 4 3 2 1 leg press", "leg press 4 at 100 kg, 3 at 100 kg, 2 at 100 kg, 1 at 100 kg"),
        ("leg press 110 4,3,2,1,1 - 2 min rest", "leg press 4 at 110 kg, 3 at 110 kg, 2 at 110 kg, 2×1 at 110 kg"),
        ("60x9+4+1 leg press", "leg press 9 at 60 kg, 4 at 60 kg rest-pause, 1 at 60 kg rest-pause"),
        ("3x8 20kg each dumbbell bench press", "dumbbell bench press 3×8 at 20 kg each"),
    ],
)
def test_no_set_is_made_or_lost_by_what_stands_beside_it(text, meant):
    assert said(text) == meant


@pytest.mark.parametrize("text", ["bench 80 8, 8, 8, 2 - 3 min rest", "bench 80 8, 8, 7 zungzangs"])
def test_what_may_be_the_last_of_the_reps_is_asked_about(text):
    assert said(text).startswith("ask")
