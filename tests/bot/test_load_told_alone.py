"""A load told alone, of a lift or of the one in hand: the reps told behind it are done at that load."""

from __future__ import annotations

from datetime import timedelta

import pytest

from tests.bot.chatting import PLAN, said

SQUAT, BENCH, ROW = "barbell back squat", "barbell bench press", "barbell row"


@pytest.mark.parametrize(
    ("messages", "log"),
    [
        (["bench 60", "8", "8"], [(BENCH, 8, "60 kg")] * 2),
        (["bench 60", "8 8 8"], [(BENCH, 8, "60 kg")] * 3),
        (["bench 60kg", "for 8"], [(BENCH, 8, "60 kg")]),
        (["bench", "60", "8"], [(BENCH, 8, "60 kg")]),
        (["bench 60", "62.5", "8"], [(BENCH, 8, "62.5 kg")]),
        (["bench 60", "62.5x8"], [(BENCH, 8, "62.5 kg")]),
        (["squat 100x5", "105", "5"], [(SQUAT, 5, "100 kg"), (SQUAT, 5, "105 kg")]),
        (
            ["squat 100x5", "105kg now", "5", "110", "3"],
            [(SQUAT, 5, "100 kg"), (SQUAT, 5, "105 kg"), (SQUAT, 3, "110 kg")],
        ),
        (["squat 100x5", "105", "another 5"], [(SQUAT, 5, "100 kg"), (SQUAT, 5, "105 kg")]),
        (["squat 100x5", "105 people in here", "5"], [(SQUAT, 5, "100 kg")] * 2),
        (["row 60", "10", "barbell"], [(ROW, 10, "60 kg")]),
        (["bench 60", "what a queue", "8"], [(BENCH, 8, "60 kg")]),
        (["bench 60kg, 3 sets", "9 9 9"], [(BENCH, 9, "60 kg")] * 3),
        (["bench 3 sets at 60", "9 9"], [(BENCH, 9, "60 kg")] * 2),
        (["Bankdrücken 60kg, 3 Sätze", "9 9 9"], [(BENCH, 9, "60 kg")] * 3),
        (["développé couché 60kg 3 séries", "9 9 9"], [(BENCH, 9, "60 kg")] * 3),
        (["squat 100x5", "bench 60kg, 3 sets", "9 9"], [(SQUAT, 5, "100 kg"), *[(BENCH, 9, "60 kg")] * 2]),
        (["bench 60kg, 3 sets", "60x9"], [(BENCH, 9, "60 kg")]),
        (["bench 60kg, 3 sets", "9"], []),
        (["bench 60kg, 3 sets", "9", "2"], [(BENCH, 9, "60 kg")] * 3),
        (["bench 60kg, 3 sets", "9", "1"], [(BENCH, 9, "60 kg")]),
    ],
)
def test_reps_are_done_at_the_load_that_was_told_last(begun, messages, log):
    begun.says("ana", *messages)

    assert begun.log("ana") == log


@pytest.mark.parametrize(
    "words",
    ["going to 65", "drop to 65", "raise to 65", "testing 65", "going up to 65", "up to 65", "moving up to 65",
     "trying 65", "gonna try 65", "switching to 65", "65 on the bar",
     "loaded 65", "+5", "+5kg", "adding 5", "added 5kg", "5kg more", "gehe auf 65", "subo a 65", "je passe à 65",
     "gonna pull 65", "voy a intentar 65",
     "salgo a 65", "иду на 65", "ga naar 65", "idę na 65", "går upp till 65", "5 kg drauf"],
)  # fmt: skip
def test_words_that_move_on_to_a_load_tell_that_of_the_reps_behind_them(begun, words):
    begun.says("ana", "bench 60x8", words, "6")

    assert begun.log("ana") == [(BENCH, 8, "60 kg"), (BENCH, 6, "65 kg")]


@pytest.mark.parametrize(
    "words", ["lower to 55", "down to 55", "dropped to 55", "dropping to 55", "-5kg", "taking 5 off", "minus 5kg"]
)
def test_a_load_may_be_lowered_in_words(begun, words):
    begun.says("ana", "bench 60x8", words, "10")

    assert begun.log("ana") == [(BENCH, 8, "60 kg"), (BENCH, 10, "55 kg")]


@pytest.mark.parametrize(
    "words",
    [
        "gonna try 65 tomorrow",
        "is 65 ok?",
        "65 was too much",
        "tried 65 last week",
        "going 65 next week",
        "65 someday",
        "next month 65",
        "65 one day",
        "took 10 off",
    ],
)
def test_a_load_of_another_time_is_none_of_the_reps_behind_it(begun, words):
    begun.says("ana", "bench 60x8", words, "6")

    assert begun.log("ana") == [(BENCH, 8, "60 kg"), (BENCH, 6, "60 kg")]


