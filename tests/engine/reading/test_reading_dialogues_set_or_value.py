"""What may be of sets that stand or of more, and what puts them right as a whole. Common practice, no source."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import dialogues, readings, said, situation, standing_after

BENCH, ROW = "barbell bench press", "barbell row"

OPEN_BEHIND_THREE = [
    "only 7, last one 6", "7, last one 6", "7 and last one 6", "only got 7, last one 6", "7, 6, last one 5",
    "7, third one 6", "nur 7, letzter 6", "solo 7, la última 6", "seulement 7, la dernière 6", "solo 7, l'ultima 6",
    "só 7, a última 6", "alleen 7, laatste 6", "tylko 7, ostatnia 6", "только 7, последний 6", "bara 7, sista 6",
    "82.5, last one 7", "82.5kg, last 7", "7 each",
    "3x8, last one 6", "3x8 at 80, last one 6", "rep 8 failed", "rep 6 failed",
]  # fmt: skip

REACHED = f"""
bench 80x8 | 7, last one 6 => {BENCH} 8 at 80 kg, 7 at 80 kg, 6 at 80 kg
bench 2x8 80 | another 2x8, last one 6 => {BENCH} 3×8 at 80 kg, 6 at 80 kg
bench 2x8 80 | 2x8 85, last one 6 => {BENCH} 2×8 at 80 kg, 8 at 85 kg, 6 at 85 kg
bench 2x8 80 | both at 85 => {BENCH} 2×8 at 85 kg
bench 2x8 80 | beide mit 85 => {BENCH} 2×8 at 85 kg
bench 2x8 80 | both at 85, last one 6 => {BENCH} 8 at 85 kg, 6 at 85 kg
bench 3x8 80 | all at 85, last one 6 => {BENCH} 2×8 at 85 kg, 6 at 85 kg
bench 3x8 80 | alle 85, letzter 6 => {BENCH} 2×8 at 85 kg, 6 at 85 kg
bench 3x8 80 | all were 75, last was 80 => {BENCH} 2×8 at 75 kg, 8 at 80 kg
bench 3x8 80 | weight was 82.5, last set 7 => {BENCH} 2×8 at 82.5 kg, 7 at 82.5 kg
bench 3x8 80 | det var 82,5 och sista 7 => {BENCH} 2×8 at 82.5 kg, 7 at 82.5 kg
bench 80x8 | 82.5, last one 7 => {BENCH} 8 at 80 kg, 7 at 82.5 kg
barbell row 2x12 55 | 2 sets at 55, last one 6 => {ROW} 2×12 at 55 kg
"""

TOLD_AS = [
    "log it as 6", "log that as 6", "log as 6", "save it as 6", "record that as 6", "enter it as 6 reps",
    "write it down as 6", "note it as 6", "trag es als 6 ein", "notier es als 6", "apúntalo como 6", "cuéntalo como 6",
    "note-la comme 6", "compte ça comme 6", "segnala come 6", "registralo come 6", "noteer het als 6", "log het als 6",
    "zapisz to jako 6", "policz jako 6", "anota como 6", "conta isso como 6", "запиши как 6", "засчитай это как 6",
    "logga det som 6", "skriv det som 6",
]  # fmt: skip

TOLD_AS_ELSE = f"""
bench 80x8 | log it as 85x6 => {BENCH} 6 at 85 kg
bench 80x8 | log it as incline => incline {BENCH} 8 at 80 kg
bench 80x8 | log that as warmup => {BENCH} 8 at 80 kg warmup
bench 80x8 | log another 6 => {BENCH} 8 at 80 kg, 6 at 80 kg
bench 80x8 | log 85x6 => {BENCH} 8 at 80 kg
bench 80x8 | log press 40x6 => {BENCH} 8 at 80 kg; log press 6 at 40 kg
log press 40x6 | log 42x6 => log press 6 at 40 kg, 6 at 42 kg
"""

MISSED = f"""
bench 100x8 | rep 9 failed => {BENCH} 8 at 100 kg missed
bench 100x8 | failed on rep 8 => {BENCH} 7 at 100 kg missed
bench 100x8 | rep 8 fail => {BENCH} 7 at 100 kg missed
bench 100x8 | wdh 9 nicht geschafft => {BENCH} 8 at 100 kg missed
bench 100x8 | rep 6 failed => {BENCH} 8 at 100 kg
bench 100x8 | 6th rep failed => {BENCH} 8 at 100 kg
"""

IN_ONE_MESSAGE = f"""
bench 100x8, rep 8 failed => {BENCH} 7 at 100 kg missed
bench 100x8, rep 9 failed => {BENCH} 8 at 100 kg missed
barbell row 2 sets at 55, 12 reps, 6 reps => {ROW} 12 at 55 kg, 6 at 55 kg
barbell row 2 sets at 55, 12 reps, last one 6 => {ROW} 12 at 55 kg, 6 at 55 kg
barbell row 3 sets at 15: 12 reps, 10 reps, 6 reps => {ROW} 12 at 15 kg, 10 at 15 kg, 6 at 15 kg
barbell row 3 sets at 55: 1st 8, 2nd 7, 3rd 6 => {ROW} 8 at 55 kg, 7 at 55 kg, 6 at 55 kg
"""

ASKED_IN_ONE_MESSAGE = [
    "bench 100x8, rep 6 failed", "barbell row 2 sets at 55, last one 6", "barbell row 2 Sätze mit 55, letzter 6",
    "barbell row 3 sets, last one 60x6", "barbell row 2 sets at 55, second set 6",
]  # fmt: skip


@pytest.mark.parametrize("told", OPEN_BEHIND_THREE)
def test_what_may_be_of_those_that_stand_or_more_of_them_is_left_open(told):
    assert standing_after(f"bench 3x8 80 | {told}") == f"{BENCH} 3×8 at 80 kg"


@pytest.mark.parametrize(("told", "standing"), dialogues(REACHED))
def test_sets_are_added_or_changed_as_they_were_meant(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize("told", TOLD_AS)
def test_what_a_set_is_to_be_put_down_as_is_what_it_was(told):
    assert standing_after(f"bench 80x8 | {told}") == f"{BENCH} 6 at 80 kg"


@pytest.mark.parametrize(("told", "standing"), dialogues(TOLD_AS_ELSE))
def test_a_word_for_putting_down_is_no_lift_of_that_name(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("told", "standing"), dialogues(MISSED))
def test_a_rep_that_was_missed_is_no_set_more(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize(("text", "context", "meant"), readings(IN_ONE_MESSAGE))
def test_nothing_told_of_the_sets_is_lost(text, context, meant):
    assert said(text, context) == meant


@pytest.mark.parametrize("text", ASKED_IN_ONE_MESSAGE)
def test_what_one_set_came_to_is_not_put_on_the_others(text):
    assert said(text).startswith("ask: ")


HALF_DONE = [
    "last 2 half", "last 2 were half", "last two only half", "last 2 not full", "die letzten 2 halb", "letzte 2 halbe",
    "las últimas 2 a medias", "les 2 dernières à moitié", "ultime 2 a metà", "laatste 2 half", "ostatnie 2 połówki",
    "as últimas 2 pela metade", "последние 2 наполовину", "sista 2 halva",
]  # fmt: skip


@pytest.mark.parametrize("remark", HALF_DONE)
def test_reps_done_by_half_are_no_set_of_their_own(remark):
    assert said(f"dips 12, {remark}") == "dip 12"
    assert standing_after(f"dips 12 12 12 | {remark}") == "dip 3×12"


ONE_NEW_NAME_TOO_MANY = [
    "front squat, and bench was incline", "it was front squat, and bench was incline", "bench was incline, front squat",
    "bench was incline and front squat", "Frontkniebeuge, und Bank war Schrägbank",
]  # fmt: skip


@pytest.mark.parametrize("told", ONE_NEW_NAME_TOO_MANY)
def test_of_two_lifts_named_anew_none_is_named_by_half(told):
    standing = f"barbell back squat 3×5 at 100 kg; {BENCH} 3×8 at 80 kg"

    assert standing_after(f"squat 3x5 100 // bench 3x8 80 | {told}") == standing


NO_REQUESTS = f"""
bench 80x8 | that was yesterday to failure => {BENCH} 8 at 80 kg to failure on 2025-03-13
bench 80x8 | that was to failure yesterday => {BENCH} 8 at 80 kg to failure on 2025-03-13
bench 80x8 | das war gestern bis zum versagen => {BENCH} 8 at 80 kg to failure on 2025-03-13
bench 80x8 | it was monday rpe 9 => {BENCH} 8 at 80 kg RPE 9 on 2025-03-10
"""

LEFT_BEHIND = [
    "missing: bench 3x8 80", "fehlt: bench 3x8 80", "faltó: bench 3x8 80", "manquait: bench 3x8 80",
    "mancava: bench 3x8 80", "ontbreekt: bench 3x8 80", "brakuje: bench 3x8 80", "faltou: bench 3x8 80",
    "пропущено: bench 3x8 80", "saknas: bench 3x8 80",
]  # fmt: skip


@pytest.mark.parametrize(("told", "standing"), dialogues(NO_REQUESTS))
def test_a_day_and_a_mark_with_nothing_between_are_both_put_right(told, standing):
    assert standing_after(told) == standing


@pytest.mark.parametrize("text", ["last week 9", "last week 9 reps", "last week was 9", "last week 5 sets"])
def test_numbers_behind_last_week_ask_for_no_summary(text):
    context = situation("barbell bench press")

    assert said(text, context) == "no sets"


@pytest.mark.parametrize("told", LEFT_BEHIND)
def test_a_word_for_what_was_left_out_is_nobodys_name(told):
    assert standing_after(f"squat 3x5 100 | {told}") == f"barbell back squat 3×5 at 100 kg; {BENCH} 3×8 at 80 kg"


@pytest.mark.parametrize("text", ["85x6?", "3x8?", "6?"])
def test_bare_numbers_with_a_question_mark_are_asked_about(text):
    assert said(text, situation("barbell bench press", last={"barbell bench press": "80"})).startswith("ask: ")
