"""Words that repeat a set elsewhere and are remarks here, and marks that are told of every set."""

from __future__ import annotations

import pytest

from tests.engine.reading.saying import said


@pytest.mark.parametrize(
    ("message", "reading"),
    [
        ("thrusters, 5 sets of 8 with 40kg, never again", "thruster 5×8 at 40 kg"),
        ("bench 80x5, not again", "barbell bench press 5 at 80 kg"),
        ("bankdrücken 80x5, nie wieder", "barbell bench press 5 at 80 kg"),
        ("bänkpress 80x5, aldrig igen", "barbell bench press 5 at 80 kg"),
        ("bench 80x5, then the same again", "barbell bench press 2×5 at 80 kg"),
        ("bench 80x5 twice", "barbell bench press 2×5 at 80 kg"),
        ("bench 80x5 3 times", "barbell bench press 3×5 at 80 kg"),
    ],
)
def test_what_will_not_be_done_again_repeats_nothing(message: str, reading: str) -> None:
    assert said(message) == reading


@pytest.mark.parametrize(
    "message",
    [
        "squat 3x5 100, once again",
        "squat 3x5 100, encore fatigué",
        "bankdrücken 80x5 noch müde",
        "bench 80x5 twice this week",
        "bench 80x5 twice today",
        "bench 80x5 3 times this week",
        "bankdrücken 80x5 zweimal pro woche",
        "press banca 80x5 dos veces esta semana",
        "développé couché 80x5 deux fois cette semaine",
        "panca piana 80x5 due volte questa settimana",
        "supino 80x5 duas vezes esta semana",
        "bankdrukken 80x5 twee keer per week",
        "wyciskanie leżąc 80x5 dwa razy w tym tygodniu",
        "жим лёжа 80x5 два раза на этой неделе",
        "bänkpress 80x5 två gånger den här veckan",
    ],
)
def test_what_may_repeat_the_set_or_remark_on_it_is_asked(message: str) -> None:
    assert said(message).startswith("ask:")


@pytest.mark.parametrize(
    "words",
    [
        "every set to failure",
        "each set to failure",
        "every one to failure",
        "each one to failure",
        "jeder Satz bis zum Versagen",
        "cada serie al fallo",
        "chaque série à l'échec",
        "ogni serie a cedimento",
        "elke set tot falen",
        "każda seria do upadku",
        "cada série até a falha",
        "каждый подход до отказа",
        "varje set till failure",
    ],
)
def test_every_set_to_failure_marks_every_set(words: str) -> None:
    assert said(f"cable curls 20kg 14,12,11 {words}").count("to failure") == len((14, 12, 11))


@pytest.mark.parametrize(
    ("message", "reading"),
    [
        ("bench 100x3, went down to 90 for 5", "barbell bench press 3 at 100 kg, 5 at 90 kg"),
        (
            "tried 120 on bench, failed. went down to 110 and got 2",
            "barbell bench press 0 at 120 kg missed, 2 at 110 kg",
        ),
        ("bench 100x3, dropped to 90 for 5", "barbell bench press 3 at 100 kg, 5 at 90 kg drop"),
    ],
)
def test_going_down_in_load_is_a_work_set(message: str, reading: str) -> None:
    assert said(message) == reading


@pytest.mark.parametrize(
    ("message", "reading"),
    [
        ("squat: 60x5 (warm up), 100x5", "barbell back squat 5 at 60 kg warmup, 5 at 100 kg"),
        ("squat: 60x5, 100x5, 40x8 warm up", "barbell back squat 5 at 60 kg, 5 at 100 kg, 8 at 40 kg warmup"),
    ],
)
def test_a_warm_up_behind_heavier_sets_is_alone(message: str, reading: str) -> None:
    assert said(message) == reading


@pytest.mark.parametrize("sets", ["40x8, 60x5, 80x3", "bar x10, 60x5, 80x3", "40x8, 60x5"])
def test_no_work_set_is_left_between_warm_ups(sets: str) -> None:
    reading = said(f"squat: {sets} warm up")
    first = reading.split(" | ")[0]
    assert first.count("warmup") == sets.count("x")