@pytest.mark.parametrize("words", ["2.5 more", "2,5 mehr", "1.5 more", "2.5 more sets"])
def test_a_half_is_no_count_of_sets(begun, words):
    begun.says("ana", "bench 60x8", words)

    assert begun.log("ana") == [(BENCH, 8, "60 kg")]


def test_a_change_is_of_the_lift_lifted_last_and_no_more_than_half_of_it(begun):
    begun.says("ana", "bench 60x8", "squat", "+5", "5", "bench 60x8", "+40", "3")

    assert begun.log("ana")[-2:] == [(BENCH, 8, "60 kg"), (BENCH, 3, "60 kg")]
    assert (SQUAT, 5, "65 kg") not in begun.log("ana")


def test_a_load_told_alone_stands_before_the_planned_one(begun):
    begun.says("ana", PLAN, "squat 95", "5", "5")

    assert begun.log("ana") == [(SQUAT, 5, "95 kg")] * 2


def test_hours_later_it_is_forgotten(begun):
    begun.says("ana", "bench 60")
    begun.at += timedelta(hours=6)
    begun.says("ana", "8")

    assert begun.log("ana") == []


def test_a_lift_named_at_the_first_contact_is_no_town(chats):
    out = chats.says("ana", "/start", "bench")
    chats.says("ana", "60x8")

    assert "clock" not in said(out)
    assert chats.log("ana") == [(BENCH, 8, "60 kg")]


def test_a_question_is_answered_on_the_way_home(begun):
    begun.says("ana", "row 3x10 60")
    begun.at += timedelta(hours=2)
    begun.says("ana", "barbell")

    assert begun.log("ana") == [(ROW, 10, "60 kg")] * 3


def test_as_many_reps_again_are_done_at_the_load_that_was_told(begun):
    begun.says("ana", "bench 60x8", "+5", "same", "same")

    assert begun.log("ana") == [(BENCH, 8, "60 kg"), (BENCH, 8, "65 kg"), (BENCH, 8, "65 kg")]


@pytest.mark.parametrize("words", ["heavier now", "going lighter", "upping the weight", "schwerer jetzt", "más peso"])
def test_reps_behind_a_load_that_was_moved_are_asked_at_which(begun, words):
    begun.says("ana", "squat 100x5", words)
    out = begun.says("ana", "4")

    assert "At which load" in said(out)
    assert begun.log("ana") == [(SQUAT, 5, "100 kg")]
    begun.says("ana", "105")
    assert begun.log("ana") == [(SQUAT, 5, "100 kg"), (SQUAT, 4, "105 kg")]


@pytest.mark.parametrize(
    "words",
    ["heavier, 4 reps", "lighter set of 4", "a lighter one for 4", "added weight, got 4", "schwerer, 4 wdh",
     "más peso, 4 reps", "plus lourd, 4 reps", "più pesante, 4 reps", "zwaarder, 4 reps", "ciężej, 4 powtórzenia",
     "mais pesado, 4 reps", "тяжелее, 4 раза", "tyngre, 4 reps"],
)  # fmt: skip
def test_reps_beside_words_that_move_the_load_are_asked_at_which(begun, words):
    out = begun.says("ana", "squat 100x5", words)

    assert "At which load" in said(out)
    begun.says("ana", "110")
    assert begun.log("ana") == [(SQUAT, 5, "100 kg"), (SQUAT, 4, "110 kg")]


@pytest.mark.parametrize("words", ["felt heavier, 4", "4, heavier than expected", "heavier than last time, 4"])
def test_how_heavy_the_set_was_moves_no_load(begun, words):
    begun.says("ana", "squat 100x5", words)

    assert begun.log("ana") == [(SQUAT, 5, "100 kg"), (SQUAT, 4, "100 kg")]


@pytest.mark.parametrize("words", ["felt heavier", "lighter than last week"])
def test_how_heavy_it_felt_moves_no_load(begun, words):
    begun.says("ana", "squat 100x5", words, "4")

    assert begun.log("ana") == [(SQUAT, 5, "100 kg"), (SQUAT, 4, "100 kg")]


@pytest.mark.parametrize("words", ["26s", "up to the 26s", "now the 26s", "the 26"])
def test_a_pair_told_alone_is_what_each_hand_holds(begun, words):
    begun.says("ana", "db bench 24 10", words, "8")

    assert [(reps, load) for _, reps, load in begun.log("ana")] == [(10, "24 kg"), (8, "26 kg")]


def test_a_time_told_alone_is_no_load(begun):
    begun.says("ana", "bench 60x8", "rested 40s", "8")

    assert begun.log("ana") == [(BENCH, 8, "60 kg")] * 2
